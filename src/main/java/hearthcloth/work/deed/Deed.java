package hearthcloth.work.deed;

import hearthcloth.plan.model.Design;
import hearthcloth.plan.model.Plan;
import hearthcloth.stash.Piece;
import hearthcloth.words.sentence.Sentence;
import hearthcloth.work.BenchFact;
import hearthcloth.work.Project;
import java.util.List;
import java.util.Optional;

/**
 * One thing she did to a cloth, with all that goes with it: kept together and taken back together.
 *
 * @param label what was done, for "Undo …"
 * @param fact what happened on the bench; empty where nothing did
 * @param edited the cloth with another design, plan or stage; its bench is as it stands after {@code fact}. Empty where
 *     only the bench is another
 * @param pieces what went out of the stash and came into it
 */
public record Deed(Sentence label, Optional<BenchFact> fact, Optional<Project> edited, Pieces pieces) {

    /** Pieces that go and pieces that come. */
    public record Pieces(List<Piece> gone, List<Piece> come) {

        static final Pieces NONE = new Pieces(List.of(), List.of());

        public Pieces {
            gone = List.copyOf(gone);
            come = List.copyOf(come);
        }

        public boolean isNone() {
            return gone.isEmpty() && come.isEmpty();
        }
    }

    /** The cloth is another, and nothing else; {@code label} says it in her own words. */
    public static Deed edited(String label, Project edited) {
        return of(Sentence.itself(label), edited, Pieces.NONE);
    }

    static Deed of(Sentence label, BenchFact fact) {
        return new Deed(label, Optional.of(fact), Optional.empty(), Pieces.NONE);
    }

    static Deed of(Sentence label, Project edited, Pieces pieces) {
        return new Deed(label, Optional.empty(), Optional.of(edited), pieces);
    }

    /** The cloth with another design and plan. */
    static Project planned(Project was, Design design, Plan plan) {
        return new Project(design, Optional.of(plan), List.of(), was.bench(), was.life());
    }
}
