/** Questions on a section of a route, made from the route's own data, and what people have answered. */
@NullMarked
package org.crosshead.routeknowledge.question;

import org.jspecify.annotations.NullMarked;
