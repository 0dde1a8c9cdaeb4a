/** Pages of routes and restrictions. */
@NullMarked
package org.crosshead.route.web;

import org.jspecify.annotations.NullMarked;
