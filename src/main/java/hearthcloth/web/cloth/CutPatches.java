package hearthcloth.web.cloth;

import hearthcloth.plan.model.PieceCut;
import hearthcloth.plan.rework.MiscutRecovery;
import hearthcloth.stash.Piece;
import hearthcloth.stash.Stash;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.StashEdit;
import hearthcloth.web.kit.PageContext;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;

/**
 * What is cut of a cloth already, after a mistake, while the rest of it is still planned: where it is planned anew its
 * patches are fabric like any other, those that are used as they are stay in its story, and the others come into the stash.
 */
record CutPatches(PageContext room, SavedCloth cloth) {

    private Optional<MiscutRecovery> cut() {
        return cloth.document()
                .plan()
                .filter(plan -> cloth.document().life().stage() == Project.Stage.DESIGNED
                        && plan.cuts().stream().anyMatch(PieceCut::past))
                .map(plan -> MiscutRecovery.of(plan, room.store().stash().nextPiece()));
    }

    /** What the cloth may be planned from. */
    Stash stash() {
        Stash free = room.store().atHand().freeFor(cloth.id());
        return cut().map(patches -> patches.stash(free)).orElse(free);
    }

    /** Keeps a document that was planned from {@link #stash}, and what becomes of the patches, as one change. */
    SavedCloth save(String label, Project planned) {
        Optional<MiscutRecovery> cut = cut();
        if (cut.isEmpty()) {
            return room.store().cloths().save(cloth, label, planned);
        }
        MiscutRecovery patches = cut.get();
        List<Piece> come = planned.plan().map(patches::come).orElse(patches.come());
        Project told = new Project(
                planned.design(),
                planned.plan().map(patches.story()::told),
                planned.lacking(),
                planned.bench(),
                planned.life());
        return room.store().asOneChange(label, () -> {
            if (!come.isEmpty()) {
                room.store().stash().edit(new StashEdit(label, List.of(), come));
            }
            return room.store().cloths().save(cloth, label, told);
        });
    }
}
