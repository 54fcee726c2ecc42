-- What a studio has in common. Each person's own work lies in a schema of its own, in the form of db/migration.
create table person (
  id bigint primary key,
  name text not null,
  called text not null unique,
  passphrase text not null,
  part text not null,
  wrong bigint not null,
  waits text not null
);
create table visit (
  mark text primary key,
  person bigint not null references person (id),
  begun text not null
);
create index visit_person on visit (person);
create table guideline (
  id text primary key,
  name text not null,
  teacher bigint not null references person (id),
  document text not null,
  handed text not null
);
