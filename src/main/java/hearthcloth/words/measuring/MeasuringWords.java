package hearthcloth.words.measuring;

/** What is said in the room of measuring, a method for each message. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public interface MeasuringWords {

    String areaInches(String number);

    String areaMetric(String number);

    String decimal();

    String listApart(String before, String next);

    String listLast(String before, String last);

    String listNext(String before, String next);

    String listOr(String before, String last);

    String percent(String number);

    String sentences(String first, String second);

    String unit(String unit);
}
