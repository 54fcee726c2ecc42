-- Photographs of scraps, each with what was read off it and what she has made of that; the file itself lies apart, so that
-- a change does not write it anew. "bytea" is PostgreSQL's word for bytes; SQLite keeps bytes under any word.
create table photograph (
  id text primary key,
  sheet text not null,
  kept text not null,
  refused text not null,
  scale text not null,
  document text not null,
  version bigint not null
);
create table photograph_file (
  photograph text primary key,
  picture bytea not null,
  size bigint not null
);
create table photograph_screen (
  photograph text primary key,
  picture bytea not null
);
-- Which of its pieces are in the stash.
create table photograph_taken (
  photograph text not null,
  piece text not null,
  primary key (photograph, piece)
);
