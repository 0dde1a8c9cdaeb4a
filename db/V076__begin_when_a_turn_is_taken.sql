-- What somebody begins to learn when they take a proposed turn.
alter table refresh_proposal add column begins varchar(400) default '' not null;
