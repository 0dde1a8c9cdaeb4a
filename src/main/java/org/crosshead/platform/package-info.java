/** Security, journal, error pages, clock and layout: what every capability stands on. */
@NullMarked
package org.crosshead.platform;

import org.jspecify.annotations.NullMarked;
