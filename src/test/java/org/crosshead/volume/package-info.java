/** Volume tests of the profile slow: a season's records on both databases. */
@org.jspecify.annotations.NullMarked
package org.crosshead.volume;
