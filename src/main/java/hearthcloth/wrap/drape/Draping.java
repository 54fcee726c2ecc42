package hearthcloth.wrap.drape;

import java.util.Arrays;

/**
 * Brings a cloth to rest by extended position based dynamics with many small steps of one round each (Macklin et al.
 * 2019, docs/sources.md#drape). Everything happens in one thread and one order, so the same cloth comes out the same to
 * the last bit.
 */
final class Draping {

    /** Steps a second. */
    static final double STEPS = 1000;

    private static final double SECONDS = 1 / STEPS;
    private static final double GRAVITY = 9810;

    /** The farthest a point moves by its own speed in one step, as a share of the grid's gap. */
    private static final double FASTEST = 0.1;

    /** How much nearer than their thickness pairs are looked for, as a share of the gap. */
    private static final double MARGIN = 0.36;

    private final Sheet sheet;
    private final Handling hands;
    private final Strain strain;
    private final Bending bending;
    private final Support support;
    private final Neighbours near;
    private final Contact contact;
    private final double thick;
    private final double[] found;
    private final double[] asked;
    private boolean searched;
    private int phase = -1;
    private double time;

    Draping(Sheet sheet, Handling hands, Solid solid, Stuff stuff) {
        Grid grid = sheet.grid;
        this.sheet = sheet;
        this.hands = hands;
        double mass = stuff.gramsPerM2() * 1e-3 * grid.gap * grid.gap * 1e-6;
        double stiff = stuff.bending() / (grid.gap * grid.gap * 1e-6) / mass;
        this.strain = new Strain(grid, 300, mass * STEPS * STEPS / stuff.bias());
        this.bending = new Bending(grid, STEPS * STEPS / stiff);
        this.thick = stuff.thickness() * grid.gap;
        this.support = new Support(solid, -stuff.off() * grid.gap, stuff.off() * grid.gap, 0.06);
        this.near = new Neighbours(grid);
        this.contact = new Contact(near, 0.05 * grid.gap);
        this.found = new double[sheet.x.length];
        this.asked = sheet.x.clone();
    }

    double time() {
        return time;
    }

    /**
     * One step.
     *
     * @param drag the share of its speed that cloth loses to the air in a second, as a rate
     */
    void step(double drag) {
        sheet.begin();
        if (hands.phase(time) != phase) {
            phase = hands.phase(time);
            hands.loosen(time, sheet);
            searched = false;
        }
        look();
        fall(StrictMath.exp(-drag * SECONDS));
        hands.hold(time, sheet);
        strain.pull(sheet, true);
        bending.straighten(sheet);
        contact.part(sheet);
        support.carry(sheet);
        strain.pull(sheet, false);
        support.carry(sheet);
        contact.keepApart(sheet);
        sheet.settle(SECONDS);
        time += SECONDS;
    }

    /** How far the points have moved since this was last asked: the root of the mean square. */
    double moved() {
        double sum = 0;
        for (int i = 0; i < asked.length; i++) {
            sum += (sheet.x[i] - asked[i]) * (sheet.x[i] - asked[i]);
        }
        System.arraycopy(sheet.x, 0, asked, 0, asked.length);
        return Math.sqrt(sum / sheet.points());
    }

    /** Undoes what stretch is left, with nothing moving of itself; where cloth hangs on cloth, that is let through. */
    void relax() {
        for (int round = 0; round < PATIENCE && any(stuck()); round++) {
            ease(round < PATIENCE / 2);
        }
        for (int turn = 0; turn < TURNS && any(stuck()); turn++) {
            boolean[] worst = stretched(Math.max(STUCK, worst() / 2));
            for (int k = 0; k < worst.length; k++) {
                worst[k] &= !sheet.loose[k];
                sheet.loose[k] |= worst[k];
            }
            searched = false;
            int rounds = 4 + (int) Math.min(40, 50 * worst());
            for (int round = 0; round < rounds; round++) {
                ease(true);
            }
            for (int k = 0; k < worst.length; k++) {
                sheet.loose[k] &= !worst[k];
            }
            searched = false;
            for (int round = 0; round < 10; round++) {
                ease(round < 5);
            }
        }
        Arrays.fill(sheet.speed, 0);
    }

    private static boolean any(boolean[] marks) {
        for (boolean mark : marks) {
            if (mark) {
                return true;
            }
        }
        return false;
    }

    private static final int PATIENCE = 60;
    private static final int TURNS = 20;

    private static final double STUCK = 0.018;

    private boolean[] stuck() {
        return stretched(STUCK);
    }

    /** The ends of all threads between points that are stretched by more than this share. */
    private boolean[] stretched(double most) {
        boolean[] stuck = new boolean[sheet.points()];
        Grid grid = sheet.grid;
        for (int e = 0; e < grid.threads; e++) {
            if (stretch(e) > most) {
                stuck[grid.lines[2 * e]] = true;
                stuck[grid.lines[2 * e + 1]] = true;
            }
        }
        return stuck;
    }

    private double worst() {
        double worst = 0;
        for (int e = 0; e < sheet.grid.threads; e++) {
            worst = Math.max(worst, stretch(e));
        }
        return worst;
    }

    private double stretch(int e) {
        int a = sheet.grid.lines[2 * e];
        int b = sheet.grid.lines[2 * e + 1];
        return sheet.knotted[a] && sheet.knotted[b] ? 0 : length(a, b) / sheet.grid.rest[e] - 1;
    }

    private double length(int a, int b) {
        double dx = sheet.x[3 * a] - sheet.x[3 * b];
        double dy = sheet.x[3 * a + 1] - sheet.x[3 * b + 1];
        double dz = sheet.x[3 * a + 2] - sheet.x[3 * b + 2];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** Layers already keep their distance here, so they are only kept from passing through each other. */
    private void ease(boolean parting) {
        Arrays.fill(sheet.speed, 0);
        sheet.begin();
        look();
        for (int i = 0; i < 6; i++) {
            strain.pull(sheet, i % 2 == 0);
            if (i % 3 == 1) {
                support.carry(sheet);
            }
        }
        if (parting) {
            contact.part(sheet);
            strain.pull(sheet, true);
            strain.pull(sheet, false);
        }
        support.carry(sheet);
        limit(MARGIN * sheet.grid.gap / 4);
        contact.keepApart(sheet);
        sheet.settle(SECONDS);
    }

    private void limit(double most) {
        for (int i = 0; i < sheet.p.length; i++) {
            sheet.p[i] = sheet.x[i] + Math.max(-most, Math.min(most, sheet.p[i] - sheet.x[i]));
        }
    }

    private void fall(double keep) {
        double fastest = FASTEST * sheet.grid.gap;
        double[] pull = new double[3];
        for (int k = 0; k < sheet.points(); k++) {
            if (sheet.ease[k] == 0) {
                continue;
            }
            Arrays.fill(pull, 0);
            pull[2] = -GRAVITY;
            hands.pull(time, sheet, k, pull);
            for (int i = 0; i < 3; i++) {
                double move = (sheet.speed[3 * k + i] + pull[i] * SECONDS) * keep * SECONDS;
                sheet.p[3 * k + i] = sheet.x[3 * k + i] + Math.max(-fastest, Math.min(fastest, move));
            }
        }
    }

    /** Searches anew when points may have come nearer than the last search looked; farther where little is near. */
    private void look() {
        double far = 0.42 * margin;
        boolean moved = !searched;
        for (int k = 0; k < sheet.points() && !moved; k++) {
            if (!sheet.loose[k]) {
                double dx = sheet.x[3 * k] - found[3 * k];
                double dy = sheet.x[3 * k + 1] - found[3 * k + 1];
                double dz = sheet.x[3 * k + 2] - found[3 * k + 2];
                moved = dx * dx + dy * dy + dz * dz > far * far;
            }
        }
        if (moved) {
            margin = (near.count() < FEW * sheet.points() ? 2 : 1) * MARGIN * sheet.grid.gap;
            near.find(sheet, thick + margin);
            System.arraycopy(sheet.x, 0, found, 0, found.length);
            searched = true;
        }
    }

    /** Fewer pairs a point than this are few. */
    private static final int FEW = 4;

    private double margin;
}
