package hearthcloth.sew;

import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Notation;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.making.Making;
import java.util.List;

/** The meeting of one step of a cloth, its halves under names given by hand. */
record SewnHalves(Cloth cloth) {

    static SewnHalves of(String notation, Making making) {
        return new SewnHalves(new Cloth(Notation.parse(notation), making));
    }

    Meeting meeting(int step, String work, String added) {
        Step sewn = cloth.steps().get(step - 1);
        return new Meeting(
                sewn, cloth.making(), party(sewn, sewn.added().other(), work), party(sewn, sewn.added(), added));
    }

    private Meeting.Party party(Step step, Half half, String name) {
        List<Laid> patches = step.patches(half).stream()
                .map(patch -> laid(patch.place().id()))
                .toList();
        return new Meeting.Party(name, patches);
    }

    Laid laid(String id) {
        return cloth.laid().stream()
                .filter(one -> one.patch().place().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
