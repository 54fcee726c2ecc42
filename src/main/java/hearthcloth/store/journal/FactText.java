package hearthcloth.store.journal;

import hearthcloth.store.json.BenchText;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project.Stage;

/** Tells what happened on the bench in the text of its cloth, or takes it out again. */
record FactText(BenchText cloth) {

    /**
     * Tells a fact.
     *
     * @throws hearthcloth.store.json.StoreException where it cannot have happened to a cloth that stands so
     */
    void happen(BenchFact fact) {
        if (fact instanceof BenchFact.Cut cut) {
            cloth.tick(cut.cuts(), cut.made());
        } else if (fact instanceof BenchFact.Sewn sewn) {
            sewn(sewn);
        } else if (fact instanceof BenchFact.Unpicked unpicked) {
            cloth.sewn(unpicked.to(), unpicked.from());
            if (unpicked.sewn()) {
                cloth.stage(Stage.SEWN, Stage.CUT);
            }
        }
    }

    /** Takes a fact out of the text, as {@link #happen} left it; fails likewise. */
    void takeBack(BenchFact fact) {
        if (fact instanceof BenchFact.Cut cut) {
            cloth.tick(cut.cuts(), !cut.made());
        } else if (fact instanceof BenchFact.Sewn sewn) {
            unsewn(sewn);
        } else if (fact instanceof BenchFact.Unpicked unpicked) {
            cloth.sewn(unpicked.from(), unpicked.to());
            if (unpicked.sewn()) {
                cloth.stage(Stage.CUT, Stage.SEWN);
            }
        }
    }

    private void sewn(BenchFact.Sewn sewn) {
        sewn.measure().ifPresent(cloth::add);
        sewn.done().ifPresent(one -> {
            cloth.sewn(sewn.step(), sewn.step() + 1);
            cloth.add(one);
        });
        if (sewn.last()) {
            cloth.stage(Stage.CUT, Stage.SEWN);
        }
    }

    private void unsewn(BenchFact.Sewn sewn) {
        sewn.measure().ifPresent(cloth::remove);
        sewn.done().ifPresent(one -> {
            cloth.sewn(sewn.step() + 1, sewn.step());
            cloth.remove(one);
        });
        if (sewn.last()) {
            cloth.stage(Stage.SEWN, Stage.CUT);
        }
    }
}
