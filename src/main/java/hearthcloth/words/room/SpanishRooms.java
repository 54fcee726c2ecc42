package hearthcloth.words.room;

import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.measuring.SpanishMeasuring;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.mending.SpanishMending;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.photographing.SpanishPhotographing;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.planning.SpanishPlanning;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.printing.SpanishPrinting;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.reading.SpanishReading;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.refusing.SpanishRefusing;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.reporting.SpanishReporting;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.ruling.SpanishRuling;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.sewing.SpanishSewing;
import hearthcloth.words.storing.SpanishStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.SpanishTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.SpanishTyping;
import hearthcloth.words.typing.TypingWords;

/** Every room in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new SpanishMeasuring();
    }

    @Override
    public MendingWords mending() {
        return new SpanishMending();
    }

    @Override
    public PhotographingWords photographing() {
        return new SpanishPhotographing();
    }

    @Override
    public PlanningWords planning() {
        return new SpanishPlanning();
    }

    @Override
    public PrintingWords printing() {
        return new SpanishPrinting();
    }

    @Override
    public ReadingWords reading() {
        return new SpanishReading();
    }

    @Override
    public RefusingWords refusing() {
        return new SpanishRefusing();
    }

    @Override
    public ReportingWords reporting() {
        return new SpanishReporting();
    }

    @Override
    public RulingWords ruling() {
        return new SpanishRuling();
    }

    @Override
    public SewingWords sewing() {
        return new SpanishSewing();
    }

    @Override
    public StoringWords storing() {
        return new SpanishStoring();
    }

    @Override
    public TyingWords tying() {
        return new SpanishTying();
    }

    @Override
    public TypingWords typing() {
        return new SpanishTyping();
    }
}
