package hearthcloth.photo.scale;

import hearthcloth.geometry.Point;
import hearthcloth.photo.Painted;
import hearthcloth.photo.edge.FittedPolygon;
import hearthcloth.photo.edge.SubpixelEdges;
import hearthcloth.photo.ground.GroundModel;
import hearthcloth.photo.image.LabThumbnail;
import hearthcloth.photo.image.LensModel;
import hearthcloth.photo.image.PhotoRefusedException;
import hearthcloth.photo.parameter.EdgeParameters;
import hearthcloth.photo.parameter.GroundParameters;
import hearthcloth.photo.parameter.SheetParameters;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Provokes a wrong choice of the sheet: on painted tables an A4 that is flat, covered, folded, bent, cut off or half in shadow lies
 * beside a pale scrap of just its proportions, and the outlines are given, so that the choice alone is tried. By hand:
 * {@code ProvokedChoices FIRST_SEED COUNT}.
 */
final class ProvokedChoices {

    private static final int WIDTH = 640;
    private static final int HEIGHT = 460;
    private static final int PAPER = 0xf2f2f0;
    private static final int DARK = 0x40302a;
    private static final int[] PALE = {0xf2f0ea, 0xefe9dc, 0xe6dcc8, 0xf2f2f0, 0xe9e9ea, 0xdfe4e8, 0xf0e4de, 0xf6f6f5};
    private static final int[] FLOORS = {0x6a5a48, 0x9c8f7d, 0x777b80, 0x8a6642, 0x4a5a4c};

    /** What has become of the sheet. */
    enum Plight {
        FLAT,
        COVERED,
        FOLDED,
        BENT,
        CUT_OFF,
        SHADED
    }

    /** What the reader made of it. */
    enum Answer {
        RIGHT,
        DOUBTED,
        ASKED,
        SILENTLY_WRONG
    }

    private ProvokedChoices() {}

    public static void main(String[] args) {
        answers(Long.parseLong(args[0]), Integer.parseInt(args[1])).forEach((plight, answers) -> {
            StringBuilder line = new StringBuilder(plight.name());
            answers.forEach((answer, seeds) -> line.append(' ')
                    .append(answer)
                    .append(' ')
                    .append(seeds.size())
                    .append(answer == Answer.SILENTLY_WRONG ? " " + seeds : ""));
            System.out.println(line);
        });
    }

    private static List<Point> box(double left, double top, double width, double height) {
        return List.of(
                new Point(left, top),
                new Point(left + width, top),
                new Point(left + width, top + height),
                new Point(left, top + height));
    }

    /** One scene. */
    static final class Provoked {

        final Random chance;
        final Plight plight;
        final Painted painted;
        final List<List<Point>> shapes = new ArrayList<>();

        Provoked(long seed) {
            chance = new Random(seed);
            List<Plight> plights = List.of(Plight.values());
            plight = plights.get((int) (seed % plights.size()));
            painted = new Painted(WIDTH, HEIGHT, FLOORS[chance.nextInt(FLOORS.length)], 3);
        }

        private void laySheet() {
            double size = 0.75 + 0.35 * chance.nextDouble();
            double left = plight == Plight.CUT_OFF ? -60 * chance.nextDouble() - 20 : 30;
            double wide = 210 * size;
            double high = 297 * size;
            List<Point> whole = box(left, 40.4, wide, high);
            List<Point> shape = new ArrayList<>(whole);
            switch (plight) {
                case COVERED -> {
                    painted.soft(whole, PAPER);
                    painted.soft(box(left + wide - 40, 40.4 + high - 30, 70, 55), DARK);
                    shape.remove(2);
                    shape.addAll(
                            2,
                            List.of(
                                    new Point(left + wide, 10.4 + high),
                                    new Point(left + wide + 30, 10.4 + high),
                                    new Point(left + wide + 30, 65.4 + high),
                                    new Point(left + wide - 40, 65.4 + high),
                                    new Point(left + wide - 40, 40.4 + high)));
                }
                case FOLDED -> {
                    double ear = 25 + 50 * chance.nextDouble();
                    shape.set(1, new Point(left + wide - ear, 40.4));
                    shape.add(2, new Point(left + wide, 40.4 + ear));
                    painted.soft(shape, PAPER);
                }
                case BENT -> {
                    int up = chance.nextInt(4);
                    shape.set(
                            up, whole.get(up).plus(14 * (chance.nextDouble() - 0.5), 14 * (chance.nextDouble() - 0.5)));
                    painted.soft(shape, PAPER);
                }
                default -> painted.soft(shape, PAPER);
            }
            shapes.add(shape);
        }

        private void layRival() {
            double size = 0.42 + 0.55 * chance.nextDouble();
            List<Point> rival = chance.nextBoolean()
                    ? box(345, 60.5, 210 * size, 297 * size)
                    : box(335, 90.5, 297 * size, 210 * size);
            int colour = PALE[chance.nextInt(PALE.length)];
            painted.soft(rival, colour);
            shapes.add(rival);
        }

        private void light() {
            double slope = 0.25 * (chance.nextDouble() - 0.5);
            double depth = 0.5 + 0.3 * chance.nextDouble();
            double edge = 60 + 90 * chance.nextDouble();
            painted.lit((x, y) ->
                    (1 - 0.1 + slope * (x / WIDTH - 0.5)) * (plight == Plight.SHADED && x < edge ? depth : 1));
        }

        /**
         * Whether the sheet is chosen, or is one of two alike by which all is measured together: what these contradict each other by
         * is in every ±, or it is said (SeveralSheetsTest).
         */
        private static boolean isMeasuredBy(SheetChoice.Chosen chosen) {
            return chosen.sheets().stream().anyMatch(found -> found.index() == 0);
        }

        Answer answer() {
            laySheet();
            layRival();
            light();
            LensModel lens = LensModel.unknown(painted.picture()).with(0, 0.003);
            SubpixelEdges edges = new SubpixelEdges(
                    painted.picture(), 5, false, EdgeParameters.standard().steps());
            List<FittedPolygon> traced = shapes.stream()
                    .map(shape -> FittedPolygon.of(shape, edges.of(shape), lens, 1.2, 4))
                    .toList();
            List<FittedPolygon> uncut = new ArrayList<>(traced);
            if (plight == Plight.CUT_OFF) {
                uncut.set(0, new FittedPolygon(List.of(), List.of(), List.of()));
            }
            LabThumbnail coarse = painted.coarse();
            SheetFinder finder =
                    new SheetFinder(painted.picture(), coarse, lens, Optional.of(0.74), SheetParameters.standard());
            SheetChoice choice = new SheetChoice(
                    finder,
                    ReferenceSheet.A4,
                    coarse,
                    GroundModel.of(coarse.smoothed(1.2), GroundParameters.standard()));
            try {
                SheetChoice.Chosen chosen = choice.sure(traced, uncut);
                boolean right = isMeasuredBy(chosen);
                return right ? Answer.RIGHT : chosen.doubts().isEmpty() ? Answer.SILENTLY_WRONG : Answer.DOUBTED;
            } catch (PhotoRefusedException e) {
                return Answer.ASKED;
            }
        }
    }

    /** How often each answer was given in each plight, for so many seeds from the first. */
    static Map<Plight, Map<Answer, List<Long>>> answers(long first, int count) {
        Map<Plight, Map<Answer, List<Long>>> all = new EnumMap<>(Plight.class);
        for (long seed = first; seed < first + count; seed++) {
            Provoked one = new Provoked(seed);
            all.computeIfAbsent(one.plight, p -> new EnumMap<>(Answer.class))
                    .computeIfAbsent(one.answer(), a -> new ArrayList<>())
                    .add(seed);
        }
        return all;
    }
}
