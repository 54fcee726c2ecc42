package hearthcloth.web.cloth;

import hearthcloth.measure.Rounding;
import hearthcloth.web.drawn.BenchDrawing;
import hearthcloth.web.drawn.ClothDrawing;
import hearthcloth.words.designing.DesigningWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the hearth and the bars in the picture on the bench say, lead to when pressed, and how they are pulled. */
record BenchTargets(ClothView view) {

    private DesigningWords words() {
        return DesigningWords.in(view.settings().pages());
    }

    /** Of the hearth, or of the bar of that name. */
    BenchDrawing.Target of(String name) {
        boolean hearth = name.equals("hearth");
        String fabrics = used(name);
        String cut = hearth
                ? view.settings().voice().write(view.rework().hearthCut(), Rounding.UP)
                : words().altWide(view.settings().voice().write(view.rework().barCut(view.number(name)), Rounding.UP));
        String lock = view.document().bench().locked().contains(name) ? "yes" : "no";
        return new BenchDrawing.Target(
                words().altTarget(words().barName(hearth ? "hearth" : "bar", name), cut, fabrics, lock),
                "/cloth/" + view.saved().id() + "?at=" + name,
                name.equals(view.at()),
                view.document().bench().locked().contains(name),
                hearth || !view.editable() || !name.equals(view.at())
                        ? Optional.empty()
                        : Optional.of(pull(view.number(name))));
    }

    private BenchDrawing.Pull pull(int bar) {
        long parts = view.ruler().unit().nanometres() / view.ruler().step().nm();
        return new BenchDrawing.Pull(view.rework().barCut(bar), view.ruler().step(), parts);
    }

    private String used(String name) {
        List<String> names = new ArrayList<>();
        for (var patch : view.cloth().patches()) {
            if (ClothDrawing.name(patch.place()).equals(name) && !names.contains(patch.fabric())) {
                names.add(patch.fabric());
            }
        }
        return view.settings().voice().list(names);
    }
}
