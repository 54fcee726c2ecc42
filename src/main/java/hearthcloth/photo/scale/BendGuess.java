package hearthcloth.photo.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.simple.SimpleMatrix;

/**
 * One guess of how high and how rough a sheet's bend is, and what it makes of the marks as seen.
 *
 * @param before covariance of all that is unknown before anything is seen: plane, lens, then heights
 * @param rest what heights and print do not explain: how the sheet is drawn together, and noise
 * @param model how what is unknown moves the marks
 * @param inverse of the covariance of the marks as seen
 * @param likelihood logarithm of how likely the guess makes the marks as seen
 */
record BendGuess(
        SheetSight sight,
        SimpleMatrix before,
        SimpleMatrix rest,
        SimpleMatrix model,
        SimpleMatrix inverse,
        double likelihood) {

    /** Heights that are tried, as standard deviations in millimetres. */
    private static final double[] HEIGHTS_MM = {0.05, 0.6, 1.5, 4, 9};
    /** How much likelier a flat sheet is before anything is seen, as a logarithm: most lie flat. */
    private static final double FLAT = 3;
    /** How far apart places are whose heights have little to do with each other, in millimetres; all are tried. */
    private static final double[] ROUGHNESS_MM = {35, 90, 200};
    /** The standard deviation of each of the plane's eight numbers before anything is seen: as good as unknown. */
    private static final double UNKNOWN_MM = 60;
    /**
     * A bent sheet is shorter, seen from above, than its paper is long: by half the square of its slope, which is about that
     * of height over roughness. Over so many millimetres this adds up before it is another bend's turn.
     */
    private static final double SHORTENED_MM = 100;
    /** How far apart places are that are drawn together independently of each other, in millimetres. */
    private static final double SHORTENED_OVER_MM = 110;
    /** Added to variances so that a covariance can be decomposed, in square millimetres. */
    private static final double JITTER = 1e-7;

    private static final int NUMBERS = 9;

    static List<BendGuess> all(SheetSight sight) {
        List<BendGuess> out = new ArrayList<>();
        for (double height : HEIGHTS_MM) {
            for (double rough : ROUGHNESS_MM) {
                out.add(of(sight, height, rough));
            }
        }
        return out;
    }

    private static BendGuess of(SheetSight sight, double heightMm, double roughMm) {
        SimpleMatrix before = before(sight, heightMm, roughMm);
        SimpleMatrix rest = rest(sight, heightMm, roughMm);
        SimpleMatrix model = sight.moves().concatColumns(sight.parallax());
        SimpleMatrix seen = model.mult(before).mult(model.transpose()).plus(rest);
        SimpleMatrix triangle = triangle(seen);
        SimpleMatrix inverse = seen.invert();
        double logs = 0;
        for (int i = 0; i < seen.getNumRows(); i++) {
            logs += Math.log(triangle.get(i, i));
        }
        double fit = sight.off().transpose().mult(inverse).mult(sight.off()).get(0);
        double usual = heightMm == HEIGHTS_MM[0] ? FLAT : 0;
        return new BendGuess(sight, before, rest, model, inverse, usual - 0.5 * fit - logs);
    }

    /** What is known before anything is seen: how the sheet lies, the lens, and how high it may stand at each place. */
    private static SimpleMatrix before(SheetSight sight, double heightMm, double roughMm) {
        int places = sight.places().size();
        SimpleMatrix before = new SimpleMatrix(NUMBERS + places, NUMBERS + places);
        for (int k = 0; k < NUMBERS; k++) {
            before.set(k, k, Math.pow(k < NUMBERS - 1 ? UNKNOWN_MM : Math.max(1e-6, sight.lensDeviation()), 2));
        }
        for (int i = 0; i < places; i++) {
            for (int j = 0; j < places; j++) {
                double far = apart(sight, i, j) / roughMm;
                double both = heightMm * heightMm * Math.exp(-far * far / 2) + (i == j ? JITTER : 0);
                before.set(NUMBERS + i, NUMBERS + j, both);
            }
        }
        return before;
    }

    /** What a bend shortens and the picture's own noise, which the model does not explain. */
    private static SimpleMatrix rest(SheetSight sight, double heightMm, double roughMm) {
        double shortened = SHORTENED_MM * heightMm * heightMm / (2 * roughMm * roughMm);
        int n = sight.noise().getNumRows();
        SimpleMatrix rest = new SimpleMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = i % 2; j < n; j += 2) {
                double far = apart(sight, i / 2, j / 2) / SHORTENED_OVER_MM;
                rest.set(
                        i,
                        j,
                        shortened * shortened * Math.exp(-far * far / 2)
                                + (i == j ? sight.noise().get(i) : 0));
            }
        }
        return rest;
    }

    private static double apart(SheetSight sight, int one, int other) {
        return sight.places().get(one).to(sight.places().get(other));
    }

    /**
     * Samples of plane, lens and heights that explain the marks as seen, one a column: each is drawn from what was thought
     * before and then moved by what it fails to explain (Matheron's rule, docs/sources.md#gaussian-process).
     */
    SimpleMatrix drawn(int count, Random chance) {
        SimpleMatrix unknown = triangle(before).mult(normal(before.getNumRows(), count, chance));
        SimpleMatrix seen = model.mult(unknown).plus(triangle(rest).mult(normal(rest.getNumRows(), count, chance)));
        SimpleMatrix missing = new SimpleMatrix(seen.getNumRows(), count);
        for (int c = 0; c < count; c++) {
            missing.insertIntoThis(0, c, sight.off().minus(seen.getColumn(c)));
        }
        return unknown.plus(before.mult(model.transpose()).mult(inverse).mult(missing));
    }

    private static SimpleMatrix normal(int rows, int columns, Random chance) {
        SimpleMatrix out = new SimpleMatrix(rows, columns);
        for (int i = 0; i < rows * columns; i++) {
            out.set(i, chance.nextGaussian());
        }
        return out;
    }

    /** The lower triangle whose square is a covariance. */
    private static SimpleMatrix triangle(SimpleMatrix covariance) {
        DMatrixRMaj whole = covariance.getDDRM().copy();
        var decomposition = DecompositionFactory_DDRM.chol(whole.numRows, true);
        if (!decomposition.decompose(whole)) {
            throw new IllegalStateException("a covariance that is none");
        }
        return SimpleMatrix.wrap(decomposition.getT(null));
    }
}
