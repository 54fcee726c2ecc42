package hearthcloth.photo.segment;

import hearthcloth.colour.Lab;
import hearthcloth.geometry.Point;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import java.util.List;
import java.util.stream.IntStream;


/**
 * Tells pieces that lie close together from one figured piece that fell apart where its figures look like the ground:
 * pieces are each nearly convex, and either two, or of different colours, or not of one outline.
 */
final class FragmentGrouping {

    /** Smaller parts than this share of the whole are bits of it. */
    private static final double LEAST_SHARE = 0.08;
    /** Parts must make up this share of the whole, or it fell apart too far to tell. */
    private static final double COVERED = 0.75;
    /** Even a bent piece fills this much of its convex hull. */
    private static final double SOLID = 0.66;
    /** One of them at least is no bent and no ragged shape. */
    private static final double CONVEX = 0.9;
    /** Mean colours this far apart are of two cloths (CIE 1976). */
    private static final double TWO_COLOURS = 12;
    /** Of the rim, every so many places tell the inside well enough. */
    private static final int EVERY = 6;

    private final LabThumbnail coarse;
    private final GroundModel ground;

    FragmentGrouping(LabThumbnail coarse, GroundModel ground) {
        this.coarse = coarse;
        this.ground = ground;
    }

    /** The parts that are large enough to be pieces, when they lie side by side; empty when the whole is one piece. */
    List<Blob> within(Blob whole, List<Blob> parts) {
        List<Blob> large = sideBySide(whole, parts);
        boolean bent = whole.filled() < Blob.COMPACT;
        boolean two = large.size() == 2 && large.stream().allMatch(p -> p.filled() > Blob.COMPACT);
        return bent || two || areOfTwoColours(large) ? large : List.of();
    }

    /** The same where only their colours can tell: a waist may also be one piece's. */
    List<Blob> ofTwoCloths(Blob whole, List<Blob> parts) {
        List<Blob> large = sideBySide(whole, parts);
        return large.size() == 2 && areOfTwoColours(large) ? large : List.of();
    }

    private static List<Blob> sideBySide(Blob whole, List<Blob> parts) {
        List<Blob> large = parts.stream()
                .filter(p -> p.area() > LEAST_SHARE * whole.area())
                .toList();
        double covered = large.stream().mapToDouble(Blob::area).sum();
        boolean solid = large.stream().allMatch(p -> p.filled() > SOLID);
        boolean sharp = large.stream().anyMatch(p -> p.filled() > CONVEX);
        boolean whollyApart = large.size() > 1 && covered >= COVERED * whole.area();
        return whollyApart && solid && sharp ? large : List.of();
    }

    private boolean areOfTwoColours(List<Blob> parts) {
        List<Lab> colours = parts.stream().map(this::colour).toList();
        return colours.stream().anyMatch(c -> c.apart(colours.get(0)) > TWO_COLOURS);
    }

    private Lab colour(Blob blob) {
        List<Point> outline = IntStream.range(0, blob.rim().size() / EVERY)
                .mapToObj(i -> blob.rim().get(i * EVERY))
                .toList();
        return InteriorColour.of(outline, coarse, ground).colour();
    }
}
