package hearthcloth.words.room;

import hearthcloth.words.measuring.GermanMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.mending.GermanMending;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.photographing.GermanPhotographing;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.planning.GermanPlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.GermanPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.GermanReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.refusing.GermanRefusing;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.reporting.GermanReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.ruling.GermanRuling;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.sewing.GermanSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.storing.GermanStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.GermanTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.GermanTyping;
import hearthcloth.words.typing.TypingWords;

/** Every room in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new GermanMeasuring();
    }

    @Override
    public MendingWords mending() {
        return new GermanMending();
    }

    @Override
    public PhotographingWords photographing() {
        return new GermanPhotographing();
    }

    @Override
    public PlanningWords planning() {
        return new GermanPlanning();
    }

    @Override
    public PrintingWords printing() {
        return new GermanPrinting();
    }

    @Override
    public ReadingWords reading() {
        return new GermanReading();
    }

    @Override
    public RefusingWords refusing() {
        return new GermanRefusing();
    }

    @Override
    public ReportingWords reporting() {
        return new GermanReporting();
    }

    @Override
    public RulingWords ruling() {
        return new GermanRuling();
    }

    @Override
    public SewingWords sewing() {
        return new GermanSewing();
    }

    @Override
    public StoringWords storing() {
        return new GermanStoring();
    }

    @Override
    public TyingWords tying() {
        return new GermanTying();
    }

    @Override
    public TypingWords typing() {
        return new GermanTyping();
    }
}
