-- What is kept from one day to the next. Times are UTC, in ISO 8601 with nine decimals, so that
-- they sort as text. Foreign keys are switched on by every connection of the program.

create table shop_item (
  position integer primary key autoincrement,
  id       text not null unique,
  shelf    text not null,
  kind     text not null,
  typed    text not null
);

create table job (
  id      text not null primary key,
  typed   text not null,
  created text not null,
  changed text not null,
  demo    integer not null check (demo in (0, 1))
);

-- A plan as it was when work began with it.
create table begun_plan (
  number   integer primary key autoincrement,
  job      text not null references job (id) on delete cascade,
  revision integer not null check (revision >= 1),
  begun    text not null,
  content  text not null,
  unique (job, revision)
);

-- What each set-up of any plan of the job stood on: answers "what changed" without reading plans.
create table set_up_marks (
  number      integer primary key autoincrement,
  job         text not null references job (id) on delete cascade,
  fingerprint text not null,
  content     text not null,
  unique (job, fingerprint)
);

create table entry (
  number      integer primary key autoincrement,
  job         text not null references job (id) on delete cascade,
  id          text not null,
  happened    text not null,
  device      text not null,
  operation   text not null,
  fingerprint text not null,
  act         text not null,
  unique (job, id)
);

-- The record is only added to. A deletion gets through as part of deleting the whole job: then the
-- job is gone already when its plans and entries follow. A replacement counts as a change; SQLite
-- would carry it out without asking the triggers of a deletion, so it is refused on the way in.

create trigger entry_never_changes before update on entry
begin
  select raise(abort, 'an entry of the record never changes');
end;

create trigger entry_goes_with_its_job before delete on entry
when exists (select 1 from job where id = old.job)
begin
  select raise(abort, 'an entry of the record goes only when its whole job is discarded');
end;

create trigger entry_is_never_replaced before insert on entry
when exists (select 1 from entry
             where number = new.number or (job = new.job and id = new.id))
begin
  select raise(abort, 'an entry of the record is never replaced');
end;

create trigger begun_plan_never_changes before update on begun_plan
begin
  select raise(abort, 'a plan that work began with never changes');
end;

create trigger begun_plan_goes_with_its_job before delete on begun_plan
when exists (select 1 from job where id = old.job)
begin
  select raise(abort, 'a plan that work began with goes only when its whole job is discarded');
end;

create trigger begun_plan_is_never_replaced before insert on begun_plan
when exists (select 1 from begun_plan
             where number = new.number or (job = new.job and revision = new.revision))
begin
  select raise(abort, 'a plan that work began with is never replaced');
end;

create trigger job_is_never_replaced before insert on job
when exists (select 1 from job where id = new.id)
begin
  select raise(abort, 'a job is updated, never replaced: its record would go with it');
end;

create trigger job_keeps_its_id before update of id on job
when new.id is not old.id
begin
  select raise(abort, 'the id of a job never changes: its record refers to it');
end;
