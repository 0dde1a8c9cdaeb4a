/** What boiler, cylinders and rail each allow; the least of them is the pull. */
@NullMarked
package org.crosshead.kernel.traction;

import org.jspecify.annotations.NullMarked;
