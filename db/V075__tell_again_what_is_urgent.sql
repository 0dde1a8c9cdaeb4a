-- A second horizon before knowledge lapses, at which it is told as urgent.
alter table knowledge_policy add column urgent_days integer default 14 not null;
update knowledge_policy set urgent_days = warn_days where warn_days < urgent_days;
