package hearthcloth.photo.segment;

import boofcv.alg.filter.binary.BinaryImageOps;
import boofcv.alg.filter.binary.Contour;
import boofcv.struct.ConnectRule;
import boofcv.struct.image.GrayS32;
import boofcv.struct.image.GrayU8;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.LabThumbnail;
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

    /** Half the width of a line, in coarse pixels; it must be longer than {@link #LENGTH} to be no part of a piece. */
    private static final int LINE = 5;

    private static final double LENGTH = 80;
    /**
     * The most that half the width of a line may be once the lines' colour is known, in coarse pixels; it must then be
     * longer than {@link #WIDE_LENGTH}.
     */
    private static final int WIDE = 9;

    private static final double WIDE_LENGTH = 30;
    /** A joint may be this many times wider than the mean where it lies nearer to the camera or where two cross. */
    private static final double WIDER = 2.2;
    /** How far a line may be from the common colour, in CIELAB units, measured as a difference from the ground. */
    private static final double SCATTER = 7;
    /**
     * The soft edges of a joint lie between its colour and the ground's. From this share of its difference from the
     * ground up to {@link #MOST_SHARE} a colour counts as the joint's.
     */
    private static final double LEAST_SHARE = 0.25;

    private static final double MOST_SHARE = 2.2;

    /**
     * Joints continue under the pieces and off the picture, so that they reach this many of its rims; lines of a
     * patterned cloth do not.
     */
    private static final int LEAST_RIMS = 2;

    /** A place nearer to a rim of the picture than this has reached it, in coarse pixels. */
    private static final int AT_RIM = 3;
    /** Lines are joints only where more than this share of them is of one colour. */
    private static final double MOST = 2.0 / 3;

    /** Lines no farther apart than twice this are close together, in coarse pixels. */
    private static final int CLOSE = 5;
    /**
     * Close lines belong to a cloth where they cover a patch that is nowhere narrower than twice this, in coarse
     * pixels.
     */
    private static final int PATCH = 12;

    /**
     * Two colours of a cloth may have this much of the ground's colour between them where one blends into the other, in
     * coarse pixels.
     */
    private static final int BESIDE = 2;

    /** Whatever is thinner than twice this may be the rim of a joint, in coarse pixels. */
    private static final int THIN = 2;

    /** Close lines that run from rim to rim are a grid when they cover more than this share of the picture. */
    private static final double GRID = 0.02;

    private final LabThumbnail coarse;
    private final GroundModel ground;
    private final GrayU8 mask;

    private FloorLineFilter(LabThumbnail coarse, GroundModel ground, GrayU8 mask) {
        this.coarse = coarse;
        this.ground = ground;
        this.mask = mask;
    }

    /** Clears the ground's lines in {@code mask}. */
    static void clear(GrayU8 mask, LabThumbnail coarse, GroundModel ground) {
        FloorLineFilter joints = new FloorLineFilter(coarse, ground, mask);
        GrayU8 whole = mask.clone();
        Lines lines = joints.lines(joints.narrow(mask, LINE), LENGTH);
        joints.clear(lines);
        int wide = (int) Math.min(WIDE, Math.round(WIDER * lines.halfWidth()));
        if (wide > LINE && lines.rims() >= LEAST_RIMS) {
            joints.colour(lines).ifPresent(grout -> {
                GrayU8 narrow = joints.narrow(whole, wide);
                joints.keep(narrow, grout);
                joints.clear(joints.lines(narrow, WIDE_LENGTH));
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
                if (reached.size() >= LEAST_RIMS) {
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
        if (x < AT_RIM || x >= mask.width - AT_RIM) {
            rims.add(x < AT_RIM ? 0 : 1);
        }
        if (y < AT_RIM || y >= mask.height - AT_RIM) {
            rims.add(y < AT_RIM ? 2 : 3);
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
        GrayU8 closed = BinaryMorphology.closed(joints, CLOSE);
        GrayU8 core = BinaryMorphology.worn(closed, PATCH);
        if (isGrid(core, lines)) {
            core = new GrayU8(mask.width, mask.height);
        }
        GrayU8 cloth = BinaryMorphology.grown(core, PATCH + 2 * CLOSE);
        Set<Integer> figures = mostlyIn(cloth, joints, labels);
        GrayU8 stripes = BinaryMorphology.opened(rest, THIN);
        figures.addAll(mostlyIn(BinaryMorphology.grown(stripes, LINE + BESIDE), joints, labels));
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
    private static boolean isGrid(GrayU8 core, Lines lines) {
        int count = 0;
        for (int i = 0; i < core.data.length; i++) {
            count += core.data[i] != 0 && lines.across().contains(lines.labels().data[i]) ? 1 : 0;
        }
        return count > GRID * core.data.length;
    }

    /**
     * The lines' common difference from the ground, as the median of each plane; empty when fewer than {@link #MOST} of
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
        return alike > MOST * seen.size() ? Optional.of(middle) : Optional.empty();
    }

    private float[] difference(int i, float[] at) {
        ground.at(i % mask.width, i / mask.width, at);
        float[] out = new float[3];
        for (int c = 0; c < 3; c++) {
            out[c] = coarse.lab[c].data[i] - at[c];
        }
        return out;
    }

    private static boolean isAlike(float[] seen, float[] grout) {
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
        return share > LEAST_SHARE && share < MOST_SHARE && off < SCATTER * SCATTER;
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
