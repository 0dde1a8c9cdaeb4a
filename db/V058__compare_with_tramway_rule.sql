-- A light railway may work by a tramway ordinance: which of its two tables of least retardation its stops are compared with.
insert into policy_figure (policy_key, policy_version, policy_value, unit, origin, source, policy_owner, valid_from) values
    ('braking.tramway-table', 1, 0, '', 'ESTIMATED', 'Own choice: 0 for none, 1 or 2 for a table of the ordinance', 'Traction inspector', date '2020-01-01');
