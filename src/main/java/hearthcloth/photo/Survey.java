package hearthcloth.photo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** One reading from decoded picture to pieces: ground, shapes, lens, sheet, then each piece in full resolution. */
final class Survey {

    /** Smaller shapes are lint, in square millimetres; and thinner ones threads, in millimetres. */
    private static final double LEAST_AREA_MM2 = 300;

    private static final double LEAST_WIDTH_MM = 9;

    /** How far a rim may be off its polygon, in coarse pixels. */
    private static final double[] TOLERANCES = {2.2, 3.5, 6};

    private final Picture picture;
    private final Optional<Double> focalShare;
    private final Sheet sheet;
    private final Progress progress;
    private final Coarse coarse;
    private final double step;
    private final Coarse smooth;
    private final Ground ground;

    Survey(Decoder.Decoded decoded, Sheet sheet, Progress progress) {
        this.picture = decoded.picture();
        this.focalShare = decoded.focalShare();
        this.sheet = sheet;
        this.progress = progress;
        progress.at(0.3, "looking at the ground");
        this.coarse = Coarse.of(picture);
        this.step = coarse.step;
        this.smooth = coarse.smoothed(1.2);
        this.ground = Ground.of(smooth);
    }

    Reading read() {
        progress.at(0.45, "finding the pieces");
        List<Blob> blobs = Standouts.on(smooth, ground);
        Lens lens = Lens.unknown(picture);
        List<Traced> traced = blobs.stream().parallel().map(b -> simplest(b, lens)).toList();
        progress.at(0.6, "finding the " + sheet.name());
        Lens first = Straightness.estimated(lens, straightSides(blobs, traced), List.of(), 1.5 + step * 0.25);
        traced = again(traced, first);
        SheetFinder.Found rough = found(first, blobs, traced);
        Lens second = Straightness.estimated(
                first, straightSides(blobs, traced), traced.get(rough.index()).sides(), 1);
        traced = again(traced, second);
        SheetFinder.Found found = found(second, blobs, traced);
        Scale scale = new Scale(
                Plane.variants(second, found.corners(), sheet, found.size(), Math.hypot(found.deviation(), 0.15)),
                found,
                picture);
        progress.at(0.8, "measuring");
        return new Reading.Read(pieces(blobs, traced, scale, found.index()), scale, List.of());
    }

    private SheetFinder.Found found(Lens lens, List<Blob> blobs, List<Traced> traced) {
        return new SheetFinder(coarse, lens, focalShare)
                .among(uncut(blobs, traced), sheet)
                .filter(found -> !sheet.white() || isWhitest(found.index(), traced))
                .orElseThrow(() -> new RefusedException("No " + sheet.name() + " was found. Lay it flat among the pieces,"
                        + " whole in the picture, touching nothing, on ground that it stands out from, and take the picture"
                        + " from above."));
    }

    /** False when a larger shape is as white: then that is the sheet, but something touches it or it is cut off. */
    private boolean isWhitest(int index, List<Traced> traced) {
        Interior chosen = Interior.of(traced.get(index).corners(), coarse, ground);
        double area = Math.abs(Shapes.signedArea(traced.get(index).corners()));
        for (Traced other : traced) {
            Interior interior = Interior.of(other.corners(), coarse, ground);
            if (Math.abs(Shapes.signedArea(other.corners())) > 1.5 * area
                    && interior.l() > chosen.l() - 3
                    && Math.hypot(interior.a(), interior.b()) < Math.hypot(chosen.a(), chosen.b()) + 2
                    && !interior.figured()) {
                return false;
            }
        }
        return true;
    }

    /** Of polygons from fine to rough, the one the picture supports best. */
    private Traced simplest(Blob blob, Lens lens) {
        Sides reader = new Sides(picture, (int) Math.round(2.5 * step + 2), Sides.Reading.ALONG_THE_CHANGE);
        Traced best = null;
        for (double tolerance : TOLERANCES) {
            List<Spot> corners = Corners.of(blob.rim(), tolerance * step);
            Traced traced = Traced.of(corners, reader, null, lens, 2 + step * 0.5, 3 * step);
            best = best == null || traced.misfit() < best.misfit() ? traced : best;
        }
        return java.util.Objects.requireNonNull(best);
    }

    private List<Traced> again(List<Traced> traced, Lens lens) {
        return traced.stream().parallel().map(t -> again(t, lens)).toList();
    }

    private Traced again(Traced traced, Lens lens) {
        List<Spot> corners = Corners.tidied(traced.corners(), 2 * step);
        Sides.Reading reading = Interior.of(corners, coarse, ground).figured()
                ? Sides.Reading.AWAY_FROM_THE_GROUND
                : Sides.Reading.ALONG_THE_CHANGE;
        Sides reader = new Sides(picture, (int) Math.round(1.5 * step + 2), reading);
        Sides wide = new Sides(picture, (int) Math.round(5 * step + 8), reading);
        return Traced.of(corners, reader, wide, lens, 1.2, 10 * step);
    }

    private static List<Side> straightSides(List<Blob> blobs, List<Traced> traced) {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < traced.size(); i++) {
            for (int s = 0; s < traced.get(i).sides().size(); s++) {
                Side.Fit fit = traced.get(i).fits().get(s);
                if (!blobs.get(i).cutOff() && fit.share() > 0.6 && fit.fringe() == 0) {
                    sides.add(traced.get(i).sides().get(s));
                }
            }
        }
        return sides;
    }

    private static List<Traced> uncut(List<Blob> blobs, List<Traced> traced) {
        return IntStream.range(0, blobs.size())
                .mapToObj(i -> blobs.get(i).cutOff() ? new Traced(List.of(), List.of(), List.of()) : traced.get(i))
                .toList();
    }

    private List<Piece> pieces(List<Blob> blobs, List<Traced> traced, Scale scale, int sheetIndex) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < blobs.size(); i++) {
            if (i == sheetIndex) {
                continue;
            }
            Outline outline = outline(traced.get(i), scale);
            if (outline.areaMm2() < LEAST_AREA_MM2
                    || outline.areaMm2() / Shapes.perimeter(outline.floor()) * 2 < LEAST_WIDTH_MM) {
                continue;
            }
            pieces.add(new Piece(
                    0, outline, usable(traced.get(i), outline, scale), new Look(0, 0, 0, false, 0), List.of()));
        }
        pieces.sort(Comparator.comparingDouble(p -> p.outline().picture().get(0).y()));
        List<Piece> numbered = new ArrayList<>();
        for (Piece piece : pieces) {
            numbered.add(new Piece(numbered.size() + 1, piece.outline(), piece.usable(), piece.look(), piece.doubts()));
        }
        return numbered;
    }

    private static Outline outline(Traced traced, Scale scale) {
        List<Spot> corners = traced.corners();
        List<Measured> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get((i + 1) % corners.size());
            sides.add(scale.measured(a, b, endsMm(traced, i, scale)));
        }
        return scale.outline(corners, sides);
    }

    /** Deviation of side i's length from how well the sides it ends at were seen. */
    private static double endsMm(Traced traced, int i, Scale scale) {
        int n = traced.corners().size();
        int next = (i + 1) % n;
        double own = traced.fits().get(i).deviation();
        double start = Math.hypot(traced.fits().get(Math.floorMod(i - 1, n)).deviation() * 1.5, own * cosine(traced, i));
        double end = Math.hypot(traced.fits().get(next).deviation() * 1.5, own * cosine(traced, next));
        return Math.hypot(
                start / traced.sine(i) / scale.pixelsPerMm(traced.corners().get(i)),
                end / traced.sine(next) / scale.pixelsPerMm(traced.corners().get(next)));
    }

    private static double cosine(Traced traced, int i) {
        double sine = traced.sine(i);
        return Math.sqrt(1 - Math.min(1, sine * sine));
    }

    /** The largest rectangle in the outline, each side shorter by what the picture leaves open (95 of 100). */
    private static LargestRectangle.Box usable(Traced traced, Outline outline, Scale scale) {
        LargestRectangle.Box box = LargestRectangle.inside(outline.floor());
        List<Spot> c = box.corners().stream().map(scale::inPicture).toList();
        double own = traced.fits().stream().mapToDouble(Side.Fit::deviation).average().orElse(1) * Math.sqrt(2);
        double ownMm = own / scale.pixelsPerMm(c.get(0));
        return box.shrunk(
                1.96 * scale.seenDeviation(c.get(0), c.get(1), ownMm), 1.96 * scale.seenDeviation(c.get(1), c.get(2), ownMm));
    }
}
