/** The start page, the pages of log-ins and journal, and the frame around every page. */
@NullMarked
package org.crosshead.platform.web;

import org.jspecify.annotations.NullMarked;
