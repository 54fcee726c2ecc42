package hearthcloth.web.make;

import hearthcloth.sew.machine.AtTheMachine;
import hearthcloth.sew.machine.SewingPace;
import hearthcloth.store.SavedCloth;
import hearthcloth.store.Store;
import hearthcloth.web.kit.ExampleMark;
import hearthcloth.words.making.MakingWords;
import hearthcloth.work.Project;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

/** How fast she sews, from the steps of all her cloths. */
record OwnPace(SewingPace pace) {

    static OwnPace of(Store store) {
        List<List<SewingPace.Step>> sewings = new ArrayList<>();
        for (SavedCloth cloth : store.cloths().all()) {
            if (!ExampleMark.isOn(cloth.id())) {
                sewings.add(steps(cloth.document().bench().done()));
            }
        }
        return new OwnPace(SewingPace.of(sewings));
    }

    private static List<SewingPace.Step> steps(List<Project.Done> done) {
        List<SewingPace.Step> steps = new ArrayList<>();
        for (Project.Done one : done) {
            Arrays.stream(AtTheMachine.Kind.values())
                    .filter(kind -> kind.name().toLowerCase(Locale.ROOT).equals(one.kind()))
                    .forEach(
                            kind -> steps.add(new SewingPace.Step(kind, one.at().getEpochSecond())));
        }
        return steps;
    }

    /** What these steps will take, in a sentence; empty where her pace is not known for all of them. */
    String sentence(List<AtTheMachine> left, MakingWords words) {
        OptionalLong seconds = pace.of(left);
        if (left.isEmpty() || seconds.isEmpty()) {
            return "";
        }
        long minutes = Math.max(1, Math.round(seconds.getAsLong() / 60.0));
        long hours = minutes / 60;
        String time = hours == 0
                ? words.sewMinutes(String.valueOf(minutes))
                : words.sewHours(String.valueOf(hours), String.valueOf(minutes % 60));
        return words.sewPace(time);
    }
}
