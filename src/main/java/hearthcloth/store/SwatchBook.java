package hearthcloth.store;

import hearthcloth.colour.Figure;
import hearthcloth.measure.Length;
import hearthcloth.measure.Unit;
import hearthcloth.photo.FabricFigure;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jdbi.v3.core.Jdbi;

/** Pictures of her fabrics, by the fabric's name. Thread-safe. */
public final class SwatchBook {

    private final Jdbi jdbi;
    private final Map<Seen, Optional<Figure>> read;

    SwatchBook(Jdbi jdbi) {
        this(jdbi, new ConcurrentHashMap<>());
    }

    /**
     * The same.
     *
     * @param read what was read off pictures so far; grows
     */
    SwatchBook(Jdbi jdbi, Map<Seen, Optional<Figure>> read) {
        this.jdbi = jdbi;
        this.read = read;
    }

    /**
     * A picture of a fabric.
     *
     * @param kind its media type
     * @param picture its bytes in base 64
     * @param across the width of cloth it shows
     */
    public record Swatch(String kind, String picture, Length across) {

        /** The width assumed where nobody measured it: a hand's breadth. */
        private static final Length USUAL = Length.cm(10);

        public Swatch(String kind, String picture) {
            this(kind, picture, USUAL);
        }
    }

    public Optional<Swatch> find(String fabric) {
        return jdbi.withHandle(handle -> handle.createQuery("select * from swatch where fabric = :fabric")
                .bind("fabric", fabric)
                .map((row, context) -> swatch(row))
                .findOne());
    }

    private static Swatch swatch(ResultSet row) throws SQLException {
        return new Swatch(row.getString("kind"), row.getString("picture"), new Length(row.getLong("across")));
    }

    /** For each fabric that has a picture, the width of cloth it shows. */
    public Map<String, Length> across() {
        Map<String, Length> across = new HashMap<>();
        jdbi.useHandle(handle -> handle.createQuery("select fabric, across from swatch")
                .map((row, context) -> Map.entry(row.getString("fabric"), new Length(row.getLong("across"))))
                .forEach(entry -> across.put(entry.getKey(), entry.getValue())));
        return Map.copyOf(across);
    }

    /**
     * For each fabric whose picture shows that it is figured, how it looks. What is read off a picture is kept in memory as long as
     * the picture is the same.
     */
    Map<String, Figure> figures() {
        Map<String, Figure> figures = new HashMap<>();
        for (Seen seen : pictures()) {
            read.computeIfAbsent(seen, one -> find(one.fabric).flatMap(SwatchBook::figure))
                    .ifPresent(figure -> figures.put(seen.fabric, figure));
        }
        return Map.copyOf(figures);
    }

    /** A picture without its bytes: their number tells it from another of the same fabric, and {@link #keep} forgets both. */
    record Seen(String fabric, long across, long bytes) {}

    private List<Seen> pictures() {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select fabric, across, octet_length(picture) as bytes from swatch")
                .map((row, context) -> new Seen(row.getString("fabric"), row.getLong("across"), row.getLong("bytes")))
                .list());
    }

    private static Optional<Figure> figure(Swatch swatch) {
        try {
            byte[] picture = Base64.getDecoder().decode(swatch.picture());
            return FabricFigure.of(picture, swatch.across().in(Unit.MILLIMETRE));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    public void keep(String fabric, Swatch swatch) {
        read.keySet().removeIf(seen -> seen.fabric.equals(fabric));
        jdbi.useTransaction(handle -> handle.createUpdate(
                        "insert into swatch (fabric, kind, picture, across) values (:fabric, :kind, :picture, :across)"
                                + " on conflict (fabric) do update set kind = excluded.kind, picture = excluded.picture,"
                                + " across = excluded.across")
                .bind("fabric", fabric)
                .bind("kind", swatch.kind())
                .bind("picture", swatch.picture())
                .bind("across", swatch.across().nm())
                .execute());
    }

    public void remove(String fabric) {
        jdbi.useTransaction(handle -> handle.createUpdate("delete from swatch where fabric = :fabric")
                .bind("fabric", fabric)
                .execute());
    }
}
