package hearthcloth.web.door;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Telephones and tablets on her network that she let in: by a code, which lets one device in, once, within ten minutes, or by
 * saying yes at the machine to one that asks. Guessing takes nobody's code away. Kept in memory alone: when the workroom
 * closes, all are out. Thread-safe.
 */
public final class Devices {

    /** Letters and digits that are not taken for each other; eight of them are forty bits. */
    private static final String LETTERS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final int LENGTH = 8;
    private static final int MOST = 20;
    private static final int LONGEST_NAME = 40;
    private static final Duration LASTS = Duration.ofMinutes(10);

    private final SecureRandom random = new SecureRandom();
    private final Clock clock;
    private final Guesses guesses;
    private final Knocks knocks;
    private final Map<String, Device> inside = new LinkedHashMap<>();
    private String code = "";
    private Instant made = Instant.MIN;

    /**
     * A device that is in.
     *
     * @param id to name it by; not what lets it in
     */
    public record Device(String id, String name, Instant since) {}

    /**
     * A device that asks to come in, as the owner sees it.
     *
     * @param id to answer it by
     * @param mark that it shows
     * @param address it asks from
     */
    public record Asking(String id, String mark, String name, String address) {}

    /** What came of a code. */
    public enum Said {
        /** It was right. */
        IN,
        /** It was not. */
        WRONG,
        /** It was not looked at, after too many that were wrong. */
        WAIT
    }

    /**
     * The answer to a code.
     *
     * @param key what the device shows from then on; empty unless it is in
     */
    public record Answer(Said said, String key) {}

    public Devices(Clock clock) {
        this.clock = clock;
        this.guesses = new Guesses(clock);
        this.knocks = new Knocks(clock);
    }

    /** The code for the next device. */
    public synchronized String code() {
        Instant now = clock.instant();
        if (code.isEmpty() || made.plus(LASTS).isBefore(now) || made.isAfter(now)) {
            anew();
        }
        return code;
    }

    private void anew() {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        code = letters.toString();
        made = clock.instant();
    }

    /** Lets a device in, where the code is right and its address has not guessed too often. */
    public synchronized Answer join(String given, String name, String address) {
        if (guesses.isTooMany(address)) {
            return new Answer(Said.WAIT, "");
        }
        String said = given.replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
        if (!said.equals(code())) {
            guesses.wrong(address);
            return new Answer(Said.WRONG, "");
        }
        anew();
        return new Answer(Said.IN, in(called(name)));
    }

    private String in(String name) {
        if (inside.size() >= MOST) {
            inside.remove(inside.keySet().iterator().next());
        }
        String key = hex(24);
        inside.put(key, new Device(hex(6), name, clock.instant()));
        return key;
    }

    private static String called(String name) {
        String said = name.replaceAll("\\p{Cntrl}", " ").strip();
        return said.isEmpty() ? "a device" : said.substring(0, Math.min(said.length(), LONGEST_NAME));
    }

    /** Asks to come in without a code; the secret by which it is known again, or empty where too many ask. */
    public synchronized Optional<String> ask(String name, String address) {
        return knocks.ask(called(name), address);
    }

    /** The mark of a device that asked and waits. */
    public synchronized Optional<String> mark(String secret) {
        return knocks.mark(secret);
    }

    /** Those that ask, for the owner. */
    public synchronized List<Asking> asking() {
        return knocks.all();
    }

    /** The owner's answer to one that asks. */
    public synchronized void answer(String id, boolean yes) {
        knocks.answer(id, yes);
    }

    /** Lets in a device that was told yes: what it shows from then on. */
    public synchronized Optional<String> allowed(String secret) {
        return knocks.allowed(secret).map(this::in);
    }

    private String hex(int bytes) {
        byte[] drawn = new byte[bytes];
        random.nextBytes(drawn);
        return HexFormat.of().formatHex(drawn);
    }

    synchronized boolean isIn(String key) {
        return inside.containsKey(key);
    }

    public synchronized List<Device> all() {
        return new ArrayList<>(inside.values());
    }

    /** Puts a device out; it needs a new code. */
    public synchronized void end(String id) {
        inside.values().removeIf(device -> device.id().equals(id));
    }
}
