package hearthcloth.words.measuring;

import hearthcloth.words.Language;

/** What is said in the room of measuring, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface MeasuringWords {

    /** What is said in one language; the class of no other is loaded. */
    static MeasuringWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishMeasuring();
            case KOREAN -> new KoreanMeasuring();
            case JAPANESE -> new JapaneseMeasuring();
            case FRENCH -> new FrenchMeasuring();
            case GERMAN -> new GermanMeasuring();
            case SPANISH -> new SpanishMeasuring();
        };
    }

    String areaInches(String number);

    String areaMetric(String number);

    String decimal();

    String listLast(String before, String last);

    String listNext(String before, String next);

    String percent(String number);

    String sentences(String first, String second);

    String unit(String unit);
}
