-- A briefing that names a danger is issued only with a reason, which stands on the issue from then on.
alter table briefing add column issued_despite varchar(400);
