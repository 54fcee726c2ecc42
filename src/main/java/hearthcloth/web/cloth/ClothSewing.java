package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Rounding;
import hearthcloth.plan.model.Design;
import hearthcloth.words.speech.Voice;
import java.util.ArrayList;
import java.util.List;

/** Seam, hem and the rules of piecing, as the fields of a cloth's page show them. */
public record ClothSewing(Design design, Voice voice) {

    /** Names of the seams there are, the cloth's own among them. */
    public List<String> seams() {
        List<String> names =
                new ArrayList<>(SeamKind.table().stream().map(SeamKind::name).toList());
        if (!names.contains(seam())) {
            names.add(0, seam());
        }
        return names;
    }

    public String seam() {
        return design().making().seam().name();
    }

    /** The allowances of the seam: narrow and wide. */
    public String allowances() {
        SeamKind seam = design().making().seam();
        return voice().number(seam.narrow(), Rounding.NEAREST) + " + "
                + voice().ruler().write(seam.wide(), Rounding.NEAREST);
    }

    public String hem() {
        Hem hem = design().making().hem();
        return voice().number(hem.first(), Rounding.NEAREST) + " + " + voice().number(hem.second(), Rounding.NEAREST);
    }

    public boolean mitred() {
        return design().making().hem().corner() == Hem.Corner.MITRED;
    }

    public boolean fellsOnBack() {
        return design().making().fell() == Face.BACK;
    }

    public int mostJoins() {
        return design().rules().mostJoins();
    }

    public String leastPiece() {
        return voice().number(design().rules().leastPiece(), Rounding.NEAREST);
    }
}
