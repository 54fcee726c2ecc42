package hearthcloth.wrap.tying;

import hearthcloth.wrap.fold.Moment;

/** One step's words and the moment it leads to. */
record Line(String words, Moment moment) {}
