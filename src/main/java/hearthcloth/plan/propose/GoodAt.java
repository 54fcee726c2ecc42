package hearthcloth.plan.propose;

import hearthcloth.words.sentence.Argument;
import hearthcloth.words.sentence.PlanningSentences;
import hearthcloth.words.sentence.Sentence;
import java.util.List;

/** What a proposal is good at, looked into by those who show only a part of it. */
public final class GoodAt {

    private GoodAt() {}

    /** Without what compares it with the first proposal, for where they were put in another order. */
    public static Sentence uncompared(Sentence goodAt) {
        return Sentence.row(goodAt.parts().stream().map(GoodAt::alone).toList());
    }

    private static Sentence alone(Sentence part) {
        Argument none = Argument.text("");
        if (!part.isLike(PlanningSentences.good(none, none)) || !(part.with().get(1) instanceof Argument.Row points)) {
            return part;
        }
        boolean compared = points.parts().stream()
                .anyMatch(one -> one instanceof Sentence point && point.isLike(PlanningSentences.pointThan(none)));
        return compared ? PlanningSentences.goodAlone(part.with().get(0)) : part;
    }

    /** The first reason to give: what shows once tied, where that was wished; else what sets it apart from the others. */
    public static Sentence reason(Sentence goodAt) {
        Argument none = Argument.text("");
        List<Sentence> parts = goodAt.parts();
        return parts.stream()
                .filter(part -> part.isLike(PlanningSentences.colourOutside(none, none))
                        || part.isLike(PlanningSentences.colourOutsideAlways(none, none, none))
                        || part.isLike(PlanningSentences.colourOutsideRange(none, none, none)))
                .findFirst()
                .orElse(decisive(parts.get(0)));
    }

    /**
     * What this one has and others have not; that no bar needs a join stands among its figures. Where that is all there is to
     * say, what its plan of colour is.
     */
    private static Sentence decisive(Sentence part) {
        Argument none = Argument.text("");
        if (!part.isLike(PlanningSentences.good(none, none)) || !(part.with().get(1) instanceof Argument.Row points)) {
            return part;
        }
        List<Argument> apart = points.parts().stream()
                .filter(point -> !(point instanceof Sentence told && told.isLike(PlanningSentences.pointNoJoin())))
                .toList();
        return PlanningSentences.goodAlone(
                apart.isEmpty() ? part.with().get(0) : Argument.capital(new Argument.Row(points.joined(), apart)));
    }
}
