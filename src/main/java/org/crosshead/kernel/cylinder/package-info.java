/** What happens in an engine's cylinders: valves, the indicator diagram, steam used, turning effort. */
@NullMarked
package org.crosshead.kernel.cylinder;

import org.jspecify.annotations.NullMarked;
