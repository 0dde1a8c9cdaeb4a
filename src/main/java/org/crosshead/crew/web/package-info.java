/** Pages of people and their posts. */
@NullMarked
package org.crosshead.crew.web;

import org.jspecify.annotations.NullMarked;
