/** The page of loads. */
@NullMarked
package org.crosshead.load.web;

import org.jspecify.annotations.NullMarked;
