package hearthcloth.cutstock.piecing.tree;

/** How a scrap, or a part of it, is divided by straight cuts from edge to edge. */
public sealed interface ScrapCut {

    /**
     * All of it is one patch.
     *
     * @param patch the patch's place in the list that was asked for
     */
    record Whole(int patch) implements ScrapCut {}

    /** None of it is a patch. */
    record Spare() implements ScrapCut {}

    /**
     * One cut.
     *
     * @param upright whether the cut runs from top to bottom
     * @param at how far from the left or the top of what is cut
     */
    record Cut(boolean upright, long at, ScrapCut first, ScrapCut second) implements ScrapCut {}
}
