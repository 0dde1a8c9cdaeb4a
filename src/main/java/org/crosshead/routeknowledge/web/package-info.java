/** Pages of the sections that people sign: their cards, and questions on them. */
@NullMarked
package org.crosshead.routeknowledge.web;

import org.jspecify.annotations.NullMarked;
