/** Properties of water and steam, tabulated once. */
@NullMarked
package org.crosshead.kernel.steam;

import org.jspecify.annotations.NullMarked;
