package hearthcloth.web.stash;

import hearthcloth.measure.Measures;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.stash.Piece;
import hearthcloth.web.kit.PageContext;
import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/**
 * Which pieces she wants to see, as it stands in the address.
 *
 * @param text in the fabric's name or a piece's number
 * @param fabric only this one; empty for all
 * @param least pieces that hold at least this; as she wrote it
 * @param page from 1
 */
public record StashAsked(String text, String fabric, String least, int page) {

    static StashAsked of(Context context) {
        String page = PageContext.text(context, "page");
        return new StashAsked(
                PageContext.text(context, "text"),
                PageContext.text(context, "fabric"),
                PageContext.text(context, "least"),
                page.matches("[1-9]\\d{0,4}") ? Integer.parseInt(page) : 1);
    }

    public boolean isAll() {
        return text.isEmpty() && fabric.isEmpty() && least.isEmpty();
    }

    /** The address of another page of the same. */
    public String page(int other) {
        return address(fabric, other);
    }

    /** The address of the same asked of one fabric, or of all where {@code name} is empty. */
    public String of(String name) {
        return address(name, 1);
    }

    private String address(String name, int at) {
        StringBuilder out = new StringBuilder("/stash");
        append(out, "text", text);
        append(out, "fabric", name);
        append(out, "least", least);
        append(out, "page", at == 1 ? "" : String.valueOf(at));
        return out.toString();
    }

    private static void append(StringBuilder out, String name, String value) {
        if (!value.isEmpty()) {
            out.append(out.indexOf("?") < 0 ? '?' : '&')
                    .append(name)
                    .append('=')
                    .append(URLEncoder.encode(value, StandardCharsets.UTF_8));
        }
    }

    /** The least size read; empty where none is asked. */
    Optional<Size> leastSize(Unit bare) {
        return least.isEmpty() ? Optional.empty() : Optional.of(Measures.size(least, bare));
    }

    /** True for the pieces she wants; the least size may lie either way. */
    boolean wants(Piece piece, Optional<Size> size) {
        String name = piece.fabric().name();
        return (fabric.isEmpty() || name.equals(fabric))
                && (text.isEmpty()
                        || name.toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT))
                        || piece.id().equals(text))
                && size.map(wanted -> piece.size().holds(wanted) || piece.size().holds(wanted.turned()))
                        .orElse(true);
    }
}
