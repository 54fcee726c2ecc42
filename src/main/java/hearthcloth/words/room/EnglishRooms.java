package hearthcloth.words.room;

import hearthcloth.words.measuring.EnglishMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.mending.EnglishMending;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.photographing.EnglishPhotographing;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.planning.EnglishPlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.EnglishPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.EnglishReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.refusing.EnglishRefusing;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.reporting.EnglishReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.ruling.EnglishRuling;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.sewing.EnglishSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.storing.EnglishStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.EnglishTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.EnglishTyping;
import hearthcloth.words.typing.TypingWords;

/** Every room in English. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class EnglishRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new EnglishMeasuring();
    }

    @Override
    public MendingWords mending() {
        return new EnglishMending();
    }

    @Override
    public PhotographingWords photographing() {
        return new EnglishPhotographing();
    }

    @Override
    public PlanningWords planning() {
        return new EnglishPlanning();
    }

    @Override
    public PrintingWords printing() {
        return new EnglishPrinting();
    }

    @Override
    public ReadingWords reading() {
        return new EnglishReading();
    }

    @Override
    public RefusingWords refusing() {
        return new EnglishRefusing();
    }

    @Override
    public ReportingWords reporting() {
        return new EnglishReporting();
    }

    @Override
    public RulingWords ruling() {
        return new EnglishRuling();
    }

    @Override
    public SewingWords sewing() {
        return new EnglishSewing();
    }

    @Override
    public StoringWords storing() {
        return new EnglishStoring();
    }

    @Override
    public TyingWords tying() {
        return new EnglishTying();
    }

    @Override
    public TypingWords typing() {
        return new EnglishTyping();
    }
}
