package hearthcloth.photo;

import hearthcloth.geometry.Point;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One reading from decoded picture to pieces: ground, shapes, lens, sheet, then each piece in full resolution. */
final class Survey {

    /** How far a rim may be off its polygon, in coarse pixels. */
    private static final double[] TOLERANCES = {2.2, 3.5, 6, 9, 13};

    /** What a corner with no cloth in it counts against a polygon, see {@link Traced#misfit}, */
    private static final double EMPTY_CORNER = 0.1;
    /** and how much must lack there, in square coarse pixels: about what the mask's opening takes from a sharp corner, twice. */
    private static final double EMPTY_AREA = 20;
    /** The share of its area that a card lacks at a corner, thrice: (1 − π/4) r² of ISO/IEC 7810 ID-1's sides. */
    private static final double ROUNDED = 0.0015;

    /** A rim so far from a polygon is none of its sides: the notch of an L, in coarse pixels. */
    private static final double STRAY = 4;
    /** Faint rims are looked for so far from all that stands out, in coarse pixels: its own rim reaches as far. */
    private static final int FAR = 8;
    /** How far a place may be off the side of faint paper and still belong to it, in pixels. */
    private static final double FAINT_NEAR = 1.2;

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
        Looked looked = withSheet(look(ground));
        Lens first = looked.lens;
        SheetFinder.Found rough = choice(looked).likeliest(looked.uncut());
        Lens second = Straightness.estimated(
                first, straightSides(looked), looked.traced.get(rough.index()).sides(), 1);
        Looked closer = looked(looked.ground, looked.blobs, looked.followed, second);
        SheetChoice.Chosen chosen = choice(closer).sure(closer.traced, closer.uncut());
        SheetFinder.Found found = chosen.found();
        Scale scale = new Scale(
                Plane.variants(second, found.corners(), sheet, found.size(), Math.hypot(found.deviation(), 0.15)),
                found,
                picture);
        progress.at(0.8, "measuring");
        List<Doubt> doubts = new ArrayList<>(chosen.doubts());
        looked.followed.get(found.index()).laid.doubt(sheet).ifPresent(doubts::add);
        List<Piece> pieces = new Pieces(coarse, closer.ground, scale, sheet)
                .of(closer.blobs, closer.traced, found.index()).stream()
                        .map(piece -> doubted(piece, doubts))
                        .toList();
        return new Reading.Read(pieces, scale);
    }

    /** @param sides what the picture shows near the rims as laid, under any lens */
    private record Followed(Rims.Laid laid, List<Side> sides) {

        Traced under(Lens lens, double step) {
            return laid.isFaint()
                    ? Traced.of(laid.corners(), sides, lens, FAINT_NEAR, step)
                    : Traced.close(laid.corners(), laid.rims(), sides, lens);
        }
    }

    /**
     * What the picture shows on a ground.
     *
     * @param lens as far as the pieces tell
     */
    private record Looked(Ground ground, List<Blob> blobs, List<Followed> followed, Lens lens, List<Traced> traced) {

        /** All shapes, an empty one for each that is cut off. */
        List<Traced> uncut() {
            return IntStream.range(0, blobs.size())
                    .mapToObj(i -> blobs.get(i).cutOff() ? new Traced(List.of(), List.of(), List.of()) : traced.get(i))
                    .toList();
        }
    }

    private Looked look(Ground on) {
        Lens lens = Lens.unknown(picture);
        List<Seen> seen = Standouts.on(smooth, on).stream()
                .parallel()
                .flatMap(blob -> parted(blob, on, lens))
                .toList();
        List<Blob> blobs = seen.stream().map(Seen::blob).toList();
        progress.at(0.6, "finding the " + sheet.name());
        Rims rims = new Rims(
                new EvenLight(picture, coarse, on), new Occupied(coarse, blobs), (int) Math.round(5 * step + 6));
        List<Followed> followed = IntStream.range(0, seen.size())
                .parallel()
                .mapToObj(i -> rims.of(Corners.tidied(seen.get(i).traced().corners(), 2 * step), i, lens))
                .map(this::followed)
                .toList();
        Looked looked = looked(on, blobs, followed, lens);
        Lens first = Straightness.estimated(lens, straightSides(looked), List.of(), 1.5 + step * 0.25);
        return looked(on, blobs, followed, first);
    }

    private Followed followed(Rims.Laid laid) {
        return new Followed(laid, new Sides(picture, (int) Math.round(step + 2), true).of(laid.corners()));
    }

    private Looked looked(Ground on, List<Blob> blobs, List<Followed> followed, Lens lens) {
        List<Traced> traced =
                followed.stream().parallel().map(f -> f.under(lens, step)).toList();
        return new Looked(on, blobs, followed, lens, traced);
    }

    /** The same where a sheet stands out; otherwise with a mat for ground, or with paper that hardly stands out. */
    private Looked withSheet(Looked looked) {
        SheetChoice choice = choice(looked);
        if (choice.isAny(looked.uncut()) || !choice.isTold()) {
            return looked;
        }
        return Ground.withMat(smooth)
                .map(this::look)
                .filter(onMat -> choice(onMat).isAnyRight(onMat.uncut()))
                .orElseGet(() -> sheet.white() ? withFaint(looked) : looked);
    }

    private Looked withFaint(Looked looked) {
        Occupied occupied = new Occupied(coarse, looked.blobs, FAR);
        List<List<Point>> sheets =
                new FaintSheet(picture, smooth, looked.lens, occupied).like(sheet, finder(looked.lens));
        List<Blob> blobs = new ArrayList<>(looked.blobs);
        List<Followed> followed = new ArrayList<>(looked.followed);
        for (List<Point> corners : sheets) {
            blobs.add(new Parting(coarse, looked.ground).blob(corners));
            followed.add(followed(Rims.Laid.faint(corners)));
        }
        Ground bare = sheets.isEmpty() ? looked.ground : Ground.without(sheets, smooth);
        return looked(bare, blobs, followed, looked.lens);
    }

    private SheetFinder finder(Lens lens) {
        return new SheetFinder(picture, coarse, lens, focalShare);
    }

    private SheetChoice choice(Looked looked) {
        return new SheetChoice(finder(looked.lens), sheet, coarse, looked.ground);
    }

    private static Piece doubted(Piece piece, List<Doubt> more) {
        List<Doubt> doubts =
                Stream.concat(more.stream(), piece.doubts().stream()).toList();
        return new Piece(piece.number(), piece.outline(), piece.usable(), piece.look(), doubts);
    }

    private record Seen(Blob blob, Traced traced) {}

    private Stream<Seen> parted(Blob blob, Ground on, Lens lens) {
        Parting parting = new Parting(coarse, on);
        Traced whole = simplest(blob, lens);
        List<List<Point>> parts = parting.of(whole.corners());
        return parts.size() == 1
                ? Stream.of(new Seen(blob, whole))
                : parts.stream().map(parting::blob).map(part -> new Seen(part, simplest(part, lens)));
    }

    /** A card's rounded corners are no corners cut off. */
    private double emptyArea(Blob blob) {
        double rounded = sheet.cornerRadius().isPositive() ? ROUNDED * blob.area() : 0;
        return Math.max(EMPTY_AREA * step * step, rounded);
    }

    /** Of polygons from fine to rough, the one the picture supports best. */
    private Traced simplest(Blob blob, Lens lens) {
        Sides reader = new Sides(picture, (int) Math.round(2.5 * step + 2), false);
        Traced best = null;
        double least = Double.MAX_VALUE;
        for (double tolerance : TOLERANCES) {
            List<Point> corners = Corners.of(blob.rim(), tolerance * step);
            if (best != null && corners.size() == best.corners().size()) {
                continue;
            }
            Traced traced = Traced.of(corners, reader.of(corners), lens, 2 + step * 0.5, 3 * step);
            double misfit = traced.misfit()
                    + EMPTY_CORNER * blob.lacking(traced.corners(), emptyArea(blob))
                    + blob.straying(traced.corners(), STRAY * step);
            best = misfit < least ? traced : best;
            least = Math.min(least, misfit);
        }
        return java.util.Objects.requireNonNull(best);
    }

    private static List<Side> straightSides(Looked looked) {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < looked.traced.size(); i++) {
            Traced traced = looked.traced.get(i);
            for (int s = 0; s < traced.sides().size(); s++) {
                Side.Fit fit = traced.fits().get(s);
                if (!looked.blobs.get(i).cutOff() && fit.share() > 0.6 && fit.fringe() == 0) {
                    sides.add(traced.sides().get(s));
                }
            }
        }
        return sides;
    }
}
