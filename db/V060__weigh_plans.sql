-- What a plan weighs against coal.
insert into policy_figure (policy_key, policy_version, policy_value, unit, origin, source, policy_owner, valid_from) values
    ('plan.water-weight', 1, 0, 'lb/lb', 'ESTIMATED', 'Coal that a pound of water is worth: own choice, none where water is plenty', 'Traction inspector', date '2020-01-01'),
    ('plan.slip-weight', 1, 0.01, 'kg/m', 'ESTIMATED', 'Coal that a metre is worth on which steam must be eased for the rail: own rule', 'Traction inspector', date '2020-01-01'),
    ('plan.late-weight', 1, 8, '', 'ESTIMATED', 'The most that a second may cost to be in time, as a multiple of what the grate burns in it: own rule', 'Traction inspector', date '2020-01-01');
