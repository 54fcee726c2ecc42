package hearthcloth.store;

import hearthcloth.colour.Figure;
import hearthcloth.store.journal.OneChange;
import hearthcloth.store.journal.UndoRedo;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.words.speech.Voice;
import hearthcloth.work.StashAtHand;
import hearthcloth.work.deed.Deed;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Jdbi;

/**
 * The maker's work, in one SQLite file or in a studio's database. Every change is one transaction and is on the disk
 * before the call returns, so that what was acknowledged survives a crash. Thread-safe: writers wait for each other.
 */
public final class Store implements AutoCloseable {

    private final Jdbi jdbi;
    private final Clock clock;
    private final Optional<SafetyCopies> copies;
    private final CountedPieces counted = new CountedPieces();
    private final Map<SwatchBook.Seen, Optional<Figure>> figures = new ConcurrentHashMap<>();

    public Store(Jdbi jdbi, Clock clock, Optional<SafetyCopies> copies) {
        this.jdbi = jdbi;
        this.clock = clock;
        this.copies = copies;
    }

    /**
     * Opens the file, or creates it.
     *
     * @throws StoreException with a sentence, where the file is not ours, damaged or cannot be written; it is never
     *     overwritten
     */
    public static Store open(Path file, Clock clock) {
        return SqliteFile.open(file, SqliteFile.usual(), clock);
    }

    /** Where her work used to lie at a path and does not any more: what to do, in words. */
    public static Optional<Sentence> gone(Path file, boolean wasOpened) {
        return SqliteFile.gone(file, wasOpened);
    }

    /** Holds the file for as long as the workroom is open: from now on it is noticed where it is moved or deleted. */
    public void hold() {
        copies.ifPresent(all -> all.file().source().hold());
    }

    /**
     * Writes all her work anew where its file lay that was moved or deleted.
     *
     * @throws StoreException with a sentence, where that cannot be done
     */
    public void writeAnew() {
        copies.ifPresent(all -> all.file().source().writeAnew());
    }

    @Override
    public void close() {
        copies.ifPresent(all -> {
            try {
                all.file().source().close();
            } catch (SQLException e) {
                // All that was acknowledged is on the disk already.
            }
        });
    }

    /** Runs several changes as one: all of them are stored or, where {@code work} throws, none. */
    public <T> T atOnce(Supplier<T> work) {
        return jdbi.inTransaction(handle -> work.get());
    }

    /**
     * Runs edits of several books as one change under one name: stored together or not at all, and taken back together
     * by one undo, wherever it is asked for.
     */
    public <T> T asOneChange(String label, Supplier<T> work) {
        return jdbi.inTransaction(handle -> OneChange.named(handle, label, work));
    }

    /**
     * Keeps what she did to a cloth, with all that goes with it, as one change.
     *
     * @param voice in which Undo names it
     * @return the cloth as it is then
     * @throws hearthcloth.store.json.StoreException where the cloth or a piece was changed elsewhere in the meantime;
     *     nothing is changed then
     */
    public SavedCloth book(SavedCloth cloth, Deed deed, Voice voice) {
        String label = deed.label().in(voice);
        return asOneChange(label, () -> {
            SavedCloth worked = deed.fact()
                    .map(fact -> cloths().happened(cloth, label, fact))
                    .orElse(cloth);
            if (!deed.pieces().isNone()) {
                stash().edit(new StashEdit(
                        label, deed.pieces().gone(), deed.pieces().come()));
            }
            return deed.edited()
                    .map(edited -> deed.fact().isPresent()
                            ? edited.with(worked.document().bench())
                            : edited)
                    .map(edited -> cloths().save(worked, label, edited))
                    .orElse(worked);
        });
    }

    static UndoRedo turns(Jdbi jdbi, Clock clock) {
        return new UndoRedo(
                jdbi,
                clock,
                new Books(
                        new StashBook(jdbi, clock),
                        new ClothBook(jdbi, clock, new CountedPieces()),
                        new PhotoBook(jdbi, clock)));
    }

    /** What of stash and cloths does not fit the journal, in a sentence; empty where all does. */
    Optional<Sentence> fault() {
        return jdbi.withHandle(
                handle -> JournalFold.fault(handle, stash().whole().pieces()));
    }

    /** The present time, which dates everything that is stored. */
    public Instant now() {
        return clock.instant();
    }

    /** Her fabric. */
    public StashBook stash() {
        return new StashBook(jdbi, clock);
    }

    /** The stash as it can be planned with, beside what her cloths count on. */
    public StashAtHand atHand() {
        return new StashAtHand(stash().whole().pictured(swatches().figures()), stash().aside(), cloths().promises());
    }

    /** What she designed and made. */
    public ClothBook cloths() {
        return new ClothBook(jdbi, clock, counted);
    }

    /** Pictures of her fabrics. */
    public SwatchBook swatches() {
        return new SwatchBook(jdbi, figures);
    }

    /** Her photographs of finished cloths. */
    public PortraitBook portraits() {
        return new PortraitBook(jdbi, clock);
    }

    /** Photographs of her scraps. */
    public PhotoBook photographs() {
        return new PhotoBook(jdbi, clock);
    }

    /** Copies of her file; empty where the work is in a studio's database, which is copied as a whole. */
    public Optional<SafetyCopies> copies() {
        return copies;
    }

    public Optional<String> setting(String name) {
        return jdbi.withHandle(handle -> handle.createQuery("select text from setting where name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne());
    }

    /** Those of these settings that are kept, by name; one question for all. */
    public Map<String, String> settings(List<String> names) {
        return jdbi.withHandle(handle -> handle
                .createQuery("select name, text from setting where name in (<names>)")
                .bindList("names", names)
                .map((row, context) -> Map.entry(row.getString("name"), row.getString("text")))
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    public void set(String name, String text) {
        jdbi.useTransaction(handle -> handle.createUpdate("insert into setting (name, text) values (:name, :text)"
                        + " on conflict (name) do update set text = excluded.text")
                .bind("name", name)
                .bind("text", text)
                .execute());
    }

    /** Removes a setting. */
    public void unset(String name) {
        jdbi.useTransaction(handle -> handle.createUpdate("delete from setting where name = :name")
                .bind("name", name)
                .execute());
    }
}
