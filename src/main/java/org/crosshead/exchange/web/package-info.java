/** The page by which files are imported. */
@NullMarked
package org.crosshead.exchange.web;

import org.jspecify.annotations.NullMarked;
