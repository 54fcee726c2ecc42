package hearthcloth.cutstock.join;

import java.util.List;

/**
 * A bar to be pieced.
 *
 * @param length as cut, without join losses
 * @param kinds the kinds of strip it may be pieced from; all its parts are of one kind
 * @param mostJoins the most joins it may have
 * @param leastPart the shortest part it may have, as cut
 */
public record WantedBar(long length, List<Integer> kinds, int mostJoins, long leastPart) {

    public WantedBar {
        kinds = List.copyOf(kinds);
    }
}
