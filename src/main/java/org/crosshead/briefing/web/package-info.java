/** The pages of a briefing. */
@NullMarked
package org.crosshead.briefing.web;

import org.jspecify.annotations.NullMarked;
