package hearthcloth.store.archive;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Fabric;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.stash.StashFile;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.StashEdit;
import hearthcloth.store.Store;
import hearthcloth.store.json.StoreException;
import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.StoringSentences;
import hearthcloth.work.Project;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Unpacks an archive into a store. A piece keeps its number where that is free and otherwise gets a new one, and the
 * plans that are cut from it are changed accordingly. A mark before a number or a cloth's id (the example's) is
 * dropped, since what comes out of an archive is hers. A fabric that is there already stays as it is there.
 */
final class ArchiveUnpacking {

    private final Archive archive;

    /** What the change is called, for Undo. */
    private final String label;

    private final Store store;
    private final boolean instead;

    /** For each piece of the archive, the piece it is in the store. */
    private final Map<Piece, Piece> became = new HashMap<>();

    ArchiveUnpacking(Archive archive, Store store, boolean instead, String label) {
        this.label = label;
        this.archive = archive;
        this.store = store;
        this.instead = instead;
    }

    int lay() {
        pieces();
        archive.swatches().forEach((fabric, swatch) -> {
            if (instead || store.swatches().find(fabric).isEmpty()) {
                store.swatches().keep(fabric, swatch);
            }
        });
        int came = 0;
        for (Archive.Kept kept : archive.cloths()) {
            came += laid(kept) ? 1 : 0;
        }
        return came;
    }

    private void pieces() {
        Stash there = store.stash().whole();
        Stash stays = instead ? new Stash(List.of()) : there;
        if (stays.pieces().size() + archive.pieces().size() > StashFile.MOST_PIECES) {
            throw new StoreException(StoringSentences.archivePass(Argument.number(StashFile.MOST_PIECES)));
        }
        List<Piece> come = come(stays, there);
        List<Piece> gone = instead ? there.pieces() : List.of();
        if (!gone.equals(come)) {
            store.stash().edit(new StashEdit(label, gone, come));
        }
        aside(come);
    }

    /** The pieces that come, with numbers that none of those which stay has; of a fabric that stays, as it is there. */
    private List<Piece> come(Stash stays, Stash there) {
        Map<String, Fabric> known =
                stays.fabrics().stream().collect(Collectors.toMap(Fabric::name, fabric -> fabric, (one, other) -> one));
        Set<String> taken = stays.pieces().stream().map(Piece::id).collect(Collectors.toSet());
        int next = Stream.concat(there.pieces().stream(), archive.pieces().stream())
                .mapToInt(Piece::row)
                .reduce(store.stash().nextPiece() - 1, Math::max);
        Set<String> ids = new HashSet<>(taken);
        archive.pieces().forEach(piece -> ids.add(piece.id()));
        List<Piece> come = new ArrayList<>();
        for (Piece piece : archive.pieces()) {
            Fabric fabric = known.getOrDefault(piece.fabric().name(), piece.fabric());
            Piece now = new Piece(piece.id(), fabric, piece.size(), piece.washed(), piece.row());
            if (taken.contains(piece.id()) || !Character.isDigit(piece.id().charAt(0))) {
                do {
                    next++;
                } while (!ids.add(String.valueOf(next)));
                now = new Piece(String.valueOf(next), fabric, piece.size(), piece.washed(), next);
            }
            came(piece, now);
            come.add(now);
        }
        return come;
    }

    /** Sets aside what is set aside in the archive, and nothing else of what came. */
    private void aside(List<Piece> come) {
        Set<String> on = new HashSet<>();
        for (int i = 0; i < come.size(); i++) {
            if (archive.aside().contains(archive.pieces().get(i).id())) {
                on.add(come.get(i).id());
            }
        }
        Set<String> was = store.stash().aside();
        List<String> more = on.stream().filter(id -> !was.contains(id)).sorted().toList();
        List<String> less = come.stream()
                .map(Piece::id)
                .filter(id -> was.contains(id) && !on.contains(id))
                .toList();
        if (!more.isEmpty()) {
            store.stash().edit(StashEdit.aside(label, more, true));
        }
        if (!less.isEmpty()) {
            store.stash().edit(StashEdit.aside(label, less, false));
        }
    }

    private void came(Piece piece, Piece now) {
        boolean liesAlike = piece.fabric().faces() == now.fabric().faces()
                && piece.fabric().nap() == now.fabric().nap();
        if (liesAlike) {
            became.put(piece, now);
        }
    }

    private boolean laid(Archive.Kept kept) {
        String id = kept.id().replaceFirst("^.*-", "");
        Optional<SavedCloth> there = store.cloths().find(id);
        Project document = followed(kept.document());
        if (there.isEmpty()) {
            store.cloths().keep(id, kept.name(), document);
            hung(id, kept.portrait());
            return true;
        }
        if (instead || !store.portraits().kept().containsKey(id)) {
            hung(id, kept.portrait());
        }
        boolean same =
                there.get().document().equals(document) && there.get().name().equals(kept.name());
        if (same || !instead) {
            return false;
        }
        store.cloths().save(there.get(), label, document);
        store.cloths().rename(id, kept.name());
        return true;
    }

    private void hung(String cloth, String portrait) {
        if (!portrait.isEmpty()) {
            store.portraits().keep(cloth, Base64.getDecoder().decode(portrait));
        }
    }

    /** The document with the pieces that its plan is cut from as they are in the store. */
    private Project followed(Project document) {
        if (document.plan().isEmpty()) {
            return document;
        }
        Plan plan = document.plan().get();
        Map<String, String> ids = new HashMap<>();
        List<PieceCut> cuts = new ArrayList<>();
        for (PieceCut cut : plan.cuts()) {
            Piece now = became.getOrDefault(cut.piece(), cut.piece());
            ids.put(cut.piece().id(), now.id());
            cuts.add(new PieceCut(now, cut.tree(), cut.past()));
        }
        Set<String> ticked = document.bench().ticked().stream()
                .map(tick -> followed(tick, ids))
                .collect(Collectors.toSet());
        return new Project(
                document.design(),
                Optional.of(new Plan(plan.story(), plan.cloth(), plan.rules(), cuts, plan.bound())),
                document.lacking(),
                document.bench().withTicked(ticked),
                document.life());
    }

    private static String followed(String tick, Map<String, String> ids) {
        int colon = tick.indexOf(':');
        return colon < 0
                ? ids.getOrDefault(tick, tick)
                : ids.getOrDefault(tick.substring(0, colon), tick.substring(0, colon)) + tick.substring(colon);
    }
}
