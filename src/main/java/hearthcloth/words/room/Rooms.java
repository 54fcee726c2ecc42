package hearthcloth.words.room;

import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.TypingWords;

/** What is said in one language, a method for each room. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface Rooms {

    MeasuringWords measuring();

    MendingWords mending();

    PhotographingWords photographing();

    PlanningWords planning();

    PrintingWords printing();

    ReadingWords reading();

    RefusingWords refusing();

    ReportingWords reporting();

    RulingWords ruling();

    SewingWords sewing();

    StoringWords storing();

    TyingWords tying();

    TypingWords typing();
}
