-- A figure that the railway lays down for itself holds once a second person has approved it; what was in force stays so.
alter table policy_figure add column entered_by varchar(120) default '' not null;
alter table policy_figure add column approved_by varchar(120);
update policy_figure set approved_by = policy_owner;
