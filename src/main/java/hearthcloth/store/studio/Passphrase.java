package hearthcloth.store.studio;

import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Stores a passphrase as Argon2id with a salt of its own, in the usual text form {@code
 * $argon2id$v=19$m=…,t=…,p=…$salt$hash}. The parameters are the second recommended set of RFC 9106: three passes over
 * 64 MiB in four lanes, 128 bits of salt, 256 bits of hash (docs/sources.md#argon2).
 */
final class Passphrase {

    private static final int MEMORY_KIB = 1 << 16;
    private static final int PASSES = 3;
    private static final int LANES = 4;
    private static final int SALT = 16;
    private static final int HASH = 32;

    private static final Pattern KEPT = Pattern.compile(
            "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,3})\\$([A-Za-z0-9+/]+)\\$([A-Za-z0-9+/]+)");

    private static final SecureRandom RANDOM = new SecureRandom();

    /**
     * Hashes computed at the same time. Each needs its memory while it works, and more of them would crowd out the
     * workroom.
     */
    private static final Semaphore AT_ONCE = new Semaphore(2, true);

    /** Who waits for their turn besides; more are told to come again, since a long wait would only hide that. */
    private static final int MOST_WAITING = 8;

    private Passphrase() {}

    /** The text to store for a passphrase; another one each time. */
    static String hashed(String passphrase) {
        byte[] salt = new byte[SALT];
        RANDOM.nextBytes(salt);
        Base64.Encoder text = Base64.getEncoder().withoutPadding();
        return "$argon2id$v=19$m=" + MEMORY_KIB + ",t=" + PASSES + ",p=" + LANES + "$" + text.encodeToString(salt) + "$"
                + text.encodeToString(digest(passphrase, salt, MEMORY_KIB, PASSES, LANES, HASH));
    }

    /** Whether {@code kept} was made from this passphrase, with whatever parameters. */
    static boolean matches(String passphrase, String kept) {
        Matcher matcher = KEPT.matcher(kept);
        if (!matcher.matches()) {
            return false;
        }
        byte[] hash = Base64.getDecoder().decode(matcher.group(5));
        byte[] again = digest(
                passphrase,
                Base64.getDecoder().decode(matcher.group(4)),
                Integer.parseInt(matcher.group(1)),
                Integer.parseInt(matcher.group(2)),
                Integer.parseInt(matcher.group(3)),
                hash.length);
        return MessageDigest.isEqual(hash, again);
    }

    /** Whether {@code kept} was made with weaker parameters than today's and should be made anew. */
    static boolean isOld(String kept) {
        return !kept.startsWith("$argon2id$v=19$m=" + MEMORY_KIB + ",t=" + PASSES + ",p=" + LANES + "$");
    }

    /** Whether one more would not wait for long. */
    static boolean hasRoom() {
        return AT_ONCE.getQueueLength() < MOST_WAITING;
    }

    static StoreException crowded() {
        return new StoreException(StoringSentences.person(Argument.text(""), "BUSY"));
    }

    private static byte[] digest(String passphrase, byte[] salt, int memory, int passes, int lanes, int length) {
        // The same letters, however this keyboard composes them, are the same passphrase.
        byte[] letters = Normalizer.normalize(passphrase, Normalizer.Form.NFC).getBytes(StandardCharsets.UTF_8);
        byte[] hash = new byte[length];
        if (!hasRoom()) {
            throw crowded();
        }
        AT_ONCE.acquireUninterruptibly();
        try {
            Argon2BytesGenerator generator = new Argon2BytesGenerator();
            generator.init(new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
                    .withVersion(Argon2Parameters.ARGON2_VERSION_13)
                    .withMemoryAsKB(memory)
                    .withIterations(passes)
                    .withParallelism(lanes)
                    .withSalt(salt)
                    .build());
            generator.generateBytes(letters, hash);
        } finally {
            AT_ONCE.release();
        }
        return hash;
    }
}
