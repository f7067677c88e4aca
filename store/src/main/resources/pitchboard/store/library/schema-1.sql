-- Version 1. Released: never edited, only followed by schema-2.sql.
-- Times are milliseconds since the beginning of 1970, UTC.

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
