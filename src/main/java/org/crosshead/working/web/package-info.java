/** Pages about trains. */
@NullMarked
package org.crosshead.working.web;

import org.jspecify.annotations.NullMarked;
