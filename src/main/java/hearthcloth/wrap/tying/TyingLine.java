package hearthcloth.wrap.tying;

import hearthcloth.wrap.fold.TyingMoment;


/** One step's words and the moment it leads to. */
record TyingLine(String words, TyingMoment moment) {}
