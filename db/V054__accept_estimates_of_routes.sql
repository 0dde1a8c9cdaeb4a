-- Whether the person who made a revision accepted the estimates in it. Until now every estimate counted as entered.
alter table route_revision add column estimates_accepted boolean default true not null;
alter table route_revision alter column estimates_accepted drop default;
