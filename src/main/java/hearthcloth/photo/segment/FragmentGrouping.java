package hearthcloth.photo.segment;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Distinguishes pieces that lie close together from one figured piece that fell apart where its figures look like the
 * ground. Pieces are each nearly convex, and they are either exactly two, or of different colours, or do not share one
 * outline.
 */
final class FragmentGrouping {

    /** Every sixth place of the rim is enough to judge the inside. */
    private static final int EVERY = 6;

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final SegmentParameters.Parting parameters;

    FragmentGrouping(LabThumbnail coarse, GroundModel ground, SegmentParameters.Parting parameters) {
        this.coarse = coarse;
        this.ground = ground;
        this.parameters = parameters;
    }

    /** The parts that are large enough to be pieces, when they lie side by side; empty when the whole is one piece. */
    List<Blob> within(Blob whole, List<Blob> parts) {
        List<Blob> large = sideBySide(whole, parts);
        boolean bent = whole.filled() < parameters.compact();
        boolean two = large.size() == 2 && large.stream().allMatch(p -> p.filled() > parameters.compact());
        return bent || two || areOfTwoColours(large) ? large : List.of();
    }

    /** The same for parts that only their colours can tell apart, since one piece may also have a waist. */
    List<Blob> ofTwoCloths(Blob whole, List<Blob> parts) {
        List<Blob> large = sideBySide(whole, parts);
        return large.size() == 2 && areOfTwoColours(large) ? large : List.of();
    }

    private List<Blob> sideBySide(Blob whole, List<Blob> parts) {
        List<Blob> large = parts.stream()
                .filter(p -> p.area() > parameters.fragments().least() * whole.area())
                .toList();
        double covered = large.stream().mapToDouble(Blob::area).sum();
        boolean solid =
                large.stream().allMatch(p -> p.filled() > parameters.fragments().solid());
        boolean sharp =
                large.stream().anyMatch(p -> p.filled() > parameters.fragments().convex());
        boolean whollyApart =
                large.size() > 1 && covered >= parameters.fragments().covered() * whole.area();
        return whollyApart && solid && sharp ? large : List.of();
    }

    private boolean areOfTwoColours(List<Blob> parts) {
        List<Lab> colours = parts.stream().map(this::colour).toList();
        return colours.stream()
                .anyMatch(c -> c.apart(colours.get(0)) > parameters.fragments().twoColours());
    }

    private Lab colour(Blob blob) {
        List<Point> outline = IntStream.range(0, blob.rim().size() / EVERY)
                .mapToObj(i -> blob.rim().get(i * EVERY))
                .toList();
        return InteriorColour.of(outline, coarse, ground).colour();
    }
}
