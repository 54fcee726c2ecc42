package hearthcloth.web.kit;

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
 * Telephones and tablets on her network that she let in. A code lets one device in, once; a code that is old or was guessed
 * at is thrown away. Kept in memory alone: when the workroom closes, all are out. Thread-safe.
 */
public final class Devices {

    /** Letters and digits that are not taken for each other; eight of them are forty bits. */
    private static final String LETTERS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";

    private static final int LENGTH = 8;
    private static final int GUESSES = 5;
    private static final int MOST = 20;
    private static final int LONGEST_NAME = 40;
    private static final Duration LASTS = Duration.ofMinutes(10);

    private final SecureRandom random = new SecureRandom();
    private final Clock clock;
    private final Map<String, Device> inside = new LinkedHashMap<>();
    private String code = "";
    private Instant made = Instant.MIN;
    private int guesses;

    /**
     * A device that is in.
     *
     * @param id to name it by; not what lets it in
     */
    public record Device(String id, String name, Instant since) {}

    public Devices(Clock clock) {
        this.clock = clock;
    }

    /** The code for the next device. */
    public synchronized String code() {
        if (code.isEmpty() || made.plus(LASTS).isBefore(clock.instant())) {
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
        guesses = 0;
    }

    /** Lets a device in; what it must show from then on. Empty where the code is not right. */
    public synchronized Optional<String> join(String given, String name) {
        String said = given.replaceAll("[^A-Za-z0-9]", "").toUpperCase(Locale.ROOT);
        if (!said.equals(code())) {
            guesses++;
            if (guesses >= GUESSES) {
                anew();
            }
            return Optional.empty();
        }
        anew();
        if (inside.size() >= MOST) {
            inside.remove(inside.keySet().iterator().next());
        }
        String key = hex(24);
        String called = name.replaceAll("\\p{Cntrl}", " ").strip();
        inside.put(
                key,
                new Device(
                        hex(6),
                        called.isEmpty() ? "a device" : called.substring(0, Math.min(called.length(), LONGEST_NAME)),
                        clock.instant()));
        return Optional.of(key);
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
