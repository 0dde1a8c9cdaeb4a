/** Log-ins, their passwords and the throttle of failed attempts. */
@NullMarked
package org.crosshead.platform.account;

import org.jspecify.annotations.NullMarked;
