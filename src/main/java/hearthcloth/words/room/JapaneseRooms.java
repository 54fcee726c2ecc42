package hearthcloth.words.room;

import hearthcloth.words.measuring.JapaneseMeasuring;
import hearthcloth.words.measuring.MeasuringWords;
import hearthcloth.words.mending.JapaneseMending;
import hearthcloth.words.mending.MendingWords;
import hearthcloth.words.photographing.JapanesePhotographing;
import hearthcloth.words.photographing.PhotographingWords;
import hearthcloth.words.planning.JapanesePlanning;
import hearthcloth.words.planning.PlanningWords;
import hearthcloth.words.printing.JapanesePrinting;
import hearthcloth.words.printing.PrintingWords;
import hearthcloth.words.reading.JapaneseReading;
import hearthcloth.words.reading.ReadingWords;
import hearthcloth.words.refusing.JapaneseRefusing;
import hearthcloth.words.refusing.RefusingWords;
import hearthcloth.words.reporting.JapaneseReporting;
import hearthcloth.words.reporting.ReportingWords;
import hearthcloth.words.ruling.JapaneseRuling;
import hearthcloth.words.ruling.RulingWords;
import hearthcloth.words.sewing.JapaneseSewing;
import hearthcloth.words.sewing.SewingWords;
import hearthcloth.words.storing.JapaneseStoring;
import hearthcloth.words.storing.StoringWords;
import hearthcloth.words.tying.JapaneseTying;
import hearthcloth.words.tying.TyingWords;
import hearthcloth.words.typing.JapaneseTyping;
import hearthcloth.words.typing.TypingWords;

/** Every room in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseRooms implements Rooms {

    @Override
    public MeasuringWords measuring() {
        return new JapaneseMeasuring();
    }

    @Override
    public MendingWords mending() {
        return new JapaneseMending();
    }

    @Override
    public PhotographingWords photographing() {
        return new JapanesePhotographing();
    }

    @Override
    public PlanningWords planning() {
        return new JapanesePlanning();
    }

    @Override
    public PrintingWords printing() {
        return new JapanesePrinting();
    }

    @Override
    public ReadingWords reading() {
        return new JapaneseReading();
    }

    @Override
    public RefusingWords refusing() {
        return new JapaneseRefusing();
    }

    @Override
    public ReportingWords reporting() {
        return new JapaneseReporting();
    }

    @Override
    public RulingWords ruling() {
        return new JapaneseRuling();
    }

    @Override
    public SewingWords sewing() {
        return new JapaneseSewing();
    }

    @Override
    public StoringWords storing() {
        return new JapaneseStoring();
    }

    @Override
    public TyingWords tying() {
        return new JapaneseTying();
    }

    @Override
    public TypingWords typing() {
        return new JapaneseTyping();
    }
}
