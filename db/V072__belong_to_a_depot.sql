-- From which depot somebody works in a post; empty where nobody has said so.
alter table person_post add column depot varchar(60);
alter table person_post add constraint person_post_depot_given check (depot <> '');
