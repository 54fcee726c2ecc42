package hearthcloth.words.keeping;

/** The room of keeping in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishKeeping implements KeepingWords {

    @Override
    public String aboutAlsoWith(String before, String who) {
        return before + "; con " + who;
    }

    @Override
    public String aboutAlsoWrapped(String before, String what) {
        return before + "; envolvió: " + what;
    }

    @Override
    public String aboutMade(String day) {
        return "Hecho: " + day;
    }

    @Override
    public String aboutWith(String who) {
        return "Con " + who;
    }

    @Override
    public String aboutWrapped(String what) {
        return "Envolvió: " + what;
    }

    @Override
    public String archiveAdd() {
        return "Conservar lo que hay y añadir el archivo";
    }

    @Override
    public String archiveBring() {
        return "Traer";
    }

    @Override
    public String archiveBrought(int cloths, int pieces) {
        return "Se incorporaron " + (pieces == 1 ? "" + pieces + " trozo" : "" + pieces + " trozos") + " y " + (cloths == 1 ? "" + cloths + " paño" : "" + cloths + " paños") + ". Deshacer en las telas los saca otra vez.";
    }

    @Override
    public String archiveHow() {
        return "Lo que ya está aquí";
    }

    @Override
    public String archiveIn() {
        return "Un archivo que traer";
    }

    @Override
    public String archiveInstead() {
        return "Sustituir lo que hay: las telas y los paños que también tiene el archivo";
    }

    @Override
    public String archiveOut() {
        return "Sacarlo todo";
    }

    @Override
    public String archiveTitle() {
        return "Todo en un archivo";
    }

    @Override
    public String archiveWhat() {
        return "Telas, imágenes de telas y paños, en un archivo zip. Guarde una copia en lugar seguro o llévelo a otro equipo.";
    }

    @Override
    public String beside() {
        return "Lado a lado";
    }

    @Override
    public String cardLacking() {
        return "No tiene bastante tela para él.";
    }

    @Override
    public String cardMore() {
        return "Guía, archivos, nombre";
    }

    @Override
    public String cardPhotograph() {
        return "Hacerle una foto";
    }

    @Override
    public String cardSlip() {
        return "Su ficha";
    }

    @Override
    public String cardUsed(String stage, String used) {
        return stage + ", " + used;
    }

    @Override
    public String classes() {
        return "Una clase";
    }

    @Override
    public String compareBack() {
        return "Volver a sus paños";
    }

    @Override
    public String compareFew() {
        return "Elija dos paños o más para verlos lado a lado.";
    }

    @Override
    public String copy() {
        return "Diseño nuevo a partir de él";
    }

    @Override
    public String find() {
        return "Buscar un paño";
    }

    @Override
    public String findExample() {
        return "nombre, tela, regalo o persona";
    }

    @Override
    public String findGo() {
        return "Buscar";
    }

    @Override
    public String first() {
        return "Aquí irá el primero.";
    }

    @Override
    public String found(String all, String found, String sought) {
        return found + " de " + all + " para «" + sought + "».";
    }

    @Override
    public String ideaGo() {
        return "Ideas, sacar y traer";
    }

    @Override
    public String ideaTitle() {
        return "Una idea en un archivo";
    }

    @Override
    public String ideaWhat() {
        return "Pase un paño como reglas que salen distintas con cada montón de telas, o traiga lo que le han enviado.";
    }

    @Override
    public String kits() {
        return "Kits y regalos";
    }

    @Override
    public String labelRemoved(String name) {
        return name + " quitado";
    }

    @Override
    public String name() {
        return "Nombre";
    }

    @Override
    public String open(String name) {
        return "Abrir " + name;
    }

    @Override
    public String redo(String deed) {
        return "Rehacer: " + deed;
    }

    @Override
    public String remove() {
        return "Quitar";
    }

    @Override
    public String removeSure(String name) {
        return "¿Quitar " + name + " para siempre?";
    }

    @Override
    public String removed(String name) {
        return name + " se ha quitado. Deshacer lo recupera.";
    }

    @Override
    public String rename() {
        return "Cambiar el nombre";
    }

    @Override
    public String see() {
        return "Ver qué se puede hacer con sus telas";
    }

    @Override
    public String showAll() {
        return "Mostrar todos";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("DESIGNED") ? "diseñado" : stage.equals("CUT") ? "cortado" : stage.equals("RECUT") ? "cortado, salvo lo pedido después" : "cosido");
    }

    @Override
    public String take(String what) {
        return (what.equals("cloth") ? "Paño" : what.equals("cut") ? "Cortar" : what.equals("sew") ? "Coser" : what.equals("guideA4") ? "Guía, A4" : what.equals("guideLetter") ? "Guía, carta" : what.equals("guide") ? "Guía" : what.equals("class") ? "Guía para una clase" : what.equals("slips") ? "Etiquetas de las piezas" : what.equals("front") ? "Dibujo del anverso" : what.equals("back") ? "Dibujo del reverso" : what.equals("plan") ? "Archivo del plan" : what.equals("kit") ? "Archivo del kit" : "Pasar la idea");
    }

    @Override
    public String tick() {
        return "Marque dos o más.";
    }

    @Override
    public String title() {
        return "Lo que ha hecho";
    }

    @Override
    public String undo(String deed) {
        return "Deshacer: " + deed;
    }

    @Override
    public String useFor(String who) {
        return "para " + who;
    }

    @Override
    public String used(int n) {
        return (n == 1 ? "usado " + n + " vez" : "usado " + n + " veces");
    }

    @Override
    public String usedLast(String last, int n) {
        return (n == 1 ? "usado " + n + " vez: " + last : "usado " + n + " veces, la última: " + last);
    }
}
