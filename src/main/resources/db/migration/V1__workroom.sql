-- Lengths are whole nanometres; times are ISO 8601 in UTC; documents are JSON. The same statements run on PostgreSQL.
create table setting (
  name text primary key,
  text text not null
);
create table swatch (
  fabric text primary key,
  kind text not null,
  picture text not null
);
create table piece (
  id text primary key,
  fabric text not null,
  colour text not null,
  faces text not null,
  nap text not null,
  width bigint not null,
  length bigint not null,
  washed text not null,
  position bigint not null
);
create index piece_position on piece (position);
create table cloth (
  id text primary key,
  name text not null,
  document text not null,
  changed text not null,
  version bigint not null
);
create table deed (
  number bigint primary key,
  book text not null,
  label text not null,
  change text not null,
  undone bigint not null,
  done text not null
);
create index deed_book on deed (book, number);
