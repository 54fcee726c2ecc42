package hearthcloth.photo.heldaside;

import hearthcloth.geometry.Point;
import hearthcloth.photo.plane.ReferenceSheet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/** Scenes by number. The same number gives the same scene, at whatever resolution. */
public final class HeldAside {

    private static final List<GroundKind> GROUNDS = List.copyOf(EnumSet.allOf(GroundKind.class));

    private final int seed;
    private final boolean awkward;
    private final Random chance;

    private HeldAside(int seed, boolean awkward) {
        this.seed = seed;
        this.awkward = awkward;
        this.chance = new Random(Grain.mixed(seed + (awkward ? 1_000_000L : 0)));
    }

    /** Six to forty scraps, 6 mm or more from each other and 10 mm or more from the picture's rim; 2 to 4 megapixels. */
    public static Shot scene(int seed) {
        return scene(seed, megapixels(seed));
    }

    public static Shot scene(int seed, double megapixels) {
        return new HeldAside(seed, false).shot(megapixels);
    }

    /** As {@link #scene(int)} with scraps that touch, lie on each other, are cut off by the picture, or hardly show. */
    public static Shot awkward(int seed) {
        return new HeldAside(seed, true).shot(megapixels(seed));
    }

    private static double megapixels(int seed) {
        return 2 + 2 * Grain.share(seed, 77, 77);
    }

    private Shot shot(double megapixels) {
        ReferenceSheet sheet = Sheets.any(chance);
        View view = view(sheet, megapixels);
        Room room = new Room(view);
        GroundKind kind = GROUNDS.get(Math.floorMod(seed + chance.nextInt(3), GROUNDS.size()));
        Surface ground = Grounds.of(kind, chance);
        Tint mean = ground.mean(0, 0, 500);
        RoomLight light = new RoomLight(chance, Math.sqrt(room.area()));
        Lying reference = reference(sheet, room, mean);
        List<Fabric> fabrics = Fabrics.some(3 + chance.nextInt(7), mean, awkward ? 45 : 12, chance);
        Scraps scraps = new Scraps(room, reference.rim(), fabrics, chance);
        scraps.spread((int) Math.round(6 * Math.pow(40 / 6.0, chance.nextDouble())));
        for (int k = 0; awkward && k < 2 + chance.nextInt(3); k++) {
            scraps.push(chance.nextBoolean() ? 0.05 : 4 + 20 * chance.nextDouble());
            scraps.cutOff();
        }
        List<Lying> things = new ArrayList<>(List.of(reference));
        scraps.laid().forEach(laid -> things.add(laid.thing()));
        Floor floor = new Floor(ground, things, light);
        double exposure = exposure(view, floor);
        Contrast contrast = new Contrast(floor, exposure, seed);
        List<TruePiece> pieces = new ArrayList<>();
        for (Scraps.Laid laid : scraps.laid()) {
            Rim rim = laid.thing().rim();
            pieces.add(new TruePiece(
                    laid.made(),
                    rim.corners,
                    rim.line,
                    contrast.of(laid.thing()),
                    troubles(laid, scraps.laid(), room)));
        }
        var setting = new Truth.Setting(seed, kind, Math.toDegrees(view.pose.tiltRad()), megapixels, words(view));
        return new Shot(new Truth(setting, sheet, pieces), view, floor, phone(), exposure);
    }

    private View view(ReferenceSheet sheet, double megapixels) {
        boolean upright = chance.nextInt(5) < 2;
        int longer = (int) Math.round(Math.sqrt(megapixels * 1e6 * 4 / 3));
        int shorter = (int) Math.round(longer * 0.75);
        double equivalent = 24 + 4 * chance.nextDouble();
        var frame = new View.Frame(upright ? shorter : longer, upright ? longer : shorter, equivalent);
        double least = Math.max(420, 1.75 * Math.max(Sheets.width(sheet), Sheets.height(sheet)));
        double most = Sheets.width(sheet) < 100 ? 620 : 1050;
        double far = least + Math.max(0, most - least) * chance.nextDouble();
        double tilt = Math.toRadians(chance.nextInt(10) < 6 ? 14 * chance.nextDouble() : 35 * chance.nextDouble());
        double yaw = 2 * Math.PI * chance.nextDouble();
        double roll = Math.toRadians(3 * chance.nextGaussian());
        boolean strong = chance.nextInt(5) == 0;
        double a = strong ? 0.012 + 0.03 * chance.nextDouble() : 0.004 * chance.nextGaussian();
        double b = (strong ? 0.01 : 0.003) * chance.nextGaussian();
        return new View(frame, new View.Pose(far * Math.cos(tilt), tilt, yaw, roll), new View.Bend(a, b));
    }

    private Lying reference(ReferenceSheet sheet, Room room, Tint ground) {
        int state = chance.nextInt();
        while (true) {
            Point middle = room.anywhere(chance);
            Lying lying = Sheets.laid(sheet, middle, 2 * Math.PI * chance.nextDouble(), ground, new Random(state));
            if (room.holds(lying.rim())) {
                return lying;
            }
        }
    }

    private Development.Phone phone() {
        double blur = 0.5 + 0.5 * chance.nextDouble() + (chance.nextInt(6) == 0 ? 0.7 * chance.nextDouble() : 0);
        double noise = 1.0 / (400 + 4000 * chance.nextDouble());
        return new Development.Phone(
                blur,
                0.05 + 0.3 * chance.nextDouble(),
                noise,
                0.2 + 0.8 * chance.nextDouble(),
                0.6 + 0.3 * chance.nextDouble());
    }

    /** As a telephone would: the middle of the scale for the mean, unless the brightest would be lost. */
    private static double exposure(View view, Floor floor) {
        int n = 60;
        double[] bright = new double[n * n];
        double[] at = new double[2];
        double[] look = new double[3];
        double[] lit = new double[3];
        double mean = 0;
        for (int k = 0; k < n * n; k++) {
            view.floor(
                    (k % n + 0.5) * view.frame.width() / n,
                    (Math.floorDiv(k, n) + 0.5) * view.frame.height() / n,
                    0,
                    at);
            floor.look(at[0], at[1], 0, 0, 2, look, new double[3]);
            floor.light.at(at[0], at[1], lit);
            bright[k] = Tint.of(look).times(lit[0], lit[1], lit[2]).luminance();
            mean += bright[k] / (n * n);
        }
        Arrays.sort(bright);
        return Math.min(0.26 / mean, 0.97 / bright[(int) (0.99 * n * n)]);
    }

    private static Set<TruePiece.Trouble> troubles(Scraps.Laid one, List<Scraps.Laid> all, Room room) {
        Set<TruePiece.Trouble> troubles = EnumSet.noneOf(TruePiece.Trouble.class);
        Rim rim = one.thing().rim();
        if (!room.shows(rim)) {
            troubles.add(TruePiece.Trouble.CUT_OFF);
        }
        for (Scraps.Laid other : all) {
            var there = other.thing().rim().polygon();
            if (other.equals(one) || there.distance(rim.polygon()) > 2) {
                continue;
            }
            boolean on = there.intersection(rim.polygon()).getArea() > 2;
            troubles.add(on ? TruePiece.Trouble.OVERLAPPING : TruePiece.Trouble.TOUCHING);
        }
        return troubles;
    }

    private static String words(View view) {
        return String.format(
                Locale.ROOT,
                "%d x %d, %.0f mm, %.0f mm high, tilt %.0f, bend %.3f %.3f",
                view.frame.width(),
                view.frame.height(),
                view.frame.equivalentMm(),
                view.pose.height(),
                Math.toDegrees(view.pose.tiltRad()),
                view.bend.a(),
                view.bend.b());
    }
}
