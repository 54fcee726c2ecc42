package hearthcloth.web.cloth;

import hearthcloth.cloth.making.Face;
import hearthcloth.cloth.making.Hem;
import hearthcloth.cloth.making.SeamKind;
import hearthcloth.measure.Rounding;
import hearthcloth.measure.Ruler;
import hearthcloth.plan.model.Design;
import java.util.ArrayList;
import java.util.List;

/** Seam, hem and the rules of piecing, as the fields of a cloth's page show them. */
public record ClothSewing(Design design, Ruler ruler) {

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
        return ruler().number(seam.narrow(), Rounding.NEAREST) + " + " + ruler().write(seam.wide(), Rounding.NEAREST);
    }

    public String hem() {
        Hem hem = design().making().hem();
        return ruler().number(hem.first(), Rounding.NEAREST) + " + " + ruler().number(hem.second(), Rounding.NEAREST);
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
        return ruler().number(design().rules().leastPiece(), Rounding.NEAREST);
    }
}
