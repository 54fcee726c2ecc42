package hearthcloth.web.door;

import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import java.net.URI;
import java.util.Locale;
import java.util.Optional;

/**
 * Who can reach the workroom.
 *
 * @param lan whether other devices on the network are answered
 * @param code whether a code is asked for on this machine too, where other people are logged in to it
 * @param origin of a reverse proxy before a studio's workroom, such as {@code https://studio.example}; empty for none
 */
public record Openness(boolean lan, boolean code, Optional<String> origin) {

    /** This machine only, without a code. */
    public static final Openness HERE = new Openness(false, false, Optional.empty());

    /** Other devices on the network too. */
    public static final Openness NEAR = new Openness(true, false, Optional.empty());

    /**
     * With the address of a reverse proxy, as typed.
     *
     * @throws StoreException where that is no address
     */
    public static Openness of(boolean lan, boolean code, Optional<String> address) {
        return new Openness(lan, code, address.map(Openness::origin));
    }

    private static String origin(String typed) {
        try {
            URI uri = URI.create(typed.strip().toLowerCase(Locale.ROOT));
            String scheme = String.valueOf(uri.getScheme());
            boolean bare = uri.getRawPath() == null || uri.getRawPath().matches("/?");
            if (scheme.matches("https?") && uri.getHost() != null && uri.getRawUserInfo() == null && bare) {
                return scheme + "://" + uri.getRawAuthority();
            }
        } catch (IllegalArgumentException e) {
            // Said below.
        }
        throw new StoreException(StoringSentences.proxy());
    }

    /** Whether devices have to be let in one by one. */
    public boolean keepsDoor() {
        return lan || code;
    }

    /** What the proxy passes on as Host. */
    Optional<String> authority() {
        return origin.map(all -> all.replaceFirst("^https?://", ""));
    }

    /** Whether the browser may be told to send its cookies over TLS only. */
    public boolean isSecure() {
        return origin.filter(all -> all.startsWith("https:")).isPresent();
    }
}
