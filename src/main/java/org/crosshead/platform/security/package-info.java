/** Who may reach which endpoint, and how a request is given its actor. */
@NullMarked
package org.crosshead.platform.security;

import org.jspecify.annotations.NullMarked;
