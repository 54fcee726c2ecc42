package hearthcloth.words.room;

import hearthcloth.words.measuring.KoreanMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.mending.KoreanMending;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.photographing.KoreanPhotographing;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.planning.KoreanPlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.KoreanPrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.KoreanReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.refusing.KoreanRefusing;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.reporting.KoreanReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.ruling.KoreanRuling;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.sewing.KoreanSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.storing.KoreanStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.KoreanTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.KoreanTyping;
import hearthcloth.words.typing.TypingWords;

/** Every room in Korean. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class KoreanRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new KoreanMeasuring();
    }

    @Override
    public MendingWords mending() {
        return new KoreanMending();
    }

    @Override
    public PhotographingWords photographing() {
        return new KoreanPhotographing();
    }

    @Override
    public PlanningWords planning() {
        return new KoreanPlanning();
    }

    @Override
    public PrintingWords printing() {
        return new KoreanPrinting();
    }

    @Override
    public ReadingWords reading() {
        return new KoreanReading();
    }

    @Override
    public RefusingWords refusing() {
        return new KoreanRefusing();
    }

    @Override
    public ReportingWords reporting() {
        return new KoreanReporting();
    }

    @Override
    public RulingWords ruling() {
        return new KoreanRuling();
    }

    @Override
    public SewingWords sewing() {
        return new KoreanSewing();
    }

    @Override
    public StoringWords storing() {
        return new KoreanStoring();
    }

    @Override
    public TyingWords tying() {
        return new KoreanTying();
    }

    @Override
    public TypingWords typing() {
        return new KoreanTyping();
    }
}
