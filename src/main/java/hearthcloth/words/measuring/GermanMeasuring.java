package hearthcloth.words.measuring;

/** The room of measuring in German. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class GermanMeasuring implements MeasuringWords {

    @Override
    public String areaInches(String number) {
        return number + " Quadratzoll";
    }

    @Override
    public String areaMetric(String number) {
        return number + " cm²";
    }

    @Override
    public String decimal() {
        return ",";
    }

    @Override
    public String listApart(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String listLast(String before, String last) {
        return before + " und " + last;
    }

    @Override
    public String listNext(String before, String next) {
        return before + ", " + next;
    }

    @Override
    public String listOr(String before, String last) {
        return before + " oder " + last;
    }

    @Override
    public String percent(String number) {
        return number + " %";
    }

    @Override
    public String sentences(String first, String second) {
        return first + " " + second;
    }

    @Override
    public String unit(String unit) {
        return (unit.equals("in") ? "Zoll" : unit.equals("yd") ? "Yard" : unit.equals("m") ? "m" : unit.equals("cm") ? "cm" : "mm");
    }
}
