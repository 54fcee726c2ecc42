package hearthcloth.web.make;

import hearthcloth.cloth.Laid;
import hearthcloth.draw.PlanFolder;
import hearthcloth.draw.picture.SvgWriter;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.measure.Unit;
import hearthcloth.plan.model.CutTree;
import hearthcloth.plan.model.Plan;
import hearthcloth.sew.CutLine;
import hearthcloth.sew.Guide;
import hearthcloth.sew.PieceTask;
import hearthcloth.store.SavedCloth;
import hearthcloth.web.cloth.ClothAsked;
import hearthcloth.web.kit.PageContext;
import hearthcloth.web.kit.Settings;
import hearthcloth.words.making.MakingWords;
import hearthcloth.words.speech.Voice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** One piece as its page shows it, with the slips of what comes off it now. */
record CutShown(CutSheet sheet, List<CutSheet.Slip> slips) {

    /** The longest side of a piece in the row of all, in pixels. */
    private static final double LONGEST = 44;

    /** @param asked which of the pieces, from 0; below 0 for the first that is not cut */
    static CutShown of(PageContext room, SavedCloth cloth, int asked) {
        Plan plan = ClothAsked.plan(cloth);
        Settings settings = ClothAsked.settings(room, cloth);
        Voice voice = settings.voice();
        Guide guide = Guide.of(plan, voice);
        CutTicks ticks =
                new CutTicks(guide.cutting(), cloth.document().bench().ticked(), MakingWords.in(voice.language()));
        List<PieceTask> tasks = ticks.tasks();
        int at = asked < 0 ? ticks.first() : Math.min(asked, tasks.size() - 1);
        PieceTask task = tasks.get(at);
        boolean cut = !cloth.document().life().stage().isToCut();
        Optional<CutLine> now = cut ? Optional.empty() : next(task, ticks);
        PlanFolder drawn = new PlanFolder(plan, voice, settings.paper(), Optional.empty());
        List<CutSheet.Line> lines = task.lines().stream()
                .map(line -> line(line, ticks.isCut(task, line), voice))
                .toList();
        int made = cut
                ? lines.size()
                : (int) lines.stream().filter(CutSheet.Line::ticked).count();
        return new CutShown(
                new CutSheet(
                        cloth,
                        new CutSheet.Place(at, tasks.size(), ticks.done(), cut),
                        piece(task, drawn, made, guide, voice),
                        tasks.stream()
                                .map(one -> mini(one, tasks, ticks.isCut(one) || cut, voice))
                                .toList(),
                        lines),
                now.map(line -> slips(line, plan, voice)).orElse(List.of()));
    }

    private static Optional<CutLine> next(PieceTask task, CutTicks ticks) {
        return task.lines().stream().filter(line -> !ticks.isCut(task, line)).findFirst();
    }

    /** @param made how many of its lines are cut */
    private static CutSheet.Piece piece(PieceTask task, PlanFolder drawn, int made, Guide guide, Voice voice) {
        MakingWords words = MakingWords.in(voice.language());
        return new CutSheet.Piece(
                task,
                words.matDescribed(
                        task.cut().piece().fabric().name(),
                        voice.write(task.cut().piece().size(), Rounding.DOWN)),
                SvgWriter.writeOnPage(drawn.onMat(task, made), "desk"),
                SvgWriter.writeOnPage(drawn.onMatInHand(task, made), "hand"),
                guide.notes().cautions().stream()
                        .map(caution -> words.caution(caution.topic(), caution.words()))
                        .toList());
    }

    private static CutSheet.Line line(CutLine line, boolean ticked, Voice voice) {
        MakingWords words = MakingWords.in(voice.language());
        String gives = Stream.of(line.cut().first(), line.cut().second())
                .filter(CutTree.Kept.class::isInstance)
                .map(kept -> ((CutTree.Kept) kept).patch().replace('.', '·'))
                .reduce((one, other) -> words.listed(one, other))
                .orElseGet(() -> words.matOff(line.from().word()));
        return new CutSheet.Line(
                line.number(), voice.write(line.measure(), Rounding.UP), line.sentence(), gives, ticked);
    }

    private static CutSheet.Mini mini(PieceTask task, List<PieceTask> all, boolean done, Voice voice) {
        double longest = all.stream()
                .map(one -> one.cut().piece().size())
                .mapToDouble(size -> Math.max(mm(size, true), mm(size, false)))
                .max()
                .orElse(1);
        Size size = task.cut().piece().size();
        return new CutSheet.Mini(
                MakingWords.in(voice.language())
                        .matDescribed(task.cut().piece().fabric().name(), voice.write(size, Rounding.DOWN)),
                (int) Math.max(4, Math.round(mm(size, true) / longest * LONGEST)),
                (int) Math.max(4, Math.round(mm(size, false) / longest * LONGEST)),
                task.cut().piece().fabric().colour().hex(),
                done);
    }

    private static double mm(Size size, boolean across) {
        return (across ? size.width() : size.height()).in(Unit.MILLIMETRE);
    }

    private static List<CutSheet.Slip> slips(CutLine line, Plan plan, Voice voice) {
        Map<String, Laid> laid = plan.laid();
        return Stream.of(line.cut().first(), line.cut().second())
                .filter(CutTree.Kept.class::isInstance)
                .map(kept -> laid.get(((CutTree.Kept) kept).patch()))
                .map(one -> new CutSheet.Slip(
                        one.patch().place().label(), one.patch().fabric(), voice.write(one.cut(), Rounding.UP)))
                .toList();
    }
}
