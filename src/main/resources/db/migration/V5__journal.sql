-- One journal for the whole workroom: a change is one thing she did, and may touch pieces and cloths at once. "undone" is
-- 0 while it is in force, else the number of the undo that took it back. A fact is what it did to one book.
create table change (
  number bigint primary key,
  label text not null,
  done text not null,
  undone bigint not null
);
create table fact (
  change bigint not null,
  place bigint not null,
  book text not null,
  what text not null,
  primary key (change, place)
);
create table touched (
  change bigint not null,
  thing text not null,
  primary key (change, thing)
);
create index touched_thing on touched (thing, change);
-- Until now the stash and each cloth kept changes of their own, so that cutting a cloth was two. Where both are as they
-- were made, one after the other, they become one.
alter table deed add column whole bigint not null default 0;
update deed set whole = number;
update deed set whole = number - 1
  where exists (select 1 from deed earlier where earlier.number = deed.number - 1 and earlier.undone = deed.undone
    and ((earlier.book like 'cloth:%' and earlier.label = 'cut' and deed.book = 'stash' and deed.label like 'cut %')
      or (earlier.book = 'stash' and earlier.label like 'a slip in piece %'
        and deed.book like 'cloth:%' and deed.label = 'planned again after a slip')));
insert into change (number, label, done, undone)
  select whole, label, done,
    case when undone = 1 then (select max(number) + 1 from deed) - whole else 0 end
  from deed where number = (select max(same.number) from deed same where same.whole = deed.whole);
insert into fact (change, place, book, what) select whole, number - whole, book, change from deed;
-- Which pieces they touched was not recorded; they are taken to touch any.
insert into touched (change, thing) select distinct whole, book from deed;
insert into touched (change, thing) select distinct whole, 'piece:*' from deed where book = 'stash';
drop table deed;
-- Earlier states of a cloth are kept as what changed since, not as copies. Those kept until now are copies.
delete from past;
