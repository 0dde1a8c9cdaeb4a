/** Pages of who knows what, and of whether a crew may take a train. */
@NullMarked
package org.crosshead.competence.web;

import org.jspecify.annotations.NullMarked;
