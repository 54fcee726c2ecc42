package hearthcloth.benchmarks.sheet;

import java.util.HashMap;
import java.util.Map;

/** The optimum of a tiny job by trying every whole-unit cut and every way to share the copies between both sides. */
final class EveryCut {

    private record Question(int width, int height, int left) {}

    private static final int BASE = 3;

    private final SheetJob job;
    private final Map<Question, Long> known = new HashMap<>();

    /** At most two copies of a kind count. */
    EveryCut(SheetJob job) {
        this.job = job;
    }

    long best() {
        int left = 0;
        for (int kind = job.wanted().size() - 1; kind >= 0; kind--) {
            left = left * BASE + (int) Math.min(job.wanted().get(kind).copies(), BASE - 1);
        }
        return best((int) job.width(), (int) job.height(), left);
    }

    private long best(int width, int height, int left) {
        Question question = new Question(width, height, left);
        Long answer = known.get(question);
        if (answer == null) {
            answer = 0L;
            int digits = left;
            for (Wanted wanted : job.wanted()) {
                boolean fits = wanted.width() <= width && wanted.height() <= height;
                boolean turned = job.turning() && wanted.height() <= width && wanted.width() <= height;
                if (digits % BASE > 0 && (fits || turned)) {
                    answer = Math.max(answer, wanted.worth());
                }
                digits /= BASE;
            }
            for (int share = 0; share <= left; share++) {
                if (within(share, left)) {
                    answer = Math.max(answer, bestCut(width, height, share, left - share));
                }
            }
            known.put(question, answer);
        }
        return answer;
    }

    private long bestCut(int width, int height, int share, int other) {
        long best = 0;
        for (int at = 1; at < width; at++) {
            best = Math.max(best, best(at, height, share) + best(width - at, height, other));
        }
        for (int at = 1; at < height; at++) {
            best = Math.max(best, best(width, at, share) + best(width, height - at, other));
        }
        return best;
    }

    private static boolean within(int share, int left) {
        return left == 0 ? share == 0 : share % BASE <= left % BASE && within(share / BASE, left / BASE);
    }
}
