package org.crosshead.working.web;

import static org.crosshead.working.web.TypedFields.text;

import jakarta.validation.constraints.NotBlank;

/**
 * The short form from which a new train is begun: from where to where, when, with what and whom. Texts as typed; a box that is
 * ticked says "true". Each constraint's message is the last part of the code of its refusal.
 */
record NewTrainForm(
        @NotBlank(message = NEEDED) String code,
        @NotBlank(message = NEEDED) String fromPlace,
        @NotBlank(message = NEEDED) String toPlace,
        @NotBlank(message = NEEDED) String day,
        @NotBlank(message = NEEDED) String departure,
        @NotBlank(message = NEEDED) String kind,
        String everyStation,
        String formationCode,
        @NotBlank(message = NEEDED) String engineNumber,
        String tenderFirst,
        String driver,
        String fireman,
        @NotBlank(message = NEEDED) String rail,
        String weather,
        String dark,
        String heated) {

    private static final String NEEDED = "field-needed";

    NewTrainForm {
        code = text(code);
        fromPlace = text(fromPlace);
        toPlace = text(toPlace);
        day = text(day);
        departure = text(departure);
        kind = text(kind);
        everyStation = text(everyStation);
        formationCode = text(formationCode);
        engineNumber = text(engineNumber);
        tenderFirst = text(tenderFirst);
        driver = text(driver);
        fireman = text(fireman);
        rail = text(rail);
        weather = text(weather);
        dark = text(dark);
        heated = text(heated);
    }
}
