-- Who has an engine is asked whenever a train is saved.
create index train_engine_number on train_engine (engine_number);
