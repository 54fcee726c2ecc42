package hearthcloth.words.measuring;

/** The room of measuring in Japanese. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class JapaneseMeasuring implements MeasuringWords {

    @Override
    public String areaInches(String number) {
        return number + " 平方インチ";
    }

    @Override
    public String areaMetric(String number) {
        return number + " cm²";
    }

    @Override
    public String decimal() {
        return ".";
    }

    @Override
    public String listApart(String before, String next) {
        return before + "；" + next;
    }

    @Override
    public String listLast(String before, String last) {
        return before + "、" + last;
    }

    @Override
    public String listNext(String before, String next) {
        return before + "、" + next;
    }

    @Override
    public String listOr(String before, String last) {
        return before + "または" + last;
    }

    @Override
    public String percent(String number) {
        return number + "%";
    }

    @Override
    public String sentences(String first, String second) {
        return first + second;
    }

    @Override
    public String unit(String unit) {
        return (unit.equals("in") ? "インチ" : unit.equals("yd") ? "ヤード" : unit.equals("m") ? "m" : unit.equals("cm") ? "cm" : "mm");
    }
}
