/** Whole pages in a real browser. */
@NullMarked
package org.crosshead.browser;

import org.jspecify.annotations.NullMarked;
