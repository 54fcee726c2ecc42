package hearthcloth.sew;

import java.util.List;

/**
 * What to have ready before anything is cut.
 *
 * @param fabrics each fabric with the pieces that are used
 * @param tools to lay out
 * @param washing before cutting: what to wash and why
 * @param before what to do once the pieces are dry: press, straighten, mark
 */
public record Gather(List<FabricNeed> fabrics, List<String> tools, List<String> washing, List<String> before) {

    /** One fabric: its name, and each piece of it as {@code piece 4, 16 × 18 in}. */
    public record FabricNeed(String fabric, List<String> pieces) {
        public FabricNeed {
            pieces = List.copyOf(pieces);
        }
    }

    public Gather {
        fabrics = List.copyOf(fabrics);
        tools = List.copyOf(tools);
        washing = List.copyOf(washing);
        before = List.copyOf(before);
    }
}
