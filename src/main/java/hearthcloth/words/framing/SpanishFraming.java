package hearthcloth.words.framing;

/** The room of framing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishFraming implements FramingWords {

    @Override
    public String begunCuts(int n) {
        return (n == 1 ? "" + n + " corte hecho" : "" + n + " cortes hechos");
    }

    @Override
    public String begunGoCutting() {
        return "Seguir cortando";
    }

    @Override
    public String begunGoOn() {
        return "Seguir";
    }

    @Override
    public String begunGoSewing() {
        return "Seguir cosiendo";
    }

    @Override
    public String begunGoSewingNext(String next) {
        return "Seguir cosiendo: " + next;
    }

    @Override
    public String begunLacks() {
        return "le falta tela";
    }

    @Override
    public String begunLook() {
        return "Verlo";
    }

    @Override
    public String begunPlanned() {
        return "planeado";
    }

    @Override
    public String begunPlannedFor(String gift) {
        return "planeado para " + gift;
    }

    @Override
    public String begunRecut(String seams, String sewn) {
        return sewn + " de " + seams + " costuras hechas; antes hay algo que cortar";
    }

    @Override
    public String begunSewn(String seams, String sewn) {
        return sewn + " de " + seams + " costuras hechas";
    }

    @Override
    public String begunSewnFor(String gift, String seams, String sewn) {
        return sewn + " de " + seams + " costuras hechas, para " + gift;
    }

    @Override
    public String drawerMeasures() {
        return "Regla, papel e idioma";
    }

    @Override
    public String drawerTitle() {
        return "El cajón";
    }

    @Override
    public String field(String field) {
        return (field.equals("name") ? "Nombre" : field.equals("width") ? "Ancho" : field.equals("length") ? "Largo" : field.equals("fabric") ? "Tela" : field.equals("washed") ? "Lavado" : field.equals("at") ? "Cortar a" : field.equals("many") ? "Cuántos" : field.equals("colour") ? "Color" : field.equals("faces") ? "Caras" : field.equals("nap") ? "Pelo" : field.equals("made") ? "Hecho el" : field.equals("wrapped") ? "Envuelto" : "Quién lo tiene");
    }

    @Override
    public String firstAgain() {
        return "Ver otra vez";
    }

    @Override
    public String firstExample() {
        return "Un ejemplo";
    }

    @Override
    public String firstFilm() {
        return "Ejemplo: nueve retales de una cesta se vuelven un paño de doce tiras y se atan alrededor de una caja";
    }

    @Override
    public String firstFour() {
        return "y queda envuelto. Sigue siendo un paño.";
    }

    @Override
    public String firstKinds() {
        return "¿Qué va a envolver?";
    }

    @Override
    public String firstOne() {
        return "Nueve retales de una cesta";
    }

    @Override
    public String firstPrivate() {
        return "Todo se queda en este equipo. No se pide nada a internet.";
    }

    @Override
    public String firstStop() {
        return "Parar";
    }

    @Override
    public String firstThree() {
        return "Doce tiras, una tras otra,";
    }

    @Override
    public String firstTwo() {
        return "y una caja para regalar.";
    }

    @Override
    public String frameBesides() {
        return "Además";
    }

    @Override
    public String frameCopies() {
        return "Copias de seguridad";
    }

    @Override
    public String frameExample() {
        return "Ejemplo";
    }

    @Override
    public String frameExampleAway() {
        return "Quitar el ejemplo";
    }

    @Override
    public String frameExampleIs() {
        return "Este es un ejemplo para probar.";
    }

    @Override
    public String frameExampleNotYours() {
        return "Nada de esto es suyo.";
    }

    @Override
    public String frameGuidelines() {
        return "Pautas";
    }

    @Override
    public String frameHome() {
        return "Hearthcloth, la mesa";
    }

    @Override
    public String frameLeave() {
        return "Salir";
    }

    @Override
    public String framePeople() {
        return "Personas";
    }

    @Override
    public String frameSkip() {
        return "Ir a la página";
    }

    @Override
    public String frameStages() {
        return "Etapas";
    }

    @Override
    public String frameStudio() {
        return "Taller";
    }

    @Override
    public String giftCloth(String size) {
        return "un paño de " + size;
    }

    @Override
    public String giftKind(String shape) {
        return (shape.equals("BOX") ? "Caja" : shape.equals("BOTTLE") ? "Botella" : shape.equals("TWO_BOTTLES") ? "Dos botellas" : shape.equals("ROUND") ? "Bola" : shape.equals("BOOKS") ? "Dos libros" : "Rollo");
    }

    @Override
    public String giftMeasure(String measure) {
        return (measure.equals("long") ? "largo" : measure.equals("wide") ? "ancho" : measure.equals("high") ? "alto" : measure.equals("across") ? "diámetro" : "grueso");
    }

    @Override
    public String giftTied(String gift, String tie) {
        return gift + ", " + tie;
    }

    @Override
    public String handEats(String eats, String n, String spread, String usual) {
        return "Sus costuras se llevan " + eats + " de media (mediana de " + n + "); la mitad se quedó a menos de " + spread + " de ahí. La costura usual se lleva " + usual + ".";
    }

    @Override
    public String handFrom() {
        return "De qué se ha aprendido";
    }

    @Override
    public String handIsOwn() {
        return "Los paños nuevos se planean con su propia costura.";
    }

    @Override
    public String handIsUsual() {
        return "Los paños nuevos se planean con la costura usual.";
    }

    @Override
    public String handOwn() {
        return "Planear paños nuevos con esta costura";
    }

    @Override
    public String handTitle() {
        return "Su propia mano";
    }

    @Override
    public String handUnknown(String n) {
        return "Cuando se hayan medido " + n + " costuras en la página Coser, aquí dirá cuánto se llevan de verdad.";
    }

    @Override
    public String handUsual() {
        return "Volver a planear con la costura usual";
    }

    @Override
    public String homeAll(String n) {
        return "Todos (" + n + ")";
    }

    @Override
    public String homeEmpty() {
        return "Su mesa está vacía. ¿Qué hay en su cesta?";
    }

    @Override
    public String homeFirst() {
        return "Aquí irá el primero";
    }

    @Override
    public String homeMade() {
        return "Hechos";
    }

    @Override
    public String homeMaking() {
        return "En marcha";
    }

    @Override
    public String homeNothing() {
        return "Nada todavía. Diga qué va a envolver y vea qué se puede hacer con sus telas.";
    }

    @Override
    public String homeOnTable() {
        return "En la mesa";
    }

    @Override
    public String homePhotograph() {
        return "Hacerle una foto";
    }

    @Override
    public String homePieces(int n) {
        return (n == 1 ? "" + n + " trozo en la mesa" : "" + n + " trozos en la mesa");
    }

    @Override
    public String homeTitle() {
        return "¿Qué va a envolver?";
    }

    @Override
    public String key(String key) {
        return (key.equals("tab") ? "Tab" : key.equals("enter") ? "Intro" : key.equals("space") ? "Espacio" : key.equals("pageDown") ? "Av Pág" : key.equals("pageUp") ? "Re Pág" : "Esc");
    }

    @Override
    public String keysArrows() {
        return "de trozo en trozo en la mesa, de tira en tira en el paño; giran el regalo atado";
    }

    @Override
    public String keysEnter() {
        return "la pulsa";
    }

    @Override
    public String keysEscape() {
        return "cierra lo que está abierto";
    }

    @Override
    public String keysNumbers() {
        return "las cuatro vistas de un paño; un paño de la galería";
    }

    @Override
    public String keysPages() {
        return "Hecho y Atrás al cortar y coser; un pedal envía estas teclas";
    }

    @Override
    public String keysPlusMinus() {
        return "más cerca y más lejos, en la mesa y alrededor del regalo atado";
    }

    @Override
    public String keysSingle() {
        return "Las teclas de una sola letra o signo funcionan en este aparato";
    }

    @Override
    public String keysSpace() {
        return "elige un trozo o una tira; al cortar y coser: Hecho";
    }

    @Override
    public String keysTab() {
        return "pasar de una cosa a la siguiente";
    }

    @Override
    public String keysTitle() {
        return "Teclas";
    }

    @Override
    public String keysU() {
        return "deshace lo último";
    }

    @Override
    public String measureA4() {
        return "A4";
    }

    @Override
    public String measureEighths() {
        return "pulgadas, hasta ⅛";
    }

    @Override
    public String measureKeep() {
        return "Guardar";
    }

    @Override
    public String measureLanguage() {
        return "Su idioma";
    }

    @Override
    public String measureLetter() {
        return "Carta";
    }

    @Override
    public String measureMillimetres() {
        return "centímetros, hasta 1 mm";
    }

    @Override
    public String measurePaper() {
        return "El papel de su impresora";
    }

    @Override
    public String measureQuarters() {
        return "pulgadas, hasta ¼";
    }

    @Override
    public String measureRuler() {
        return "La regla que usa";
    }

    @Override
    public String measureSixteenths() {
        return "pulgadas, hasta 1⁄16";
    }

    @Override
    public String safeArchive() {
        return "Todo en un archivo";
    }

    @Override
    public String safeArchiveHow() {
        return "telas y paños, para guardarlos en otro sitio";
    }

    @Override
    public String safeClose() {
        return "Cerrar el taller";
    }

    @Override
    public String safeCloseHow() {
        return "no se pierde nada";
    }

    @Override
    public String safeCopies() {
        return "copias enteras de su trabajo, hechas cada día, para volver a ellas";
    }

    @Override
    public String safeDevices() {
        return "Esta tableta y un teléfono";
    }

    @Override
    public String safeDevicesHow() {
        return "usar el taller también en otra pantalla";
    }

    @Override
    public String safeTitle() {
        return "A salvo y a mano";
    }

    @Override
    public String scriptKeeping() {
        return "Guardando …";
    }

    @Override
    public String scriptKeepingMore() {
        return "Guardando; quedan %d en espera.";
    }

    @Override
    public String scriptKeepingOne() {
        return "Guardando; queda otro en espera.";
    }

    @Override
    public String scriptSilent() {
        return "El taller no responde. Inicie Hearthcloth otra vez; no se ha perdido nada de lo guardado.";
    }

    @Override
    public String stage(String stage) {
        return (stage.equals("Gift") ? "Regalo" : stage.equals("Stash") ? "Telas" : stage.equals("Cloth") ? "Paño" : stage.equals("Cut") ? "Cortar" : stage.equals("Sew") ? "Coser" : stage.equals("Tie") ? "Atar" : stage.equals("Made") ? "Hechos" : "Cajón");
    }

    @Override
    public String staleCloth(String name) {
        return "Mientras tanto, " + name + " ha cambiado en otra ventana. Aquí no se ha cambiado nada.";
    }

    @Override
    public String staleTitle() {
        return "Cambiado en dos ventanas";
    }

    @Override
    public String threadsColour(String line, String name) {
        return "No se conoce el color del hilo «" + line + "»; escríbalo detrás, por ejemplo " + name + " #8a9a5b.";
    }

    @Override
    public String threadsKept(int n) {
        return (n == 1 ? "Se ha guardado un hilo." : "Se han guardado " + n + " hilos.");
    }

    @Override
    public String threadsLines() {
        return "Uno por línea: su nombre, y su color si el nombre no lo dice (azul viejo #27344d)";
    }

    @Override
    public String threadsMany(String longest, String most) {
        return "Escriba como mucho " + most + " hilos de hasta " + longest + " letras cada uno.";
    }

    @Override
    public String threadsNeed(String all, String bobbin) {
        return "Hilo: " + all + " en total, con los cabos y un 15 % más; de ello " + bobbin + " en la canilla.";
    }

    @Override
    public String threadsSave() {
        return "Guardar";
    }

    @Override
    public String threadsSeam(String least, String most) {
        return "En esta costura, " + least + " se ve menos y " + most + " más.";
    }

    @Override
    public String threadsSeamOne(String least) {
        return "En esta costura, " + least + " se ve menos.";
    }

    @Override
    public String threadsSuits(String least, String most) {
        return "De sus hilos, " + least + " es el que menos se nota en estas telas y " + most + " el que más.";
    }

    @Override
    public String threadsSuitsOne(String least) {
        return "De sus hilos, " + least + " es el que menos se nota en estas telas.";
    }

    @Override
    public String threadsTitle() {
        return "Sus hilos";
    }

    @Override
    public String threadsUsed() {
        return "La página Coser dice cuál se nota menos en un paño y cuál más.";
    }

    @Override
    public String troubleColour(String written) {
        return "«" + written + "» no es un color conocido; escriba por ejemplo verde salvia o #8a9a5b, o déjelo en blanco.";
    }

    @Override
    public String troubleComeIn() {
        return "Entre primero con su nombre y su contraseña.";
    }

    @Override
    public String troubleGone() {
        return "Cargue la página para que se escriba de nuevo.";
    }

    @Override
    public String troubleInside() {
        return "Algo ha fallido en el taller. No se ha cambiado nada; inténtelo otra vez.";
    }

    @Override
    public String troubleLarge(String most) {
        return "Este archivo pasa de " + most + " MB; elija uno más pequeño.";
    }

    @Override
    public String troubleNoFile() {
        return "No se ha elegido ningún archivo, o está vacío.";
    }

    @Override
    public String troubleNotWhole() {
        return "El archivo no ha llegado entero; envíelo otra vez.";
    }

    @Override
    public String troubleNothing() {
        return "No hay nada en esta dirección.";
    }

    @Override
    public String troublePlain() {
        return "No ha funcionado.";
    }

    @Override
    public String troubleTitle() {
        return "No ha funcionado";
    }

    @Override
    public String troubleUnread() {
        return "No se puede leer lo enviado; recargue la página y envíelo otra vez.";
    }

    @Override
    public String unitCentimetres() {
        return "Mido en centímetros";
    }

    @Override
    public String unitInches() {
        return "Mido en pulgadas";
    }

    @Override
    public String wayExample() {
        return "Probar el ejemplo";
    }

    @Override
    public String wayExampleHow() {
        return "Sesenta retales y un paño; se quitan con un clic.";
    }

    @Override
    public String wayGift() {
        return "Empezar por el regalo";
    }

    @Override
    public String wayGiftHow() {
        return "y ver de qué tamaño debe ser el paño";
    }

    @Override
    public String wayPhotograph() {
        return "Fotografiarlas";
    }

    @Override
    public String wayPhotographHow() {
        return "extendidas junto a una hoja de papel";
    }

    @Override
    public String waySay() {
        return "Describir un trozo";
    }

    @Override
    public String waySayHow() {
        return "«12 estampado verde 10 x 20»; también muchas líneas a la vez";
    }
}
