/** Pages and forms of locomotive classes, engines, vehicles and formations. */
@NullMarked
package org.crosshead.stock.web;

import org.jspecify.annotations.NullMarked;
