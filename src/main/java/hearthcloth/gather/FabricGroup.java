package hearthcloth.gather;

import hearthcloth.colour.Colour;
import hearthcloth.photo.Alike;
import hearthcloth.photo.Look;
import hearthcloth.photo.Piece;
import hearthcloth.stash.Fabric;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Pieces of a photograph that look like one fabric, and the fabric they are taken for until the maker says otherwise.
 *
 * @param pieces in reading order, never empty
 */
public record FabricGroup(Fabric fabric, List<Piece> pieces) {

    public FabricGroup {
        pieces = List.copyOf(pieces);
    }

    /**
     * The groups of a reading, in reading order. A group is called by its colour ("figured sage" where it has a figure),
     * with a number where another is called so already. A picture shows neither a right side nor a nap: both faces are
     * taken to look the same and any direction to do, as for a line of the stash file that says nothing.
     */
    public static List<FabricGroup> of(List<Piece> read) {
        Set<String> taken = new HashSet<>();
        List<FabricGroup> groups = new ArrayList<>();
        for (List<Piece> alike : Alike.grouped(read)) {
            Look look = alike.get(0).look();
            Colour colour = look.colour().toColour();
            String name = free(name(look), taken);
            groups.add(new FabricGroup(new Fabric(name, colour, Fabric.Faces.SAME, Fabric.Nap.ANY), alike));
        }
        return List.copyOf(groups);
    }

    private static String name(Look look) {
        return look.pattern() == Look.Pattern.FIGURED ? "figured " + look.name() : look.name();
    }

    private static String free(String name, Set<String> taken) {
        String free = name;
        for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
            free = name + " " + i;
        }
        return free;
    }
}
