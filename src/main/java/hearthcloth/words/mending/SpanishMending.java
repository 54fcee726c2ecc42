package hearthcloth.words.mending;

/** The room of mending in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishMending implements MendingWords {

    @Override
    public String bar(String bar) {
        return "la tira " + bar;
    }

    @Override
    public String deedAgain(String what) {
        return (what.equals("small") ? "plan nuevo tras un error" : "plan nuevo de lo que falta por cortar");
    }

    @Override
    public String deedAllCut(String cloth) {
        return cloth + " cortado";
    }

    @Override
    public String deedCut(int count, String cut, String made, String piece) {
        return (made.equals("yes") ? "" : "todavía no: ") + (count == 1 ? "corte " + cut + " del trozo " + piece : "cortes del trozo " + piece);
    }

    @Override
    public String deedLeft(String bar, String wrong) {
        return "tira " + bar + " dejada " + (wrong.equals("FACE") ? "con la otra cara arriba" : "en el otro lado de la labor");
    }

    @Override
    public String deedMistake(String piece) {
        return "un error en el trozo " + piece;
    }

    @Override
    public String deedSewn(String name, String size, String what) {
        return (what.equals("bar") ? "tira " + name + " cosida" : what.equals("measured") ? "tira " + name + " cosida, " + size : "paso " + name + " cosido");
    }

    @Override
    public String deedShort(String bar, String way) {
        return "tira " + bar + " demasiado corta: " + (way.equals("JOINED_STRIP") ? "unir una tirita" : way.equals("ANEW") ? "hacer la tira de nuevo" : way.equals("PIECED") ? "hacer la tira de nuevo, unida" : "usarla tal como está y recortar la labor");
    }

    @Override
    public String deedUnpicked(int more, String name, String what) {
        return "descosido: " + (what.equals("bar") ? "tira " + name : "paso " + name) + (more == 0 ? "" : " y " + more + " más");
    }

    @Override
    public String hearth() {
        return "la pieza central";
    }

    @Override
    public String noBar(String bar) {
        return "La tira " + bar + " no puede ser tan corta; mídala otra vez, con los extremos sin rematar.";
    }

    @Override
    public String noLarge() {
        return "Tiene el tamaño previsto; recorte lo que sobra y siga.";
    }

    @Override
    public String noLeft() {
        return "No queda bastante tela para eso; elija otra manera.";
    }

    @Override
    public String noNothing() {
        return "Una pieza de nada no sirve; mida lo que hay, o tome otro trozo.";
    }

    @Override
    public String noShort(String bar) {
        return "La tira " + bar + " es bastante larga: cósala y recorte lo que sobra.";
    }

    @Override
    public String noWork() {
        return "La labor no puede ser tan pequeña; mídala otra vez, con los bordes sin rematar.";
    }

    @Override
    public String piece(String fabric, String piece, String size) {
        return "el trozo " + piece + " (" + fabric + ", " + size + ")";
    }

    @Override
    public String shortAnew(String bar, String pieces) {
        return "Cortar otra vez la tira " + bar + ", de " + pieces + ".";
    }

    @Override
    public String shortBack() {
        return "Lo que se había cortado para ella vuelve a la lista de telas.";
    }

    @Override
    public String shortPieced(String bar, String pieces) {
        return "La tira " + bar + " se une de " + pieces + ".";
    }

    @Override
    public String shortStrip(String bar, String piece, String size) {
        return "Unir a la tira " + bar + " una tirita cortada a " + size + ", de " + piece + ".";
    }

    @Override
    public String shortTrim(String bar, String from, String less, String to, String way) {
        return "Recortar la labor cosida " + less + " por " + from + ", a " + to + " " + (way.equals("high") ? "de alto" : "de ancho") + ", y coser la tira " + bar + " tal como está.";
    }

    @Override
    public String small(String by, String size, String what) {
        return what + " es demasiado pequeña en " + by + ": mide " + size + ".";
    }

    @Override
    public String smallAcross(String length) {
        return length + " a lo ancho";
    }

    @Override
    public String smallAlong(String length) {
        return length + " a lo largo";
    }

    @Override
    public String wayAgain(String pieces, String what) {
        return "Cortar otra vez " + what + ", de " + pieces + ".";
    }

    @Override
    public String wayBars(String bars, int count, String width) {
        return (count == 1 ? "la tira " + bars + " a " + width + " de ancho" : "las tiras " + bars + " a " + width + " de ancho");
    }

    @Override
    public String wayFabric(String now, String was, String what) {
        return what + " es entonces de " + now + ", no de " + was + ".";
    }

    @Override
    public String waySmaller(String size, String what) {
        return "Usar " + what + " tal como está; el paño medirá " + size + ".";
    }

    @Override
    public String wayStrip(String pieces, String what) {
        return "Unir una tirita a " + what + ", de " + pieces + ".";
    }

    @Override
    public String wayWider(String bars, String size, String what) {
        return "Usar " + what + " tal como está, y cortar " + bars + "; el paño sigue midiendo " + size + ".";
    }
}
