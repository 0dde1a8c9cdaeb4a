-- One row that whoever stores a train locks while looking whether its crew and engines are free.
create table booking_gate (
    id integer primary key,
    constraint booking_gate_one check (id = 1)
);
insert into booking_gate (id) values (1);
