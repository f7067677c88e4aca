-- A library as version 1 left it. Never edited: what stands here was on somebody's disk.

create table job (
  id text not null primary key,
  archived integer not null default 0 check (archived in (0, 1))
) strict, without rowid;

-- Every saving of every job. Rows are added, never changed and never taken away.
create table version (
  entry integer primary key, -- counts all savings in their order, whatever the clock said
  job text not null references job (id),
  number integer not null check (number >= 1),
  saved integer not null,
  device text not null,
  note text not null,
  name text not null,
  place text not null,
  notation text not null check (notation in ('yaml', 'json')),
  changes_notation text check (changes_notation in ('yaml', 'json')),
  changes text check ((changes is null) = (changes_notation is null)),
  text text not null, -- last, so that the list need not read past it
  unique (job, number)
) strict;

create trigger versions_stay_as_they_are before update on version
begin
  select raise(abort, 'a saved version is never changed');
end;

create trigger versions_are_kept before delete on version
begin
  select raise(abort, 'a saved version is never taken away');
end;

create table tick (
  entry integer primary key,
  job text not null references job (id),
  name text not null,
  made integer not null,
  unique (job, name)
) strict;

create table device (
  entry integer primary key,
  id text not null unique,
  name text not null,
  token_hash text not null unique,
  paired integer not null,
  seen integer not null,
  revoked integer
) strict;

insert into job values ('loft000001', 0), ('porch00001', 1);

insert into version
  (entry, job, number, saved, device, note, name, place, notation, changes_notation, changes, text)
values
  (1, 'loft000001', 1, 1800000001000, 'Phone', '', 'Loft', '', 'yaml', null, null, 'job: Loft
'),
  (2, 'loft000001', 2, 1800000002000, 'Desk', 'east', 'Stair to the "sail" loft', 'boathouse; it''s ''east''', 'json',
    'yaml', '# it''s local
', '{"job":"Stair to the \"sail\" loft"}'),
  (3, 'porch00001', 1, 1800000003000, 'Phone', '', 'IŞIK', '', 'yaml', null, null, '');

insert into tick values (1, 'loft000001', 'mark 3', 1800000004000);

insert into device values
  (1, 'device0001', 'Phone', '5f1e', 1800000005000, 1800000006000, null),
  (2, 'device0002', 'Old phone', '77aa', 1800000005000, 1800000006000, 1800000007000);

pragma application_id = 1349804904;
pragma user_version = 1;
