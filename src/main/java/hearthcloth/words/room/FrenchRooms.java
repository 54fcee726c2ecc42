package hearthcloth.words.room;

import hearthcloth.words.measuring.FrenchMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.mending.FrenchMending;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.photographing.FrenchPhotographing;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.planning.FrenchPlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.FrenchPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.FrenchReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.refusing.FrenchRefusing;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.reporting.FrenchReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.ruling.FrenchRuling;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.sewing.FrenchSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.storing.FrenchStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.FrenchTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.FrenchTyping;
import hearthcloth.words.typing.TypingWords;

/** Every room in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new FrenchMeasuring();
    }

    @Override
    public MendingWords mending() {
        return new FrenchMending();
    }

    @Override
    public PhotographingWords photographing() {
        return new FrenchPhotographing();
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
    public RefusingWords refusing() {
        return new FrenchRefusing();
    }

    @Override
    public ReportingWords reporting() {
        return new FrenchReporting();
    }

    @Override
    public RulingWords ruling() {
        return new FrenchRuling();
    }

    @Override
    public SewingWords sewing() {
        return new FrenchSewing();
    }

    @Override
    public StoringWords storing() {
        return new FrenchStoring();
    }

    @Override
    public TyingWords tying() {
        return new FrenchTying();
    }

    @Override
    public TypingWords typing() {
        return new FrenchTyping();
    }
}
