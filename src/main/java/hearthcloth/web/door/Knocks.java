package hearthcloth.web.door;

import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Devices that ask to come in without a code. Each shows a mark, such as ◆ 47, by which the owner knows hers at the machine.
 * One asks from an address at a time, and twenty in all, for ten minutes. Not thread-safe.
 */
final class Knocks {

    private static final List<String> SHAPES = List.of("◆", "●", "▲", "■", "★", "♥");
    private static final int MOST = 20;
    private static final Duration LASTS = Duration.ofMinutes(10);

    private final SecureRandom random = new SecureRandom();
    private final Clock clock;
    private final Map<String, Knock> waiting = new LinkedHashMap<>();

    private record Knock(Devices.Asking asking, Instant since, boolean allowed) {}

    Knocks(Clock clock) {
        this.clock = clock;
    }

    /** Asks; the secret by which the device is known again, or empty where too many ask already. */
    Optional<String> ask(String name, String address) {
        forget();
        waiting.values().removeIf(knock -> knock.asking().address().equals(address));
        if (waiting.size() >= MOST) {
            return Optional.empty();
        }
        String secret = hex(24);
        waiting.put(secret, new Knock(new Devices.Asking(hex(6), mark(), name, address), clock.instant(), false));
        return Optional.of(secret);
    }

    private String mark() {
        while (true) {
            String mark = SHAPES.get(random.nextInt(SHAPES.size())) + " " + (10 + random.nextInt(90));
            if (waiting.values().stream()
                    .noneMatch(knock -> knock.asking().mark().equals(mark))) {
                return mark;
            }
        }
    }

    private String hex(int bytes) {
        byte[] drawn = new byte[bytes];
        random.nextBytes(drawn);
        return HexFormat.of().formatHex(drawn);
    }

    List<Devices.Asking> all() {
        forget();
        return waiting.values().stream()
                .filter(knock -> !knock.allowed())
                .map(Knock::asking)
                .toList();
    }

    /** The mark of a device that still waits. */
    Optional<String> mark(String secret) {
        forget();
        return Optional.ofNullable(waiting.get(secret))
                .map(knock -> knock.asking().mark());
    }

    void answer(String id, boolean yes) {
        if (yes) {
            waiting.replaceAll((secret, knock) ->
                    knock.asking().id().equals(id) ? new Knock(knock.asking(), knock.since(), true) : knock);
        } else {
            waiting.values().removeIf(knock -> knock.asking().id().equals(id));
        }
    }

    /** The name of a device that was told yes; it asks no longer. */
    Optional<String> allowed(String secret) {
        forget();
        Optional<Knock> knock = Optional.ofNullable(waiting.get(secret)).filter(Knock::allowed);
        knock.ifPresent(found -> waiting.remove(secret));
        return knock.map(found -> found.asking().name());
    }

    private void forget() {
        Instant now = clock.instant();
        waiting.values()
                .removeIf(knock ->
                        knock.since().plus(LASTS).isBefore(now) || knock.since().isAfter(now));
    }
}
