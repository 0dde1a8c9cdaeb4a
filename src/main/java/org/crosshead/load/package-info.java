/** What a class of engines can take over a road: how much, at what speed, and what stops it. */
@NullMarked
package org.crosshead.load;

import org.jspecify.annotations.NullMarked;
