-- Pieces kept for something else: never planned with, still seen.
create table aside (
  piece text primary key
);
