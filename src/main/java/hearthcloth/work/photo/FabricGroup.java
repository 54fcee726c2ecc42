package hearthcloth.work.photo;

import hearthcloth.colour.Colour;
import hearthcloth.photo.FabricClusters;
import hearthcloth.photo.PieceAppearance;
import hearthcloth.photo.ReadPiece;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Pieces of a photograph that look like one fabric, and the fabric they are assumed to be until the maker says
 * otherwise.
 *
 * @param pieces in reading order, never empty
 */
public record FabricGroup(Fabric fabric, List<ReadPiece> pieces) {

    public FabricGroup {
        pieces = List.copyOf(pieces);
    }

    /**
     * The groups of a reading, in reading order. A group is named by its colour ("sage print" where it has a figure),
     * with a number where another has that name already. A picture shows neither a right side nor a nap, so both faces
     * are assumed to look the same and any direction to do, as for a line of the stash file that says nothing.
     */
    public static List<FabricGroup> of(List<ReadPiece> read) {
        Set<String> taken = new HashSet<>();
        List<FabricGroup> groups = new ArrayList<>();
        for (List<ReadPiece> alike : FabricClusters.grouped(read)) {
            PieceAppearance look = alike.get(0).look();
            Colour colour = look.colour().toColour();
            String name = PhotoSorting.suggestion(look, taken);
            groups.add(new FabricGroup(new Fabric(name, colour, Fabric.Faces.SAME, Fabric.Nap.ANY), alike));
        }
        return List.copyOf(groups);
    }
}
