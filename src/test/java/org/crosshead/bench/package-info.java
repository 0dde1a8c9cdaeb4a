/** Benchmarks, run by the profile {@code slow}; their figures are in docs/performance.md. */
@NullMarked
package org.crosshead.bench;

import org.jspecify.annotations.NullMarked;
