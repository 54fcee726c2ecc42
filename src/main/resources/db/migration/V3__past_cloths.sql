-- The last states of each cloth by version, so that a change made on an old page is kept beside the newer state.
create table past (
  cloth text not null,
  version bigint not null,
  document text not null,
  primary key (cloth, version)
);
insert into past (cloth, version, document) select id, version, document from cloth;
