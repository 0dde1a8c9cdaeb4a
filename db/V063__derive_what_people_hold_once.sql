-- What everybody holds of each subject after all that is entered about it: derived from the events, never typed, and made anew from them
-- at any time. It answers for the last entry's day and every later one; for an earlier day the events themselves are read.
create table competence_standing (
    person_id bigint not null,
    subject_kind varchar(10) not null,
    subject_code varchar(40) not null,
    state varchar(20) not null,
    suspended boolean not null,
    since_day date,
    worked_day date,
    assessed_day date,
    until_day date,
    limits varchar(80) not null,
    last_day date not null,
    lapse_months integer not null,
    assessment_months integer not null,
    primary key (subject_kind, subject_code, person_id),
    constraint competence_standing_person foreign key (person_id) references person (id)
);
create index competence_standing_of_person on competence_standing (person_id);
create index competence_event_in_order on competence_event (person_id, subject_kind, subject_code, event_day, id);
drop index competence_event_of_person;
