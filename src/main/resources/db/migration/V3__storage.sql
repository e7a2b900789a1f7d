-- Where gear lives. What a thing of the shop has here goes with it when it is taken out of the shop.

-- A cabinet for gear, or a person who takes things out, as typed.
create table storage_item (
  position integer primary key autoincrement,
  id       text not null unique,
  sort     text not null check (sort in ('CABINET', 'PERSON')),
  typed    text not null
);

-- Where a thing lives by the plan that was last taken, and how prompts call that place.
create table gear_home (
  thing   text not null primary key references shop_item (id) on delete cascade,
  cabinet text not null references storage_item (id) on delete cascade,
  place   text not null,
  words   text not null
);

-- Where a thing is to stay, whatever is planned.
create table gear_pin (
  thing   text not null primary key references shop_item (id) on delete cascade,
  cabinet text not null references storage_item (id) on delete cascade,
  place   text not null
);

-- What was done with a thing: taken out, put back, looked at, mended, replaced.
create table gear_act (
  number   integer primary key autoincrement,
  id       text not null unique,
  thing    text not null references shop_item (id) on delete cascade,
  happened text not null,
  act      text not null
);

create trigger gear_act_never_changes before update on gear_act
begin
  select raise(abort, 'what was done with a thing never changes');
end;

create trigger gear_act_goes_with_its_thing before delete on gear_act
when exists (select 1 from shop_item where id = old.thing)
begin
  select raise(abort, 'what was done with a thing goes only when the thing goes');
end;

create trigger gear_act_is_never_replaced before insert on gear_act
when exists (select 1 from gear_act where number = new.number or id = new.id)
begin
  select raise(abort, 'what was done with a thing is never replaced');
end;

create trigger shop_item_keeps_its_id before update of id on shop_item
when new.id is not old.id
begin
  select raise(abort, 'the id of a thing never changes: its record refers to it');
end;
