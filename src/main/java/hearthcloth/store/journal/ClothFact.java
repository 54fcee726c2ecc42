package hearthcloth.store.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import hearthcloth.store.json.BenchText;
import hearthcloth.store.json.Json;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.BenchFact;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a change did to a cloth: it came, went, got another name, was worked on, or its document was edited. */
public sealed interface ClothFact {

    /** The fact that takes this one back. */
    ClothFact reversed();

    /** Its document was edited. */
    record Edited(DocumentEdit edit) implements ClothFact {

        @Override
        public Edited reversed() {
            return new Edited(edit.reversed());
        }
    }

    /**
     * Something happened to it on the bench.
     *
     * @param back true where that is taken back
     */
    record Worked(BenchFact fact, boolean back) implements ClothFact {

        @Override
        public Worked reversed() {
            return new Worked(fact, !back);
        }

        /** Tells it in the cloth's text, or takes it out. */
        public void on(BenchText cloth) {
            if (back) {
                new FactText(cloth).takeBack(fact);
            } else {
                new FactText(cloth).happen(fact);
            }
        }

        /** As the journal keeps it. */
        public String text() {
            return Json.text(WorkWritten.of(fact));
        }
    }

    /** It got another name. */
    record Renamed(String was, String is) implements ClothFact {

        @Override
        public Renamed reversed() {
            return new Renamed(is, was);
        }

        /** As the journal keeps it. */
        public String text() {
            return Json.text(new Written(null, null, null, null, this));
        }
    }

    /**
     * It came to the shelf, or left it.
     *
     * @param version it had then, after which its next one is counted
     * @param comes false where it leaves
     */
    record Stands(String name, String document, long version, boolean comes) implements ClothFact {

        @Override
        public Stands reversed() {
            return new Stands(name, document, version, !comes);
        }

        /** As the journal keeps it. */
        public String text() {
            return Json.text(new Written(comes, name, document, version, null));
        }
    }

    /**
     * The coming, going or renaming of a cloth as it is kept.
     *
     * @param comes with {@code name}, {@code document} and {@code version}
     */
    record Written(
            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Boolean comes,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String name,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            String document,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Long version,

            @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable
            Renamed renamed) {}

    /** Work on the bench as it is kept: one of the three. */
    record WorkWritten(
            @JsonInclude(JsonInclude.Include.NON_NULL) BenchFact.@Nullable Cut cut,

            @JsonInclude(JsonInclude.Include.NON_NULL) BenchFact.@Nullable Sewn sewn,

            @JsonInclude(JsonInclude.Include.NON_NULL) BenchFact.@Nullable Unpicked unpicked) {

        static WorkWritten of(BenchFact fact) {
            return new WorkWritten(
                    fact instanceof BenchFact.Cut cut ? cut : null,
                    fact instanceof BenchFact.Sewn sewn ? sewn : null,
                    fact instanceof BenchFact.Unpicked unpicked ? unpicked : null);
        }

        Optional<BenchFact> fact() {
            if (cut != null) {
                return Optional.of(cut);
            }
            return sewn == null ? Optional.ofNullable(unpicked) : Optional.of(sewn);
        }
    }

    /**
     * Reads what the journal keeps.
     *
     * @throws StoreException where it cannot be read
     */
    static ClothFact read(String text) {
        try {
            Written written = Json.read(text, Written.class);
            if (written.renamed != null) {
                return written.renamed;
            }
            if (written.comes != null && written.name != null && written.document != null && written.version != null) {
                return new Stands(written.name, written.document, written.version, written.comes);
            }
            Optional<BenchFact> work = Json.read(text, WorkWritten.class).fact();
            if (work.isPresent()) {
                return new Worked(work.get(), false);
            }
        } catch (IllegalArgumentException e) {
            throw new StoreException(StoringSentences.record("none", "none"), e);
        }
        return new Edited(DocumentEdit.read(text));
    }
}
