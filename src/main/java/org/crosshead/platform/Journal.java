package org.crosshead.platform;

/** The ordered record of every change. */
public interface Journal {

    /**
     * Writes one entry in the transaction of the change that it tells of.
     *
     * @param kind what was done, for example {@code train.cancelled}
     * @param subjectType what it was done to, for example {@code train}
     * @param subjectId its id
     * @param summary in words, without personal data
     */
    void write(String kind, String subjectType, long subjectId, String summary);
}
