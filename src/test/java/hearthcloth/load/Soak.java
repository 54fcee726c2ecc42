package hearthcloth.load;

import hearthcloth.RunningWorkroom;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Hours of mixed changes at one workroom: lines, pieces used up and changed, cloths changed and renamed, undo, redo, pages.
 * Prints what each kind took, how each was answered, and how much memory the program held in the first ten minutes and since.
 * {@code Soak SECONDS CHANGES-A-SECOND}
 */
public final class Soak {

    private static final long SEED = 20_261_130;
    private static final int MOST_PIECES = 160;
    private static final int SETTLED_S = 600;

    private final RunningWorkroom room;
    private final Times times = new Times();
    private final Random random = new Random(SEED);
    private final Caller caller;
    private final List<String> cloths = new ArrayList<>();
    private int pieces;
    private int asked;
    private int usedUp;

    private Soak(RunningWorkroom room) {
        this.room = room;
        this.caller = new Caller(room.port(), times);
    }

    public static void main(String[] words) throws Exception {
        long seconds = Long.parseLong(words[0]);
        int rate = Integer.parseInt(words[1]);
        Path folder = Files.createTempDirectory("soak");
        boolean held;
        try (RunningWorkroom room =
                RunningWorkroom.opened("--data", folder.resolve("work.db").toString(), "--new")) {
            held = new Soak(room).held(seconds, rate);
            System.out.printf("  the file: %d kB%n", Files.size(folder.resolve("work.db")) / 1024);
        }
        System.exit(held ? 0 : 1);
    }

    private boolean held(long seconds, int rate) throws Exception {
        begin();
        long begun = System.nanoTime();
        long change = 0;
        long early = 0;
        long late = 0;
        long least = Long.MAX_VALUE;
        long minute = 0;
        while (true) {
            double passed = (System.nanoTime() - begun) / 1e9;
            if (passed >= seconds) {
                break;
            }
            change();
            change++;
            if (change % (rate * 10L) == 0) {
                long kb = room.residentKb();
                if (passed < SETTLED_S) {
                    early = Math.max(early, kb);
                } else {
                    late = Math.max(late, kb);
                    least = Math.min(least, kb);
                }
                if ((long) (passed / 60) > minute) {
                    minute = (long) (passed / 60);
                    System.out.printf("  minute %d: %d changes, %d kB%n", minute, change, kb);
                }
            }
            long next = begun + change * 1_000_000_000L / rate;
            TimeUnit.NANOSECONDS.sleep(Math.max(0, next - System.nanoTime()));
        }
        System.out.printf("  seed %d, %d changes in %d s%n%s", SEED, change, seconds, times.told());
        System.out.printf(
                "  memory: at most %d kB in the first ten minutes, then %d to %d kB%n",
                early, late == 0 ? 0 : least, late);
        System.out.printf("  pieces used up: %d of %d asked for%n", usedUp, asked);
        return times.failed() == 0 && times.answered(503) == 0 && usedUp * 2 > asked;
    }

    private void begin() throws IOException {
        caller.see("page", "/gift");
        caller.post("settings", "/settings", "ruler", "EIGHTHS", "paper", "letter");
        caller.post("example", "/example");
        for (int i = 0; i < 3; i++) {
            Matcher cloth = Pattern.compile("href=\"/cloth/(\\w+)\"")
                    .matcher(caller.see("page", "/cloths").body());
            if (cloth.find()) {
                HttpResponse<String> copied = caller.post("copy", "/cloth/" + cloth.group(1) + "/copy");
                cloths.add(copied.headers().firstValue("Location").orElse("").replaceFirst(".*/cloth/(\\w+).*", "$1"));
            }
        }
        if (cloths.isEmpty() || cloths.contains("")) {
            throw new IllegalStateException("no cloth to change: " + cloths);
        }
    }

    private void change() throws IOException {
        int kind = random.nextInt(100);
        if (kind < 35 && pieces <= MOST_PIECES) {
            line();
        } else if (kind < 50) {
            gone();
        } else if (kind < 85) {
            cloth();
        } else if (kind < 95) {
            backAndForth();
        } else {
            List<String> pages = List.of("/gift", "/stash", "/cloths", "/settings", "/cut/" + cloths.get(0));
            caller.see("page", pages.get(random.nextInt(pages.size())));
        }
    }

    private void line() throws IOException {
        List<String> fabrics = List.of("oat linen", "kelp cotton", "plum silk", "sea ramie", "ash print");
        caller.post(
                "line",
                "/stash/line",
                "line",
                (1 + random.nextInt(3)) + " " + fabrics.get(random.nextInt(fabrics.size())) + " "
                        + (2 + random.nextInt(30)) + " x " + (2 + random.nextInt(40)) + " in");
    }

    /** A piece is used up. No line is said while the table is fuller than a maker's, so that times tell of hers. */
    private void gone() throws IOException {
        String page = caller.see("page", "/stash").body();
        List<String> all = found("(\\d+) pieces,", page);
        if (all.isEmpty()) {
            throw new IllegalStateException("the stash does not say how many pieces it holds");
        }
        pieces = Integer.parseInt(all.get(0));
        List<String> seen = found("name=\"piece\" value=\"([^\":]+):", page);
        if (seen.isEmpty()) {
            throw new IllegalStateException("the stash shows no piece");
        }
        String piece = "/stash/piece/" + seen.get(random.nextInt(seen.size()));
        List<String> known = found(
                "name=\"seen\" value=\"([^\"]*)\"", caller.see("page", piece).body());
        HttpResponse<String> used =
                caller.post("piece", piece + "/use", "seen", known.isEmpty() ? "" : known.get(0), "many", "1");
        if (used.statusCode() == 303) {
            usedUp++;
        } else if (used.statusCode() != 409) {
            throw new IllegalStateException("a piece is not used up: " + used.statusCode());
        }
        asked++;
    }

    private void cloth() throws IOException {
        String cloth = "/cloth/" + cloths.get(random.nextInt(cloths.size()));
        String page = caller.see("bench", cloth).body();
        List<String> version = found("data-version=\"(\\d+)\"", page);
        String now = version.isEmpty() ? "1" : version.get(0);
        if (random.nextInt(6) == 0) {
            caller.post("cloth", cloth + "/undo", "version", now);
        } else {
            String eighths = (1 + random.nextInt(3)) + " " + (1 + random.nextInt(7)) + "/8";
            caller.post("cloth", cloth + "/change", "version", now, "what", "round", "round", "1", "width", eighths);
        }
    }

    private void backAndForth() throws IOException {
        String page = caller.see("page", "/stash").body();
        String way = random.nextBoolean() ? "undo" : "redo";
        Matcher label = Pattern.compile(
                        "action=\"/stash/" + way + "\".*?name=\"label\" value=\"([^\"]*)\"", Pattern.DOTALL)
                .matcher(page);
        caller.post(way, "/stash/" + way, "label", label.find() ? label.group(1) : "");
    }

    private static List<String> found(String pattern, String text) {
        List<String> all = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            all.add(matcher.group(1));
        }
        return all;
    }
}
