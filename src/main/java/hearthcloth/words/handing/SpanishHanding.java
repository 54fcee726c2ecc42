package hearthcloth.words.handing;

/** The room of handing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishHanding implements HandingWords {

    @Override
    public String asScraps() {
        return "Sus trozos no dan pieza central con tiras; los retales se juntan tal como están.";
    }

    @Override
    public String by() {
        return "Quién la pasa (si quiere)";
    }

    @Override
    public String choice(String choice) {
        return (choice.equals("kept") ? "la idea: como en este paño" : choice.equals("open") ? "solo de aquel día: según las telas" : choice.equals("share") ? "la idea: su parte del ancho" : choice.equals("square") ? "el cuadrado más grande que haya" : choice.equals("strips") ? "tan anchas como las tiras que haya" : choice.equals("any") ? "cualquier tela" : choice.equals("favourite") ? "una tela favorita" : choice.equals("lightest") ? "la tela más clara" : "la tela más oscura");
    }

    @Override
    public String classAfter(String cloth, String teacher) {
        return cloth + " según " + teacher;
    }

    @Override
    public String classAway() {
        return "Retirarlo";
    }

    @Override
    public String classAwayAbout(String cloth) {
        return "Retirar " + cloth;
    }

    @Override
    public String classAwayAsk(String cloth) {
        return "¿Retirar " + cloth + "?";
    }

    @Override
    public String classFitAbout(String cloth) {
        return "Ajustar " + cloth + " a mis telas";
    }

    @Override
    public String classFits() {
        return "Se ajusta a sus telas. Ya es suyo: cambie lo que quiera.";
    }

    @Override
    public String classFrom(String size, String teacher) {
        return size + ", de " + teacher;
    }

    @Override
    public String classHand() {
        return "Repartir un paño a todos";
    }

    @Override
    public String classHandOut() {
        return "Repartir";
    }

    @Override
    public String classHanded(String cloth) {
        return cloth + " se ha repartido a todos.";
    }

    @Override
    public String classIsAway() {
        return "Retirada. Los paños hechos según ella se quedan con quienes los hicieron.";
    }

    @Override
    public String classKeepFirst() {
        return "Guarde primero un paño propio; después podrá repartirlo.";
    }

    @Override
    public String classLacks() {
        return "No hay bastante tela; la página dice qué falta.";
    }

    @Override
    public String classLead() {
        return "Tamaños, orden y confección son de su profesor; la tela es suya.";
    }

    @Override
    public String classNone() {
        return "Aún no se ha repartido ningún paño.";
    }

    @Override
    public String classOne() {
        return "Uno de sus paños";
    }

    @Override
    public String classTitle() {
        return "Guías";
    }

    @Override
    public String classWithdrawn() {
        return "Esta guía se ha retirado.";
    }

    @Override
    public String empty() {
        return "Su lista de telas está vacía; ponga primero lo que tiene.";
    }

    @Override
    public String field(String field) {
        return (field.equals("size") ? "El tamaño" : field.equals("hearth") ? "La pieza central" : field.equals("bars") ? "Las tiras" : field.equals("rounds") ? "Cuántas vueltas" : field.equals("order") ? "El orden" : field.equals("colours") ? "Los colores" : "En el centro");
    }

    @Override
    public String fitsAll() {
        return "Se ajusta a sus telas y cumple todas las reglas. Ya es suyo: cambie lo que quiera.";
    }

    @Override
    public String inFavourite() {
        return "La tela que más le gusta (si la idea la pide)";
    }

    @Override
    public String inFile() {
        return "El archivo";
    }

    @Override
    public String inFit() {
        return "Ajustarla a mis telas";
    }

    @Override
    public String inHow() {
        return "Un archivo de guía, o el plan de un paño, que alguien le envió. Se ajusta a sus telas; si no caben todas las reglas, sale lo más parecido y se dice qué se dobló.";
    }

    @Override
    public String inTitle() {
        return "Traer una idea";
    }

    @Override
    public String is() {
        return "Es";
    }

    @Override
    public String lacks() {
        return "Aún no hay bastante tela para este paño; una idea se toma de uno que se pueda hacer.";
    }

    @Override
    public String lead(String cloth) {
        return "De cada elección en " + cloth + ", diga si es la idea o fue solo de aquel día. Costura y dobladillo van tal cual.";
    }

    @Override
    public String name() {
        return "Nombre de la idea";
    }

    @Override
    public String nearest(String bent, String why) {
        return "Lo más parecido que dan sus telas. " + bent + " Por qué: " + why;
    }

    @Override
    public String noCloth() {
        return "No existe ese paño; puede que se haya quitado.";
    }

    @Override
    public String noneFits(String why) {
        return "Con sus telas aún no sale un paño de esta idea. " + why;
    }

    @Override
    public String outNone() {
        return "Aún no hay ningún paño con pieza central y tiras.";
    }

    @Override
    public String outTitle() {
        return "Pasar uno de los suyos";
    }

    @Override
    public String own(String example) {
        return "o una regla propia, como " + example;
    }

    @Override
    public String refused(String why) {
        return "Este archivo no se puede usar así. " + why;
    }

    @Override
    public String saveFile() {
        return "Guardar como archivo de guía";
    }

    @Override
    public String savePage() {
        return "Guardar como página que cualquiera puede abrir";
    }

    @Override
    public String scraps() {
        return "Un paño de retales es solo de sus retales: solo se pasa un paño con pieza central y tiras.";
    }

    @Override
    public String title() {
        return "Pasar una idea";
    }

    @Override
    public String words() {
        return "Lo que quiere decir de ella";
    }
}
