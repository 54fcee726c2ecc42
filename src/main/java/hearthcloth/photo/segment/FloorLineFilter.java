package hearthcloth.photo.segment;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Removes the ground's own lines from what stands out from it: joints of boards and tiles, a grid.
 *
 * <p>Pieces are never long narrow lines, and their ends and tips are short. Where such lines are of one colour,
 * whatever else is narrow and of that colour is more of the same: stretches between pieces, crossings, joints that are
 * wider near the camera. Lines that lie as close together as the stripes, checks and lattices of a cloth are its
 * pattern, and stay.
 */
final class FloorLineFilter {

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final GrayU8 mask;
    private final SegmentParameters parameters;

    private FloorLineFilter(LabThumbnail coarse, GroundModel ground, GrayU8 mask, SegmentParameters parameters) {
        this.coarse = coarse;
        this.ground = ground;
        this.mask = mask;
        this.parameters = parameters;
    }

    /** Clears the ground's lines in {@code mask}. */
    static void clear(GrayU8 mask, LabThumbnail coarse, GroundModel ground, SegmentParameters parameters) {
        FloorLineFilter joints = new FloorLineFilter(coarse, ground, mask, parameters);
        GrayU8 whole = mask.clone();
        Lines lines = joints.lines(
                joints.narrow(mask, parameters.lines().straight().half()),
                parameters.lines().straight().length());
        joints.clear(lines);
        int wide = (int) Math.min(
                parameters.lines().straight().wide(),
                Math.round(parameters.lines().straight().wider() * lines.halfWidth()));
        if (wide > parameters.lines().straight().half()
                && lines.rims() >= parameters.lines().rims()) {
            joints.colour(lines).ifPresent(grout -> {
                GrayU8 narrow = joints.narrow(whole, wide);
                joints.keep(narrow, grout);
                joints.clear(joints.lines(narrow, parameters.lines().straight().wideLength()));
            });
        }
    }

    private GrayU8 narrow(GrayU8 of, int half) {
        GrayU8 solid = BinaryMorphology.grown(BinaryMorphology.worn(of, half), half + 1);
        for (int i = 0; i < of.data.length; i++) {
            solid.data[i] = (byte) (of.data[i] & ~solid.data[i] & 1);
        }
        return solid;
    }

    /**
     * Connected narrow shapes that are long.
     *
     * @param labels the number of the shape at each place, zero for none
     * @param which the numbers of the long ones
     * @param across the numbers of those that reach two of the picture's rims by themselves
     * @param halfWidth the mean of half their width, in coarse pixels
     * @param rims how many of the picture's four rims they reach together
     */
    private record Lines(GrayS32 labels, Set<Integer> which, Set<Integer> across, double halfWidth, int rims) {}

    private Lines lines(GrayU8 narrow, double length) {
        GrayS32 labels = new GrayS32(mask.width, mask.height);
        Set<Integer> which = new HashSet<>();
        Set<Integer> across = new HashSet<>();
        Set<Integer> rims = new HashSet<>();
        long around = 0;
        for (Contour line : BinaryImageOps.contour(narrow, ConnectRule.EIGHT, labels)) {
            if (span(line) > length) {
                int label = labels.get(line.external.get(0).x, line.external.get(0).y);
                Set<Integer> reached = new HashSet<>();
                line.external.forEach(p -> reached.addAll(rims(p.x, p.y)));
                which.add(label);
                rims.addAll(reached);
                if (reached.size() >= parameters.lines().rims()) {
                    across.add(label);
                }
                around += line.external.size()
                        + line.internal.stream().mapToInt(List::size).sum();
            }
        }
        long area = 0;
        for (int label : labels.data) {
            area += label != 0 && which.contains(label) ? 1 : 0;
        }
        return new Lines(labels, which, across, around == 0 ? 0 : (double) area / around, rims.size());
    }

    private List<Integer> rims(int x, int y) {
        List<Integer> rims = new ArrayList<>();
        if (x < parameters.patches().atRim()
                || x >= mask.width - parameters.patches().atRim()) {
            rims.add(x < parameters.patches().atRim() ? 0 : 1);
        }
        if (y < parameters.patches().atRim()
                || y >= mask.height - parameters.patches().atRim()) {
            rims.add(y < parameters.patches().atRim() ? 2 : 3);
        }
        return rims;
    }

    private static double span(Contour contour) {
        int left = Integer.MAX_VALUE;
        int right = 0;
        int top = Integer.MAX_VALUE;
        int low = 0;
        for (var p : contour.external) {
            left = Math.min(left, p.x);
            right = Math.max(right, p.x);
            top = Math.min(top, p.y);
            low = Math.max(low, p.y);
        }
        return Math.hypot(right - left, low - top);
    }

    /**
     * Clears every line outside the patches of close lines, and fills such patches. A line that lies mostly in a patch,
     * or that has cloth along most of its length (a stripe), stays.
     */
    private void clear(Lines lines) {
        if (lines.which().isEmpty()) {
            return;
        }
        int[] labels = lines.labels().data;
        GrayU8 joints = new GrayU8(mask.width, mask.height);
        GrayU8 rest = mask.clone();
        for (int i = 0; i < labels.length; i++) {
            if (lines.which().contains(labels[i])) {
                joints.data[i] = 1;
                rest.data[i] = 0;
            }
        }
        GrayU8 closed = BinaryMorphology.closed(joints, parameters.patches().close());
        GrayU8 core = BinaryMorphology.worn(closed, parameters.patches().patch());
        if (isGrid(core, lines)) {
            core = new GrayU8(mask.width, mask.height);
        }
        GrayU8 cloth = BinaryMorphology.grown(
                core, parameters.patches().patch() + 2 * parameters.patches().close());
        Set<Integer> figures = mostlyIn(cloth, joints, labels);
        GrayU8 stripes = BinaryMorphology.opened(rest, parameters.patches().thin());
        figures.addAll(mostlyIn(
                BinaryMorphology.grown(
                        stripes,
                        parameters.lines().straight().half()
                                + parameters.patches().beside()),
                joints,
                labels));
        for (int i = 0; i < labels.length; i++) {
            if (cloth.data[i] != 0) {
                mask.data[i] |= closed.data[i];
            } else if (joints.data[i] != 0 && !figures.contains(labels[i])) {
                mask.data[i] = 0;
            }
        }
    }

    /** The numbers of the lines that lie mostly in a mask. */
    private static Set<Integer> mostlyIn(GrayU8 mask, GrayU8 joints, int[] labels) {
        Map<Integer, Integer> balance = new HashMap<>();
        for (int i = 0; i < labels.length; i++) {
            if (joints.data[i] != 0) {
                balance.merge(labels[i], mask.data[i] != 0 ? 1 : -1, Integer::sum);
            }
        }
        balance.values().removeIf(sum -> sum <= 0);
        return new HashSet<>(balance.keySet());
    }

    /**
     * Whether close lines are the ground's own, such as the grid of a mat: then those that run from rim to rim cover
     * much of the picture.
     */
    private boolean isGrid(GrayU8 core, Lines lines) {
        int count = 0;
        for (int i = 0; i < core.data.length; i++) {
            count += core.data[i] != 0 && lines.across().contains(lines.labels().data[i]) ? 1 : 0;
        }
        return count > parameters.patches().grid() * core.data.length;
    }

    /**
     * The lines' common difference from the ground, as the median of each plane; empty when too few of
     * them agree.
     */
    private Optional<float[]> colour(Lines lines) {
        List<float[]> seen = new ArrayList<>();
        float[] at = new float[3];
        for (int i = 0; i < mask.data.length; i += 3) {
            int label = lines.labels().data[i];
            if (label != 0 && lines.which().contains(label)) {
                seen.add(difference(i, at));
            }
        }
        float[] middle = new float[3];
        for (int c = 0; c < 3 && !seen.isEmpty(); c++) {
            int plane = c;
            middle[c] =
                    (float) seen.stream().mapToDouble(d -> d[plane]).sorted().toArray()[seen.size() / 2];
        }
        long alike = seen.stream().filter(d -> isAlike(d, middle)).count();
        return alike > parameters.lines().agreeing() * seen.size() ? Optional.of(middle) : Optional.empty();
    }

    private float[] difference(int i, float[] at) {
        ground.at(i % mask.width, i / mask.width, at);
        float[] out = new float[3];
        for (int c = 0; c < 3; c++) {
            out[c] = coarse.lab[c].data[i] - at[c];
        }
        return out;
    }

    private boolean isAlike(float[] seen, float[] grout) {
        double along = 0;
        double squares = 1e-6;
        for (int c = 0; c < 3; c++) {
            along += seen[c] * grout[c];
            squares += grout[c] * grout[c];
        }
        double share = along / squares;
        double off = 0;
        for (int c = 0; c < 3; c++) {
            off += (seen[c] - share * grout[c]) * (seen[c] - share * grout[c]);
        }
        return share > parameters.lines().leastShare()
                && share < parameters.lines().mostShare()
                && off < parameters.lines().scatter() * parameters.lines().scatter();
    }

    private void keep(GrayU8 narrow, float[] grout) {
        float[] at = new float[3];
        for (int i = 0; i < narrow.data.length; i++) {
            if (narrow.data[i] != 0 && !isAlike(difference(i, at), grout)) {
                narrow.data[i] = 0;
            }
        }
    }
}
