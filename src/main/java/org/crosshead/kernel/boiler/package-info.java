/** What happens in an engine's boiler: fire and draught, water and steam, safety valves, feed, water over the crown. */
@NullMarked
package org.crosshead.kernel.boiler;

import org.jspecify.annotations.NullMarked;
