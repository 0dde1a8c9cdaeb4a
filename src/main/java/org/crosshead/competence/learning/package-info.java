/** How people learn roads and classes: plans, and learning turns on real trains, booked and told of by those who taught. */
@NullMarked
package org.crosshead.competence.learning;

import org.jspecify.annotations.NullMarked;
