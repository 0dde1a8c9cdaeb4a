/** Which turns people should drive so that what they hold does not lapse: the plan, and the proposals made from it. */
@NullMarked
package org.crosshead.competence.refresh;

import org.jspecify.annotations.NullMarked;
