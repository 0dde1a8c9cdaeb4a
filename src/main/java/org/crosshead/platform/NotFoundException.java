package org.crosshead.platform;

import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.ResponseStatus;

/** What a page was asked for is not there, or not for this person to know of; the answer is the page "not found". */
@ResponseStatus(HttpStatus.NOT_FOUND)
public final class NotFoundException extends RuntimeException {

    /**
     * Names what is missing, for the log.
     *
     * @param what kind of thing, for example {@code train}
     * @param id number or code asked for
     */
    public NotFoundException(String what, Object id) {
        super(what + " " + id + " is not there");
    }
}
