-- From now on a cloth's coming, going and name are changes like any other; "touched" knows the word "shelf" for them, which an
-- earlier Hearthcloth does not. What was done to one book is read in order to hold the tables to the journal.
create index fact_book on fact (book, change);
