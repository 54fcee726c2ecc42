-- From now on what happens on the bench is told as what it was: a cut, a seam sewn, a seam unpicked; an earlier Hearthcloth
-- knows edits of a cloth's text only. And a cloth that is sewn in part may have cuts still to make ("RECUT"), whose pieces
-- lie in the stash until they are made. What was done before stays as it was recorded.
update setting set text = text where name = 'stash.next';
