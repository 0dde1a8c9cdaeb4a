/**
 * Who knows which road and which class of engine, from when to when and on what evidence, and whether a crew may take a train. Events
 * are the truth and are only ever added; what a person holds on a day is derived from them and from the railway's policy.
 */
@NullMarked
package org.crosshead.competence;

import org.jspecify.annotations.NullMarked;
