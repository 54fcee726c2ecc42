-- Her photograph of a finished cloth, a JPEG. It is no part of the cloth's document, so that a change does not write it anew;
-- it lies here for as long as the cloth can be brought back. "bytea" is PostgreSQL's word for bytes, as in form 4.
create table portrait (
  cloth text primary key,
  kept text not null,
  picture bytea not null
);
