package hearthcloth.draw;

import hearthcloth.cloth.making.Face;
import hearthcloth.draw.cloth.FaceSheet;
import hearthcloth.draw.cloth.Paper;
import hearthcloth.draw.guide.CutBlocks;
import hearthcloth.draw.picture.Picture;
import hearthcloth.draw.tied.TiedGift;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.Guide;
import hearthcloth.words.speech.Voice;
import hearthcloth.wrap.tie.Wrapped;
import java.util.List;
import java.util.Optional;

/**
 * Everything of one proposal as pictures and text, before it is written to files; it runs in a browser too. The same plan
 * always gives the same.
 *
 * @param voice in which it is said; its ruler is best the one the plan was made with
 * @param gift what the cloth is to be tied round, if anything
 */
public record PlanSheets(Plan plan, Voice voice, Paper paper, Optional<Wrapped> gift) {

    /** The same in English. */
    public PlanSheets(Plan plan, Ruler ruler, Paper paper, Optional<Wrapped> gift) {
        this(plan, Voice.english(ruler), paper, gift);
    }

    /** A cloth that is for no gift in particular. */
    PlanSheets(Plan plan, Ruler ruler, Paper paper) {
        this(plan, ruler, paper, Optional.empty());
    }

    /** The text of {@code plan.json}. */
    public String planFile() {
        return PlanFile.text(plan);
    }

    /** One face on a sheet of its own, with its legend. */
    public Picture face(Face face) {
        return FaceSheet.of(plan, face, voice);
    }

    /** Every piece of fabric with its cuts. */
    public Picture cutSheet() {
        return CutBlocks.sheet(plan, Guide.of(plan, voice).cutting(), voice);
    }

    /** The cloth tied round the gift; empty without a gift, or where the cloth is too small for it. */
    public Optional<TiedGift> tied() {
        return gift.flatMap(wrapped -> TiedSheet.tied(plan, wrapped));
    }

    /** The tied gift on a sheet: three views and what shows. */
    public Optional<Picture> tiedSheet() {
        return tiedSheet(tied());
    }

    Optional<Picture> tiedSheet(Optional<TiedGift> tied) {
        return gift.flatMap(wrapped -> tied.map(drawn -> TiedSheet.of(plan, wrapped, drawn, voice)));
    }

    /** The flat cloth with its folds on one sheet; empty where the cloth does not tie the gift. */
    Optional<Picture> net() {
        return gift.flatMap(wrapped -> tied().map(tied -> NetSheet.of(plan.cloth(), wrapped, tied, voice, paper)));
    }

    /** The guide, page by page. */
    public List<Picture> guidePages() {
        return guidePages(Guide.of(plan, voice), tied());
    }

    List<Picture> guidePages(Guide guide, Optional<TiedGift> tied) {
        return GuidePages.of(this, guide, tied);
    }
}
