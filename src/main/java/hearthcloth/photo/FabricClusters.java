package hearthcloth.photo;

import java.util.ArrayList;
import java.util.List;

/** Groups pieces that look like one fabric, so that naming one names them all. */
public final class FabricClusters {

    private FabricClusters() {}

    /**
     * Puts every piece into exactly one group, groups and pieces in reading order. A piece joins the first group whose
     * first piece it resembles, so that no chain of small differences joins two unlike fabrics.
     */
    public static List<List<ReadPiece>> grouped(List<ReadPiece> pieces) {
        List<List<ReadPiece>> groups = new ArrayList<>();
        for (ReadPiece piece : pieces) {
            groups.stream()
                    .filter(group -> group.get(0).look().isLike(piece.look()))
                    .findFirst()
                    .orElseGet(() -> {
                        List<ReadPiece> fresh = new ArrayList<>();
                        groups.add(fresh);
                        return fresh;
                    })
                    .add(piece);
        }
        return groups.stream().map(List::copyOf).toList();
    }
}
