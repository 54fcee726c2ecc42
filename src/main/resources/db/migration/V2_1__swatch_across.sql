-- How much cloth a picture of a fabric shows from side to side, so that it is tiled to scale; 10 cm where nobody said.
alter table swatch add column across bigint not null default 100000000;
