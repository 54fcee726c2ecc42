package hearthcloth.work.deed;

import hearthcloth.work.Keepsake;
import hearthcloth.work.Project;
import hearthcloth.work.Project.Life;
import hearthcloth.work.Project.Stage;
import java.util.Optional;

/**
 * What she writes on the slip of a cloth: when it was made, what it wraps, who has it, how it came out.
 *
 * @param sewn whether she says that it is sewn
 */
public record SlipWritten(Project cloth, Slip slip, boolean sewn) {

    /**
     * The slip.
     *
     * @param made the day, as she writes it
     * @param real what it measures; empty where she did not say
     * @param word of hers about it
     */
    public record Slip(String made, String wrapped, String keeper, Optional<Keepsake.Measured> real, String word) {}

    /** The change, under this name. Only a cloth that is cut can be said to be sewn; one that waits for a cut cannot. */
    public Deed told(String label) {
        Life was = cloth.life();
        Stage stage = sewn && was.stage() == Stage.CUT ? Stage.SEWN : was.stage();
        Life now =
                was.at(stage).noted(slip.made(), slip.wrapped(), slip.keeper()).noted(slip.real(), slip.word());
        return Deed.edited(label, cloth.with(now));
    }
}
