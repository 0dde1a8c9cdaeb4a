-- How much what nobody knows beforehand differs from day to day: standard deviations for the runs that say how sure a forecast is.
insert into policy_figure (policy_key, policy_version, policy_value, unit, origin, source, policy_owner, valid_from) values
    ('scatter.coal-heat', 1, 0.07, '', 'ESTIMATED', 'Heat of coal of one kind from load to load, as a share: assumed', 'Traction inspector', date '2020-01-01'),
    ('scatter.adhesion', 1, 0.2, '', 'ESTIMATED', 'Adhesion of rails called the same, as a share: published single figures lie up to 30 per cent from the line, from memory', 'Traction inspector', date '2020-01-01'),
    ('scatter.resistance', 1, 0.12, '', 'ESTIMATED', 'Resistance of the whole train, formula and day, as a share: published formulas differ by up to a half; assumed', 'Traction inspector', date '2020-01-01'),
    ('scatter.load', 1, 0.04, '', 'ESTIMATED', 'Weight behind the engine, passengers and lading, as a share: assumed', 'Traction inspector', date '2020-01-01'),
    ('scatter.wind', 1, 4, 'm/s', 'ESTIMATED', 'Wind along the train, a moderate breeze: assumed', 'Traction inspector', date '2020-01-01'),
    ('scatter.action', 1, 5, 's', 'ESTIMATED', 'By how much a handle is set early or late: assumed', 'Traction inspector', date '2020-01-01'),
    ('scatter.pressure-reading', 1, 3, 'psi', 'ESTIMATED', 'Reading of the pressure gauge: assumed', 'Traction inspector', date '2020-01-01'),
    ('scatter.glass-reading', 1, 0.05, '', 'ESTIMATED', 'Reading of a glass that surges, as a share of the glass: assumed', 'Traction inspector', date '2020-01-01');
