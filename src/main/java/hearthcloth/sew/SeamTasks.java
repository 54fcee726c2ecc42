package hearthcloth.sew;

import hearthcloth.cloth.Assembly;
import hearthcloth.cloth.Bars;
import hearthcloth.cloth.Cloth;
import hearthcloth.cloth.Half;
import hearthcloth.cloth.Laid;
import hearthcloth.cloth.Patch;
import hearthcloth.cloth.Place;
import hearthcloth.cloth.Step;
import hearthcloth.cloth.face.Layers;
import hearthcloth.measure.Length;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Size;
import hearthcloth.words.sewing.SewingWords;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/** Turns every step of a cloth into what to do at the machine. */
final class SeamTasks {

    private final Cloth cloth;
    private final MakerWords words;
    private final SmallTasks small;
    private final Map<String, Laid> laid = new HashMap<>();
    private final Map<Assembly, Integer> madeIn = new HashMap<>();
    private final Map<Integer, List<Layers.Spot>> thick = new HashMap<>();

    private SeamTasks(Cloth cloth, MakerWords words) {
        this.cloth = cloth;
        this.words = words;
        this.small = new SmallTasks(cloth, words.said());
        cloth.laid().forEach(patch -> laid.put(patch.patch().place().id(), patch));
        Layers.spots(cloth)
                .forEach(spot -> thick.computeIfAbsent(spot.step(), key -> new ArrayList<>())
                        .add(spot));
    }

    static List<SeamTask> of(Cloth cloth, MakerWords words) {
        SeamTasks sewing = new SeamTasks(cloth, words);
        List<SeamTask> tasks = new ArrayList<>();
        for (Step step : cloth.steps()) {
            tasks.add(sewing.task(step));
            sewing.madeIn.put(step.seam(), step.number());
        }
        return List.copyOf(tasks);
    }

    private SeamTask task(Step step) {
        Meeting meeting =
                new Meeting(step, cloth.making(), party(step, step.added().other()), party(step, step.added()));
        List<Laid> patches = new ArrayList<>(meeting.work().patches());
        patches.addAll(meeting.added().patches());
        List<String> lines = new ArrayList<>();
        Optional<String> begins = small.begins(patches);
        begins.ifPresent(lines::add);
        lines.addAll(SeamWords.of(meeting, words));
        trimming(meeting, lines);
        small.ends(patches).ifPresent(lines::add);
        List<String> brief = new ArrayList<>();
        begins.ifPresent(brief::add);
        brief.addAll(SeamWords.brief(meeting, words));
        trimming(meeting, brief);
        small.ends(patches).ifPresent(brief::add);
        List<String> few = new ArrayList<>(FewWords.of(meeting, words));
        few.addAll(FewWords.trimmed(meeting, words));
        Task task =
                new Task(title(meeting), lines, Optional.of(check(meeting)), warnings(meeting), FewWords.fitted(few));
        return new SeamTask(
                step, task, brief, new SeamTask.Glance(meeting.wrapping().name(), thick(meeting)));
    }

    private String title(Meeting meeting) {
        String added = meeting.added().name();
        String work = meeting.work().name();
        return MakerWords.capital(
                meeting.isJoin()
                        ? words.said().titleJoin(added, work)
                        : words.said().titleSeam(added, meeting.side().word(), work));
    }

    private void trimming(Meeting meeting, List<String> lines) {
        String added = meeting.added().name();
        if (meeting.isBar() && words.shows(meeting.tooLong())) {
            lines.add(MakerWords.capital(
                    words.said().seamTrimEnd(added, meeting.work().name())));
        }
        if (meeting.isBar() && words.shows(meeting.tooWide())) {
            Size running = meeting.step().running();
            boolean upright = meeting.side().isUpright();
            String across = words.near(upright ? running.width() : running.height());
            String off = words.exact(meeting.tooWide());
            lines.add(MakerWords.capital(words.said().seamTrimEdge(across, added, off, upright ? "wide" : "high")));
        }
    }

    /** The size to check. After a join the bar still has its leeway; after anything else the work is trimmed. */
    private Task.Check check(Meeting meeting) {
        Size running = meeting.step().running();
        if (meeting.isJoin()) {
            running = untrimmed(meeting);
        }
        String what = meeting.isJoin() ? "bar" : "work";
        return new Task.Check(running, words.said().seamCheck(words.measured(running), what));
    }

    private static Size untrimmed(Meeting meeting) {
        List<Laid> parts = new ArrayList<>(meeting.work().patches());
        parts.addAll(meeting.added().patches());
        boolean across = meeting.side().isUpright();
        Length width = Length.ZERO;
        Length height = Length.ZERO;
        for (Laid part : parts) {
            Size margin = part.margin();
            width = across ? width.plus(margin.width()) : width.max(margin.width());
            height = across ? height.max(margin.height()) : height.plus(margin.height());
        }
        Size running = meeting.step().running();
        return new Size(running.width().plus(width), running.height().plus(height));
    }

    /** The distances of all thick places, the nearest first. */
    private String thick(Meeting meeting) {
        List<Length> places = thick.getOrDefault(meeting.step().number(), List.of()).stream()
                .map(spot -> fromStart(meeting, spot))
                .sorted()
                .toList();
        return places.isEmpty() ? "" : words.said().seamThickAt(end(meeting), words.near(places));
    }

    private List<String> warnings(Meeting meeting) {
        Map<Integer, List<Length>> places = new TreeMap<>();
        for (Layers.Spot spot : thick.getOrDefault(meeting.step().number(), List.of())) {
            places.computeIfAbsent(spot.plies(), key -> new ArrayList<>()).add(fromStart(meeting, spot));
        }
        List<String> warnings = new ArrayList<>();
        places.forEach((plies, at) ->
                warnings.add(words.said().seamWarning(end(meeting), words.near(at), Integer.toString(plies))));
        return warnings;
    }

    /** From which end distances along a seam are told. */
    private static String end(Meeting meeting) {
        return meeting.side().isUpright() ? "top" : "left";
    }

    /** The distance of the middle of a thick place from the raw end of the work. */
    private static Length fromStart(Meeting meeting, Layers.Spot spot) {
        boolean upright = meeting.side().isUpright();
        Length along = upright
                ? spot.at().y().minus(meeting.step().line().y())
                : spot.at().x().minus(meeting.step().line().x());
        Length extent = upright ? spot.at().height() : spot.at().width();
        return along.plus(extent.dividedBy(2, Rounding.NEAREST)).plus(meeting.openAtStart());
    }

    private Meeting.Party party(Step step, Half half) {
        List<Laid> patches = step.patches(half).stream()
                .map(patch -> Objects.requireNonNull(laid.get(patch.place().id())))
                .toList();
        return new Meeting.Party(name(step.seam().half(half), patches), patches);
    }

    private String name(Assembly assembly, List<Laid> patches) {
        SewingWords said = words.said();
        if (assembly instanceof Patch patch) {
            return words.patch(patch);
        }
        Optional<String> bar = Bars.name(assembly);
        if (bar.isPresent()) {
            return isWhole(bar.get(), patches.size()) ? said.nameBar(bar.get()) : said.nameJoined(bar.get());
        }
        Optional<String> task = small.name(patches);
        if (task.isPresent()) {
            return task.get();
        }
        boolean hearth = patches.stream().anyMatch(one -> one.patch().place() instanceof Place.Hearth);
        return hearth ? said.nameWork() : said.nameStepBlock(Integer.toString(madeIn.getOrDefault(assembly, 0)));
    }

    private boolean isWhole(String bar, int parts) {
        return parts
                == laid.values().stream()
                        .filter(one -> one.patch().place() instanceof Place.Bar place
                                && place.bar().equals(bar))
                        .count();
    }
}
