package hearthcloth.words.room;

import hearthcloth.words.measuring.FrenchMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.planning.FrenchPlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.FrenchPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.FrenchReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.reporting.FrenchReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.sewing.FrenchSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.tying.FrenchTying;
import hearthcloth.words.tying.TyingWords;

/** Every room in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new FrenchMeasuring();
    }

    @Override
    public PlanningWords planning() {
        return new FrenchPlanning();
    }

    @Override
    public PrintingWords printing() {
        return new FrenchPrinting();
    }

    @Override
    public ReadingWords reading() {
        return new FrenchReading();
    }

    @Override
    public ReportingWords reporting() {
        return new FrenchReporting();
    }

    @Override
    public SewingWords sewing() {
        return new FrenchSewing();
    }

    @Override
    public TyingWords tying() {
        return new FrenchTying();
    }
}
