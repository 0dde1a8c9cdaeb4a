-- The latest entries about a person, without walking back over everybody's.
create index competence_event_latest on competence_event (person_id, id);
