package hearthcloth.web.make;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.making.MakingWords;
import hearthcloth.work.deed.LateSpoiled;
import io.javalin.http.Context;
import java.util.Optional;

/** Something went wrong with a cut that was asked for while sewing: what is still to cut is planned again. */
record LateSlip(PageContext room, SavedCloth cloth, Plan plan) {

    private static final long ANSWER_WITHIN_MS = 600;

    /**
     * Plans what is still to cut again.
     *
     * @param wrong id of the piece that was spoiled; empty where a piece is gone for another reason
     * @param real the largest part left of it
     */
    void mend(Context context, String wrong, Optional<Size> real) {
        SewWays.Desk desk = new SewWays.Desk(room, cloth);
        LateSpoiled slip = new LateSpoiled(desk.bench(), wrong, real);
        LateSpoiled.Outcome outcome = slip.planned(TimeLimit.within(ANSWER_WITHIN_MS));
        if (outcome instanceof LateSpoiled.Outcome.Lacking lacking) {
            String why = desk.said(lacking.why()).stream().findFirst().orElse("");
            throw new MeasureException(MakingWords.in(room.language()).wrongLateLacking(why));
        }
        String to = desk.book(((LateSpoiled.Outcome.Planned) outcome).deed());
        PageContext.go(context, to, MakingWords.in(room.language()).wrongLatePlanned());
    }
}
