package hearthcloth.web.kit;

import hearthcloth.words.Language;

/**
 * The three ways to begin, as {@code part/ways.jte} shows them.
 *
 * @param isOnTable true where the line in which a piece is said is on the same page
 * @param isExampleOffered true while the example does not lie in the workroom
 */
public record Ways(Language language, String token, boolean isOnTable, boolean isExampleOffered) {}
