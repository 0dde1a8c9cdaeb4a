/** Sections of routes: what a person signs, what makes it hard, and who teaches it. */
@NullMarked
package org.crosshead.routeknowledge;

import org.jspecify.annotations.NullMarked;
