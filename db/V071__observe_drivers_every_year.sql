-- Whether a driver must be observed at work, and tested unannounced, in every calendar year.
alter table knowledge_policy add column needs_observed boolean default false not null;
alter table knowledge_policy add column needs_tested boolean default false not null;
