-- Whether the engine gives steam to heat the train, and how much of it a vehicle takes.
alter table train_revision add column heated boolean default false not null;
alter table train_revision alter column heated drop default;
insert into policy_figure (policy_key, policy_version, policy_value, unit, origin, source, policy_owner, valid_from) values
    ('heating.steam-per-vehicle', 1, 100, 'lb/h', 'ESTIMATED', 'Steam to heat one carriage in the cold: practice, from memory 70 to 150', 'Traction inspector', date '2020-01-01');
