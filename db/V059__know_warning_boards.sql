-- Boards that warn of a reduction of speed.
alter table feature drop constraint feature_kind;
alter table feature add constraint feature_kind check (kind in ('STATION', 'TIMING_POINT', 'SIGNAL', 'LEVEL_CROSSING', 'TUNNEL', 'BRIDGE',
    'SUMMIT', 'WATER_COLUMN', 'WATER_TROUGH', 'CATCH_POINTS', 'LANDMARK', 'POOR_ADHESION', 'OVERHEAD_WIRES',
    'WHISTLE_BOARD', 'WARNING_BOARD', 'HAZARD', 'TURNTABLE'));
