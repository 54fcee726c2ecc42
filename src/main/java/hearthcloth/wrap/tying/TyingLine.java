package hearthcloth.wrap.tying;

import hearthcloth.wrap.fold.TyingMoment;

/** The words of one step and the moment it leads to. */
record TyingLine(String words, TyingMoment moment) {}
