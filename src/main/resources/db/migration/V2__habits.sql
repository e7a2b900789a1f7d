-- What proof cuts have shown of machines and cutters, and what the maker has ruled about it. Neither
-- belongs to a job: both outlive the one that they came from. They are only added to.

create table observation (
  number  integer primary key autoincrement,
  content text not null
);

create table ruling (
  number  integer primary key autoincrement,
  content text not null
);

create trigger observation_never_changes before update on observation
begin
  select raise(abort, 'what a proof cut has shown never changes');
end;

create trigger observation_never_goes before delete on observation
begin
  select raise(abort, 'what a proof cut has shown is never deleted: a ruling leaves it out');
end;

create trigger observation_is_never_replaced before insert on observation
when exists (select 1 from observation where number = new.number)
begin
  select raise(abort, 'what a proof cut has shown is never replaced');
end;

create trigger ruling_never_changes before update on ruling
begin
  select raise(abort, 'a ruling never changes: a later one holds in its place');
end;

create trigger ruling_never_goes before delete on ruling
begin
  select raise(abort, 'a ruling is never deleted: a later one holds in its place');
end;

create trigger ruling_is_never_replaced before insert on ruling
when exists (select 1 from ruling where number = new.number)
begin
  select raise(abort, 'a ruling is never replaced');
end;
