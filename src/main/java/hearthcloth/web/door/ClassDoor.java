package hearthcloth.web.door;

import hearthcloth.web.kit.Visitor;
import io.javalin.http.Context;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The door of a class: one code lets in every student who knows it for as long as the class lasts, and to the class's own
 * pages only. Kept in memory alone: when the class ends or the workroom closes, all are out. Thread-safe.
 */
public final class ClassDoor {

    /** What a student's phone shows. */
    public static final String COOKIE = "hearthcloth-class";

    /** Letters and digits that are not taken for each other; six of them are nearly thirty bits, and guesses are counted. */
    private static final String LETTERS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final int LENGTH = 6;
    private static final int MOST = 60;
    private static final int LONGEST_NAME = 40;
    private static final String IN = "/class/in";
    private static final String OWN = "/class/mine";

    private final SecureRandom random = new SecureRandom();
    private final Guesses guesses;
    private final Map<String, Student> inside = new LinkedHashMap<>();
    private String code = "";

    /**
     * Somebody who is in.
     *
     * @param id to name her by; not what lets her in
     * @param token proves that a form came from one of her own pages
     */
    public record Student(String id, String name, String token) {}

    /** What came of a code. */
    public enum Said {
        /** It was right. */
        IN,
        /** It was not. */
        WRONG,
        /** It was not looked at, after too many that were wrong. */
        WAIT,
        /** It was right, but nobody more has room. */
        FULL
    }

    /**
     * The answer to a code.
     *
     * @param key what the phone shows from then on; empty unless she is in
     */
    public record Answer(Said said, String key) {}

    public ClassDoor(Clock clock) {
        this.guesses = new Guesses(clock);
    }

    /** Opens it under a new code; nobody is in. */
    public synchronized void open() {
        inside.clear();
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        code = letters.toString();
    }

    /** Puts everybody out and lets nobody in. */
    public synchronized void close() {
        inside.clear();
        code = "";
    }

    /** What is typed to come in; empty while there is no class. */
    public synchronized String code() {
        return code;
    }

    /** Lets a student in where the code is right; her name is told apart from those of others. */
    public synchronized Answer join(String given, String name, String address) {
        if (guesses.isTooMany(address)) {
            return new Answer(Said.WAIT, "");
        }
        String said = given.replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
        if (code.isEmpty() || !said.equals(code)) {
            guesses.wrong(address);
            return new Answer(Said.WRONG, "");
        }
        if (inside.size() >= MOST) {
            return new Answer(Said.FULL, "");
        }
        String key = hex(24);
        inside.put(key, new Student(hex(6), called(name), hex(24)));
        return new Answer(Said.IN, key);
    }

    private String called(String name) {
        String plain = name.replaceAll("[\\p{Cntrl}\\p{Cf}]", " ").strip();
        String first = plain.isEmpty() ? "?" : plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
        String now = first;
        for (int number = 2; isTaken(now); number++) {
            now = first + " " + number;
        }
        return now;
    }

    private boolean isTaken(String name) {
        return inside.values().stream().anyMatch(one -> one.name().equalsIgnoreCase(name));
    }

    private String hex(int bytes) {
        byte[] drawn = new byte[bytes];
        random.nextBytes(drawn);
        return HexFormat.of().formatHex(drawn);
    }

    /** Those who are in, in the order they came. */
    public synchronized List<Student> all() {
        return new ArrayList<>(inside.values());
    }

    /** Puts one out. */
    public synchronized void out(String id) {
        inside.values().removeIf(student -> student.id().equals(id));
    }

    /** Which student a request comes from. */
    public synchronized Optional<Student> student(Context context) {
        return Optional.ofNullable(context.cookie(COOKIE)).flatMap(key -> Optional.ofNullable(inside.get(key)));
    }

    /** Whether an address is one of the class's own: the only ones a student is let in to. */
    public static boolean isItsOwn(String path) {
        return path.equals(IN) || path.equals(OWN) || path.startsWith(OWN + "/");
    }

    /** Whether it is the way in, which asks for the code. */
    static boolean isWayIn(String path) {
        return path.equals(IN);
    }

    /** Whether a request is a student's, on a page of the class. */
    boolean isIn(Context context) {
        return isItsOwn(context.path()) && student(context).isPresent();
    }

    /** Whoever asks for a page of the class: with her own token and nobody's work; empty for all other pages. */
    public Optional<Visitor> guest(Context context) {
        return isItsOwn(context.path())
                ? Optional.of(new Visitor(
                        Optional.empty(),
                        Optional.empty(),
                        student(context).map(Student::token).orElse("")))
                : Optional.empty();
    }
}
