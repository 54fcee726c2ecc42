package hearthcloth.photo.segment;

import boofcv.struct.image.GrayU8;
import hearthcloth.photo.ground.ColourHistogram;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.BinaryMorphology;
import hearthcloth.photo.image.ConnectedComponents;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.parameter.SegmentParameters;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Removes the figures of a rug from what stands out from its plain colour.
 *
 * <p>A rug's figures are small, many, spread over the whole picture and cut off by several of its sides; pieces are
 * never all of that. The colours that small separate shapes have again and again belong to the rug, and a patch of
 * those colours that is no larger than such a shape is a figure, also where it continues under a piece. Colours are
 * taken as differences from the ground under even light.
 */
final class RugFigureFilter {

    private final GrayU8 mask;
    private final SegmentParameters parameters;
    private final ConnectedComponents islands;
    private final List<ConnectedComponents.Island> small;
    /** Small shapes, and parts of them, that the picture's rim cuts off. */
    private final List<ConnectedComponents.Island> cut;

    private final ColourHistogram differences;

    private RugFigureFilter(GrayU8 mask, LabThumbnail coarse, GroundModel ground, SegmentParameters parameters) {
        this.mask = mask;
        this.parameters = parameters;
        islands = new ConnectedComponents(mask);
        double largest = parameters.figures().size().largest() * Math.max(mask.width, mask.height);
        small = islands.all().stream()
                .filter(s -> s.area() >= parameters.figures().size().narrow() * s.span() && s.span() <= largest)
                .toList();
        cut = islands.all().stream()
                .filter(s -> s.sides() != 0
                        && s.area()
                                >= parameters.figures().size().narrow()
                                        * parameters.figures().size().narrow()
                        && s.span() <= largest)
                .toList();
        differences = new ColourHistogram(coarse, ground);
    }

    /** Clears the figures in {@code mask}, if the ground has any. */
    static void clear(GrayU8 mask, LabThumbnail coarse, GroundModel ground, SegmentParameters parameters) {
        RugFigureFilter figures = new RugFigureFilter(mask, coarse, ground, parameters);
        if (figures.areScattered()) {
            figures.clear();
        }
    }

    private boolean areScattered() {
        int sides = cut.stream().mapToInt(ConnectedComponents.Island::sides).reduce(0, (a, b) -> a | b);
        return small.size() >= parameters.rug().figures()
                && cut.size() >= parameters.rug().cut()
                && Integer.bitCount(sides) >= parameters.rug().sides()
                && small.stream().mapToInt(this::part).distinct().count()
                        >= parameters.rug().spread()
                                * parameters.rug().parts()
                                * parameters.rug().parts();
    }

    private int part(ConnectedComponents.Island shape) {
        return shape.middleX() * parameters.rug().parts() / mask.width
                + shape.middleY()
                        * parameters.rug().parts()
                        / mask.height
                        * parameters.rug().parts();
    }

    private void clear() {
        boolean[] common = common();
        GrayU8 coloured = new GrayU8(mask.width, mask.height);
        for (int i = 0; i < mask.data.length; i++) {
            coloured.data[i] = (byte) (mask.data[i] != 0 && common[differences.bin(i)] ? 1 : 0);
        }
        int[] spans = small.stream()
                .filter(s -> share(s, coloured) > parameters.figures().most())
                .mapToInt(ConnectedComponents.Island::span)
                .sorted()
                .toArray();
        if (spans.length < parameters.rug().figures()) {
            return;
        }
        int[] areas = small.stream()
                .filter(s -> share(s, coloured) > parameters.figures().most())
                .mapToInt(ConnectedComponents.Island::area)
                .sorted()
                .toArray();
        double largest = parameters.figures().size().larger() * spans[spans.length * 9 / 10];
        small.stream()
                .filter(s -> s.span() <= largest
                        && share(s, coloured) > parameters.figures().most())
                .forEach(s -> clear(islands, s));
        ConnectedComponents patches = new ConnectedComponents(apart(coloured));
        patches.all().stream()
                .filter(s -> s.span() <= largest
                        && s.area()
                                >= parameters.figures().size().narrow()
                                        * parameters.figures().size().narrow())
                .forEach(s -> clear(patches, s));
        cutFromPieces(coloured, areas[areas.length * 9 / 10]);
    }

    /**
     * Clears what clings to a piece and has the rug's colours: whatever lies outside the piece's thick core and has
     * another colour than the core.
     *
     * @param area of a large figure, in coarse pixels
     */
    private void cutFromPieces(GrayU8 coloured, int area) {
        int half = (int) Math.ceil(Math.sqrt(area) / 2) + 1;
        GrayU8 core = BinaryMorphology.opened(BinaryMorphology.filled(mask), half);
        ConnectedComponents pieces = new ConnectedComponents(mask);
        for (ConnectedComponents.Island piece : pieces.all()) {
            int[] inCore = IntStream.range(piece.from(), piece.to())
                    .map(pieces::pixel)
                    .filter(i -> core.data[i] != 0)
                    .toArray();
            if (inCore.length > parameters.figures().body().thick() * piece.area()) {
                boolean[] own =
                        differences.among(inCore, parameters.figures().body().own());
                for (int i = piece.from(); i < piece.to(); i++) {
                    int p = pieces.pixel(i);
                    if (core.data[p] == 0 && coloured.data[p] != 0 && !own[differences.bin(p)]) {
                        mask.data[p] = 0;
                    }
                }
            }
        }
    }

    /**
     * The coloured places without the soft edges of pieces, whose colours pass through the rug's and would join one
     * figure to another.
     */
    private GrayU8 apart(GrayU8 coloured) {
        GrayU8 odd = new GrayU8(mask.width, mask.height);
        for (int i = 0; i < odd.data.length; i++) {
            odd.data[i] = (byte) (mask.data[i] & ~coloured.data[i] & 1);
        }
        GrayU8 body = BinaryMorphology.grown(
                BinaryMorphology.worn(odd, parameters.figures().body().half()),
                parameters.figures().body().half() + parameters.figures().body().soft());
        for (int i = 0; i < odd.data.length; i++) {
            odd.data[i] = (byte) (coloured.data[i] & ~body.data[i] & 1);
        }
        return odd;
    }

    private void clear(ConnectedComponents of, ConnectedComponents.Island shape) {
        for (int i = shape.from(); i < shape.to(); i++) {
            mask.data[of.pixel(i)] = 0;
        }
    }

    private double share(ConnectedComponents.Island shape, GrayU8 coloured) {
        int count = 0;
        for (int i = shape.from(); i < shape.to(); i++) {
            count += coloured.data[islands.pixel(i)];
        }
        return (double) count / shape.area();
    }

    /** The bins of colour that recur in small shapes all over the picture. */
    private boolean[] common() {
        int[] times = new int[ColourHistogram.BINS];
        int[] parts = new int[ColourHistogram.BINS];
        int[] last = new int[ColourHistogram.BINS];
        Arrays.fill(last, -1);
        for (int s = 0; s < small.size(); s++) {
            ConnectedComponents.Island shape = small.get(s);
            for (int i = shape.from(); i < shape.to(); i++) {
                for (int bin : ColourHistogram.around(differences.bin(islands.pixel(i)))) {
                    if (last[bin] != s) {
                        last[bin] = s;
                        times[bin]++;
                        parts[bin] |= 1 << part(shape);
                    }
                }
            }
        }
        boolean[] common = new boolean[ColourHistogram.BINS];
        for (int bin = 0; bin < common.length; bin++) {
            common[bin] = times[bin] >= parameters.figures().common() * small.size()
                    && Integer.bitCount(parts[bin])
                            >= parameters.rug().colourSpread()
                                    * parameters.rug().parts()
                                    * parameters.rug().parts();
        }
        return common;
    }
}
