package hearthcloth.web.make;

import hearthcloth.measure.MeasureException;
import hearthcloth.measure.Size;
import hearthcloth.plan.model.Plan;
import hearthcloth.plan.rework.LateMiscut;
import hearthcloth.plan.rework.RemainingPlan;
import hearthcloth.sew.Guide;
import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.TimeLimit;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.speech.Voice;
import io.javalin.http.Context;
import java.util.List;
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
        List<AtTheMachine> steps = AtTheMachine.of(
                Guide.of(plan, desk.ruler()), Voice.english(desk.ruler()).sewing());
        int sewn = Math.min(cloth.document().bench().sewn(), steps.size());
        RemainingPlan.Table table = desk.table();
        LateMiscut slip = LateMiscut.of(plan, cloth.document().bench().ticked(), wrong, real, table.next());
        RemainingPlan.Answer answer = slip.fit(
                SewMeasure.seams(steps.subList(0, sewn)),
                cloth.document().design(),
                table,
                TimeLimit.within(ANSWER_WITHIN_MS));
        if (!(answer instanceof RemainingPlan.Answer.Made made)) {
            String why = desk.said(((RemainingPlan.Answer.Lacking) answer).why()).stream()
                    .findFirst()
                    .orElse("");
            throw new MeasureException(MakingWords.in(room.language()).wrongLateLacking(why));
        }
        String label = wrong.isEmpty() ? "planned again what is still to cut" : "a mistake in piece " + wrong;
        String to =
                desk.book(new SewWays.Taken(label, cloth.document().design(), made.resewn()), Optional.empty(), slip);
        PageContext.go(context, to, MakingWords.in(room.language()).wrongLatePlanned());
    }
}
