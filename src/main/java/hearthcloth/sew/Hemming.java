package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Side;
import hearthcloth.cloth.face.Layers;
import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.words.sewing.SewingWords;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The hem, turned twice to the face with the fells: first squared up, then with square or mitred corners as steps of
 * their own. The numbers of the mitre come from {@link Hem}.
 */
final class Hemming {

    private final Cloth cloth;
    private final MakerWords words;
    private final Hem hem;
    private final Size raw;
    private final SewingWords said;

    private Hemming(Cloth cloth, MakerWords words) {
        this.cloth = cloth;
        this.words = words;
        this.said = words.said();
        this.hem = cloth.making().hem();
        Length both = hem.allowance().times(2);
        this.raw = new Size(
                cloth.finished().width().plus(both), cloth.finished().height().plus(both));
    }

    /** Empty where the cloth has no hem. */
    static List<Task> of(Cloth cloth, MakerWords words) {
        if (!cloth.making().hem().allowance().isPositive()) {
            return List.of();
        }
        Hemming hemming = new Hemming(cloth, words);
        return cloth.making().hem().corner() == Hem.Corner.MITRED ? hemming.mitred() : hemming.square();
    }

    private List<Task> square() {
        List<Task> tasks = new ArrayList<>(List.of(squaredUp()));
        if (isTurnedTwice()) {
            tasks.add(clipped());
        }
        List<String> topAndBottom = new ArrayList<>(folds("topBottom"));
        topAndBottom.add(stitch());
        List<String> sides = new ArrayList<>(folds("sides"));
        sides.add(stitch());
        Size half = new Size(raw.width(), cloth.finished().height());
        tasks.add(new Task(
                said.hemTopBottomTitle(),
                topAndBottom,
                check(half),
                thick(List.of(Side.TOP, Side.BOTTOM), hem.allowance()),
                few("topBottom")));
        tasks.add(new Task(
                said.hemSidesTitle(),
                sides,
                check(cloth.finished()),
                corners(thick(List.of(Side.LEFT, Side.RIGHT), Length.ZERO)),
                few("sides")));
        tasks.add(Task.of(said.hemCloseTitle(), List.of(said.hemClosePush(), said.hemCloseSew()))
                .inShort(List.of(said.fewClosePush(), said.fewCloseSew())));
        return List.copyOf(tasks);
    }

    /** The step that cuts off the corner. The cut lies inside both first folds, so that no raw edge can come out. */
    private Task clipped() {
        return Task.of(said.hemClipTitle(), List.of(said.hemClip(words.exact(hem.first()))))
                .inShort(List.of(said.fewClip(words.exact(hem.first())), said.fewClipNoMore()));
    }

    private List<Task> mitred() {
        List<String> creases = new ArrayList<>(folds("all"));
        creases.add(said.hemCreases());
        List<Task> tasks = new ArrayList<>(
                List.of(squaredUp(), Task.of(said.hemPressTitle(), creases).inShort(creased())));
        tasks.add(mitre());
        List<String> round =
                List.of(said.hemRoundFold(), said.hemRoundStitch(words.edgestitch(), from()), said.hemRoundCorner());
        tasks.add(new Task(
                said.hemRoundTitle(),
                round,
                check(cloth.finished()),
                thick(List.of(Side.TOP, Side.RIGHT, Side.BOTTOM, Side.LEFT), Length.ZERO),
                FewWords.fitted(List.of(
                        said.fewRoundFold(),
                        said.fewHemStitchRound(words.edgestitch(), from()),
                        said.fewRoundStart(),
                        said.fewRoundCorner(),
                        said.fewRoundEnd()))));
        return List.copyOf(tasks);
    }

    private List<String> few(String edges) {
        List<String> few = new ArrayList<>(folded(edges));
        few.add(said.fewHemStitch(words.edgestitch(), from()));
        few.add(said.fewHemPress());
        return FewWords.fitted(few);
    }

    private List<String> creased() {
        List<String> few = new ArrayList<>(folded("all"));
        few.add(said.fewHemOpen());
        return few;
    }

    private List<String> folded(String edges) {
        String up = face(cloth.making().fell());
        return isTurnedTwice()
                ? List.of(
                        said.fewHemFold(edges, up, words.exact(hem.first())),
                        said.fewHemFoldAgain(words.exact(hem.second())))
                : List.of(said.fewHemFoldOnce(edges, up, words.exact(hem.allowance())));
    }

    /**
     * The step that sews a mitre, from the finished corner to the first fold; what lies beyond is folded in with the
     * raw edge.
     */
    private Task mitre() {
        Length seam = seamBesideMitre();
        Length trim = new Length(Rounding.NEAREST.whole(hem.mitreTrimMm(seam) * Unit.MILLIMETRE.nanometres()));
        Length stitched = new Length(Rounding.NEAREST.whole(hem.mitreStitchMm() * Unit.MILLIMETRE.nanometres()));
        return Task.of(
                        said.hemMitreTitle(),
                        List.of(
                                said.hemMitreFold(face(cloth.making().fell().other())),
                                said.hemMitreMark(words.exact(hem.mitreIntercept())),
                                isTurnedTwice() ? said.hemMitreStitch(words.about(stitched)) : said.hemMitreStitchOut(),
                                said.hemMitreTrim(words.about(trim))))
                .inShort(List.of(
                        said.fewMitreFold(face(cloth.making().fell().other())),
                        said.fewMitreMark(words.exact(hem.mitreIntercept())),
                        said.fewMitreRule(),
                        isTurnedTwice() ? said.fewMitreStitch(words.about(stitched)) : said.fewMitreStitchOut(),
                        said.fewMitreTrim(words.about(trim))));
    }

    /**
     * What stays beside a mitre: ¼ in or 6 mm, or a quarter of the hem where that is less
     * (docs/sources.md#beside-mitre).
     */
    private Length seamBesideMitre() {
        Length usual = words.ruler().isMetric() ? Length.mm(6) : Length.inches(1, 4);
        return usual.min(hem.allowance().dividedBy(4, Rounding.NEAREST).max(Length.mm(2)));
    }

    private Task squaredUp() {
        double diagonal =
                Math.hypot((double) raw.width().nm(), (double) raw.height().nm());
        Length corner = new Length(Rounding.NEAREST.whole(diagonal));
        return new Task(
                said.hemSquareTitle(),
                List.of(
                        said.hemSquarePress(face(cloth.making().fell())),
                        said.hemSquareDiagonals(words.near(corner)),
                        said.hemSquareTrim()),
                check(raw),
                List.of(),
                FewWords.fitted(List.of(
                        said.fewSquare(face(cloth.making().fell())),
                        said.fewDiagonals(words.near(corner)),
                        said.fewPull(),
                        said.fewTrimEdges())));
    }

    private List<String> folds(String edges) {
        List<String> lines = new ArrayList<>();
        lines.add(said.hemLay(face(cloth.making().fell())));
        if (isTurnedTwice()) {
            lines.add(said.hemFold(edges, words.exact(hem.first())));
            lines.add(said.hemFoldAgain(words.exact(hem.second())));
        } else {
            lines.add(said.hemFoldOnce(edges, words.exact(hem.allowance())));
        }
        return lines;
    }

    /** Whether both folds are more than zero; a hem with only one fold is turned once. */
    private boolean isTurnedTwice() {
        return hem.first().isPositive() && hem.second().isPositive();
    }

    private String stitch() {
        return said.hemStitch(words.edgestitch(), from(), words.stitch());
    }

    /** What the row of the hem is measured from. */
    private String from() {
        return isTurnedTwice() ? "fold" : "raw";
    }

    private static String face(Face face) {
        return MakerWords.face(face);
    }

    private Optional<Task.Check> check(Size size) {
        return Optional.of(new Task.Check(size, said.hemCheck(words.measured(size))));
    }

    /** The thick places along some edges; {@code before} is what is still raw at their ends when they are hemmed. */
    private List<String> thick(List<Side> sides, Length before) {
        Map<Side, List<Length>> places = new EnumMap<>(Side.class);
        int most = 0;
        for (Layers.Spot spot : Layers.spots(cloth)) {
            if (spot.kind() == Layers.Kind.HEM) {
                Side side = side(spot);
                if (sides.contains(side)) {
                    places.computeIfAbsent(side, key -> new ArrayList<>())
                            .add(fromStart(spot, side).plus(before));
                    most = Math.max(most, spot.plies());
                }
            }
        }
        List<String> warnings = new ArrayList<>();
        for (Map.Entry<Side, List<Length>> place : places.entrySet()) {
            warnings.add(said.hemThick(
                    words.near(place.getValue()),
                    Integer.toString(most),
                    place.getKey().word()));
        }
        return warnings;
    }

    private List<String> corners(List<String> warnings) {
        List<String> more = new ArrayList<>(warnings);
        more.add(said.hemThickCorners(Integer.toString(Hem.PLIES * Hem.PLIES)));
        return more;
    }

    private Side side(Layers.Spot spot) {
        if (spot.at().width().isPositive()) {
            return spot.at().y().equals(Length.ZERO) ? Side.TOP : Side.BOTTOM;
        }
        return spot.at().x().equals(Length.ZERO) ? Side.LEFT : Side.RIGHT;
    }

    private static Length fromStart(Layers.Spot spot, Side side) {
        return side.isUpright()
                ? spot.at().y().plus(spot.at().height().dividedBy(2, Rounding.NEAREST))
                : spot.at().x().plus(spot.at().width().dividedBy(2, Rounding.NEAREST));
    }
}
