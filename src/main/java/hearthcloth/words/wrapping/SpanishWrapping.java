package hearthcloth.words.wrapping;

/** The room of wrapping in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishWrapping implements WrappingWords {

    @Override
    public String labelKeep() {
        return "lo que envuelve";
    }

    @Override
    public String showsCaption(String what) {
        return (what.equals("patch") ? "Dónde queda la tela de cada pieza, en tanto por ciento de la pieza" : "Dónde queda cada tela, en tanto por ciento de la tela");
    }

    @Override
    public String showsEnds() {
        return "Nudo y puntas";
    }

    @Override
    public String showsFrom() {
        return "Se ve desde";
    }

    @Override
    public String showsHidden() {
        return "Doblado dentro";
    }

    @Override
    public String showsName(String what) {
        return (what.equals("patch") ? "Pieza" : "Tela");
    }

    @Override
    public String showsOf() {
        return "De lo que se ve";
    }

    @Override
    public String showsSides() {
        return "A los lados";
    }

    @Override
    public String showsTop() {
        return "Arriba";
    }

    @Override
    public String showsUnder() {
        return "Debajo";
    }

    @Override
    public String showsView(String view) {
        return (view.equals("ABOVE") ? "arriba" : view.equals("FRONT") ? "delante" : view.equals("BACK") ? "detrás" : view.equals("RIGHT") ? "la derecha" : view.equals("LEFT") ? "la izquierda" : view.equals("CORNER") ? "una esquina" : view.equals("UNDERNEATH") ? "abajo" : "ningún sitio");
    }

    @Override
    public String showsWhere(String what) {
        return (what.equals("patch") ? "Dónde queda cada pieza" : "Dónde queda cada tela");
    }

    @Override
    public String tieCare() {
        return "Cuidado";
    }

    @Override
    public String tieFits(String fits) {
        return (fits.equals("yes") ? "sirve" : "pequeño");
    }

    @Override
    public String tieKnot() {
        return "El nudo: llano, no de abuela";
    }

    @Override
    public String tieLarge() {
        return "Cómo de grande debe ser el paño";
    }

    @Override
    public String tieLead(String gift, String own, String suited) {
        return "Para: " + suited + "; aquí " + gift + ", dibujado con " + (own.equals("yes") ? "su paño" : "un paño liso") + ". Cada flecha termina donde está ahora la esquina.";
    }

    @Override
    public String tieNone() {
        return "Ese atado no existe aquí.";
    }

    @Override
    public String tieNothing() {
        return "nada de esta forma";
    }

    @Override
    public String tieShort() {
        return "Cuando una esquina no alcanza";
    }

    @Override
    public String tieSold() {
        return "Tamaños en venta";
    }

    @Override
    public String tieSoldFor() {
        return "Se vende para (uso común)";
    }

    @Override
    public String tieSquare() {
        return "de lado, terminado";
    }

    @Override
    public String tieSquareOf() {
        return "Lado";
    }

    @Override
    public String tieThisGift() {
        return "Este regalo";
    }

    @Override
    public String tieTitle(String tie) {
        return tie;
    }

    @Override
    public String tieTitleNamed(String tie, String trade) {
        return tie + ", " + trade;
    }

    @Override
    public String tieUnsuited(String gift, String suited, String tie) {
        return "«" + tie + "» es para: " + suited + ". Elija otro atado para " + gift + ".";
    }

    @Override
    public String tieUpTo() {
        return "Así atado, un regalo de esta forma hasta";
    }

    @Override
    public String tiedAwayExample() {
        return "0; −2 más cerca";
    }

    @Override
    public String tiedBack() {
        return "Volver al paño";
    }

    @Override
    public String tiedByPatch() {
        return "Pieza por pieza";
    }

    @Override
    public String tiedFolds() {
        return "Los dobleces en papel, para recortar y doblar en pequeño";
    }

    @Override
    public String tiedHowTie(String tie) {
        return "Cómo se ata: " + tie;
    }

    @Override
    public String tiedIsFor(String cloth, String gift) {
        return cloth + " es ahora para " + gift + ".";
    }

    @Override
    public String tiedKeep() {
        return "El paño es para esto";
    }

    @Override
    public String tiedLacks() {
        return "Aún no hay bastante tela para este paño, así que no hay nada que atar.";
    }

    @Override
    public String tiedNear() {
        return "Dibujado como se coloca la tela. Cerca del nudo, a una mano más o menos, la tela real se frunce y las puntas caen como quieren.";
    }

    @Override
    public String tiedNone() {
        return "Este paño no sirve para atar ese regalo.";
    }

    @Override
    public String tiedOff() {
        return "El regalo fuera del centro";
    }

    @Override
    public String tiedOffAway(String unit) {
        return "Desde el centro, hacia el fondo, " + unit;
    }

    @Override
    public String tiedOffRight(String unit) {
        return "Desde el centro, a la derecha, " + unit;
    }

    @Override
    public String tiedRightExample() {
        return "0; −2 a la izquierda";
    }

    @Override
    public String tiedShare(String percent) {
        return percent + " %";
    }

    @Override
    public String tiedShow() {
        return "Mostrar";
    }

    @Override
    public String tiedShows() {
        return "Lo que se ve";
    }

    @Override
    public String tiedSides() {
        return "Mirarlo";
    }

    @Override
    public String title(String cloth) {
        return cloth + ", atado";
    }

    @Override
    public String which() {
        return "¿Qué paño va a atar?";
    }
}
