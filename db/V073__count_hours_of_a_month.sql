-- What adds up over a month and over days in a row (0: the railway has no such limit), and which exemptions the railway takes.
alter table knowledge_policy add column month_hours_most double precision default 0 not null;
alter table knowledge_policy add column days_running_most integer default 0 not null;
alter table knowledge_policy add column days_off_hours double precision default 0 not null;
alter table knowledge_policy add column long_turn_rest_hours double precision default 0 not null;
alter table knowledge_policy add column easy_grades boolean default false not null;
