package hearthcloth.cutstock.piecing.cabin;

import hearthcloth.cutstock.piecing.Scrap;
import java.util.ArrayList;
import java.util.List;

/** What is left of a heap while blocks are cut from it: rectangles at cut sizes, each of one scrap. */
final class Offcuts {

    private final List<Scrap> scraps;
    private final CabinJob.Rules rules;
    private final int mostPatches;
    private final int[] patches;
    private final List<Part> parts = new ArrayList<>();
    private long lost;

    /** A rectangle of a scrap. */
    record Part(int scrap, long width, long height) {}

    /** All scraps of a job, none of which gives more than so many patches. */
    Offcuts(CabinJob job, int mostPatches) {
        this.mostPatches = mostPatches;
        this.scraps = job.scraps();
        this.rules = job.rules();
        this.patches = new int[scraps.size()];
        for (int i = 0; i < scraps.size(); i++) {
            parts.add(new Part(i, scraps.get(i).width(), scraps.get(i).height()));
        }
    }

    List<Part> parts() {
        return parts;
    }

    /** Area lost so far. */
    long lost() {
        return lost;
    }

    boolean turnable(Part part) {
        return scraps.get(part.scrap).turnable();
    }

    boolean open(Part part) {
        return patches[part.scrap] < mostPatches;
    }

    /** What would be lost if a patch were cut from the corner of a part, as it lies there. */
    long lostBy(Part part, long width, long height) {
        return Math.min(lostBy(part, width, height, true), lostBy(part, width, height, false));
    }

    private long lostBy(Part part, long width, long height, boolean upright) {
        long right = part.width - width;
        long below = part.height - height;
        return upright
                ? wasted(right, part.height) + wasted(width, below)
                : wasted(right, height) + wasted(part.width, below);
    }

    private long wasted(long width, long height) {
        return Math.min(width, height) >= rules.keep() ? 0 : width * height;
    }

    /** Cuts a patch from the corner of a part. */
    void cut(Part part, long width, long height) {
        boolean upright = lostBy(part, width, height, true) <= lostBy(part, width, height, false);
        parts.remove(part);
        patches[part.scrap]++;
        long right = part.width - width;
        long below = part.height - height;
        lost += lostBy(part, width, height);
        add(part.scrap, right, upright ? part.height : height);
        add(part.scrap, upright ? width : part.width, below);
    }

    private void add(int scrap, long width, long height) {
        if (Math.min(width, height) >= rules.keep()) {
            parts.add(new Part(scrap, width, height));
        }
    }
}
