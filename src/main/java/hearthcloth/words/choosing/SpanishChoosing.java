package hearthcloth.words.choosing;

/** The room of choosing in Spanish. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class SpanishChoosing implements ChoosingWords {

    @Override
    public String chipBars(String bars, String width) {
        return (bars.equals("narrow") ? "estrechas, corte " + width : "anchas, corte " + width);
    }

    @Override
    public String chipKind(String kind) {
        return (kind.equals("hearth") ? "centro:" : kind.equals("show") ? "se ve:" : kind.equals("only") ? "solo:" : kind.equals("without") ? "sin:" : kind.equals("first") ? "primero:" : kind.equals("scheme") ? "colores:" : kind.equals("with") ? "con:" : kind.equals("contrast") ? "contraste:" : kind.equals("bars") ? "tiras:" : "");
    }

    @Override
    public String chipNeeds(String what) {
        return "necesita: " + what;
    }

    @Override
    public String chipNoGift() {
        return "aún no hay regalo";
    }

    @Override
    public String chipNoPiece() {
        return "ningún trozo lo bastante grande";
    }

    @Override
    public String chipNotTogether() {
        return "no se ha encontrado junto con el primero";
    }

    @Override
    public String chipQuick() {
        return "primero las de menos costuras";
    }

    @Override
    public String chooseNone() {
        return "Todavía no hay ningún paño para esto.";
    }

    @Override
    public String chooseSee() {
        return "Ver qué se puede hacer con sus telas";
    }

    @Override
    public String contrast(String contrast) {
        return (contrast.equals("most") ? "con el mayor contraste" : contrast.equals("reads") ? "se lee la cabaña de troncos" : contrast.equals("easy") ? "entre los dos" : contrast.equals("quiet") ? "lo más tranquilo posible" : "se funde en un solo campo");
    }

    @Override
    public String countPieces(int n, String name) {
        return (n == 1 ? "" + name + ", " + n + " trozo" : "" + name + ", " + n + " trozos");
    }

    @Override
    public String foundBack() {
        return "Volver a todos";
    }

    @Override
    public String foundBackFace() {
        return "Reverso";
    }

    @Override
    public String foundBeside() {
        return "Lado a lado";
    }

    @Override
    public String foundCannot() {
        return "Esto no se puede hacer con estas telas.";
    }

    @Override
    public String foundFailed() {
        return "La búsqueda ha tropezado con estas telas. Cambie un deseo y busque otra vez.";
    }

    @Override
    public String foundFigures(int joins, String lost, String patches) {
        return (joins == 0 ? "" + patches + " · sin uniones · " + lost + " perdido" : joins == 1 ? "" + patches + " · " + joins + " unión · " + lost + " perdido" : "" + patches + " · " + joins + " uniones · " + lost + " perdido");
    }

    @Override
    public String foundFiguresFree(String lost, String patches) {
        return patches + " · " + lost + " perdido";
    }

    @Override
    public String foundFront(String size, String title) {
        return "Anverso: " + title + ", " + size;
    }

    @Override
    public String foundGone() {
        return "Esa propuesta ya no está; estas son las de ahora.";
    }

    @Override
    public String foundJoins(String joins) {
        return "Uniones: " + joins + ".";
    }

    @Override
    public String foundKept() {
        return "Guardado entre sus paños.";
    }

    @Override
    public String foundKeptTap() {
        return "Guardado entre sus paños. Toque una tira para cambiarla.";
    }

    @Override
    public String foundLooking() {
        return "Buscando entre sus telas";
    }

    @Override
    public String foundMore() {
        return "Mostrar cuatro más";
    }

    @Override
    public String foundNearest() {
        return "Lo más parecido que se puede hacer es esto.";
    }

    @Override
    public String foundNotYet() {
        return "Aún no se ha encontrado la manera de hacerlo con estas telas.";
    }

    @Override
    public String foundOneScale() {
        return "Dibujados a la misma escala.";
    }

    @Override
    public String foundPatches(int n) {
        return (n == 1 ? "" + n + " pieza" : "" + n + " piezas");
    }

    @Override
    public String foundSoFar(int n) {
        return (n == 0 ? "Buscando." : "" + n + " por ahora, se sigue buscando.");
    }

    @Override
    public String foundStop() {
        return "Dejar de buscar";
    }

    @Override
    public String foundStopped() {
        return "Detenido; se muestra lo mejor hasta ahora.";
    }

    @Override
    public String foundTake() {
        return "Elegir este";
    }

    @Override
    public String foundTakeNamed(String title) {
        return "Elegir " + title;
    }

    @Override
    public String galleryAddWish() {
        return "+ deseo";
    }

    @Override
    public String galleryChange() {
        return "Cambiar";
    }

    @Override
    public String galleryDropWishes() {
        return "Empezar sin ellos";
    }

    @Override
    public String galleryEmpty() {
        return "Ponga algo en la mesa";
    }

    @Override
    public String galleryEmptySays() {
        return "Los paños se hacen con sus propios trozos, y todavía no hay ninguno.";
    }

    @Override
    public String galleryFor(String gift) {
        return "para " + gift + ".";
    }

    @Override
    public String galleryKeepWishes() {
        return "Conservar estos deseos";
    }

    @Override
    public String galleryKept() {
        return "Paños guardados";
    }

    @Override
    public String galleryLarge() {
        return "tan grande como den las telas.";
    }

    @Override
    public String galleryNoneLeft() {
        return "Sus deseos no dejan ningún trozo. Quite uno de ellos.";
    }

    @Override
    public String gallerySayGift() {
        return "Decir qué va a envolver";
    }

    @Override
    public String gallerySpent() {
        return "Todos los trozos están reservados";
    }

    @Override
    public String galleryTakeBack(String kind, String wish) {
        return "Quitar: " + kind + " " + wish;
    }

    @Override
    public String galleryTitle() {
        return "Lo que se puede hacer con sus telas";
    }

    @Override
    public String galleryWaiting(String gift) {
        return "Tenía deseos para " + gift + ". ¿Valen también para este?";
    }

    @Override
    public String galleryWish() {
        return "Sus deseos";
    }

    @Override
    public String giftCloth() {
        return "Sé el paño, no el regalo";
    }

    @Override
    public String giftClothExample(String unit) {
        return (unit.equals("metric") ? "90 o 90 x 70" : "38 1/2 o 38 x 30");
    }

    @Override
    public String giftClothSize(String unit) {
        return "Su tamaño, " + unit;
    }

    @Override
    public String giftHow() {
        return "¿Cómo lo mido?";
    }

    @Override
    public String giftHowSays(String unit) {
        return "Mida la cosa como va a estar puesta: el lado más largo, el lado cruzado y la altura. Mida por encima de asas, tapas y lazos. Lo blando se mide apretado como se vaya a atar. " + (unit.equals("metric") ? "Escriba 30 o 30,5." : "Escriba 12, 12 1/2 o 12,5; también centímetros, como 30 cm.");
    }

    @Override
    public String giftKinds() {
        return "Tipo de regalo";
    }

    @Override
    public String giftPlanSize() {
        return "Planear este tamaño";
    }

    @Override
    public String giftRuler() {
        return "Su regla";
    }

    @Override
    public String giftShow() {
        return "Mostrar";
    }

    @Override
    public String giftType() {
        return "Escriba en el dibujo. Sirve una fracción o un decimal.";
    }

    @Override
    public String giftWhatTies() {
        return "¿Qué se puede atar?";
    }

    @Override
    public String heldKind() {
        return "Tipo de cosa";
    }

    @Override
    public String heldLargest() {
        return "Lo más grande que ata";
    }

    @Override
    public String heldSmall() {
        return "demasiado pequeño para este atado";
    }

    @Override
    public String heldTie() {
        return "Atado";
    }

    @Override
    public String heldTitle() {
        return "Qué se puede atar con el paño";
    }

    @Override
    public String leftAside(int n) {
        return (n == 1 ? "" + n + " trozo apartado" : "" + n + " trozos apartados");
    }

    @Override
    public String leftCloth(String cloth, int n) {
        return (n == 1 ? "" + n + " trozo reservado para " + cloth : "" + n + " trozos reservados para " + cloth);
    }

    @Override
    public String leftMore(String before, String next) {
        return before + "; " + next;
    }

    @Override
    public String leftOut(String what) {
        return "Se deja fuera: " + what + ".";
    }

    @Override
    public String leftShared(String what) {
        return "Se cuenta también con: " + what + ".";
    }

    @Override
    public String leftUnuse() {
        return "Dejarlos fuera";
    }

    @Override
    public String leftUse() {
        return "Contar también con ellos";
    }

    @Override
    public String lovedFile() {
        return "Un jardín, una pared: PNG o JPEG. Solo se guardan sus colores";
    }

    @Override
    public String lovedFind() {
        return "Buscar mis telas más cercanas";
    }

    @Override
    public String lovedList() {
        return "Los colores de su imagen y las telas suyas más cercanas";
    }

    @Override
    public String lovedNone() {
        return "Ninguna de sus telas se acerca a los colores de esta imagen; se puede usar cualquiera.";
    }

    @Override
    public String lovedNothing() {
        return "nada parecido";
    }

    @Override
    public String lovedTitle() {
        return "Los colores de una imagen que le gusta";
    }

    @Override
    public String nameNumber(String n, String title) {
        return title + " " + n;
    }

    @Override
    public String nameOf(String hearth, String most, String scheme) {
        return (scheme.equals("HALVES") ? "" + hearth + ", mitad claro, mitad oscuro" : scheme.equals("ROUNDS") ? "Anillos alrededor de " + hearth : scheme.equals("TURNS") ? "Claro y oscuro alrededor de " + hearth : scheme.equals("FIELD") ? "" + hearth + " en un campo de " + most : scheme.equals("SPIRAL") ? "Una espiral desde " + hearth : scheme.equals("SCATTERED") ? "" + hearth + " entre muchas telas" : scheme.equals("GRADED") ? "" + hearth + " hacia el anochecer" : scheme.equals("FRAMES") ? "" + hearth + " en marcos de " + most : scheme.equals("ACCENT") ? "" + hearth + " y un retal vivo" : scheme.equals("OUTWARDS") ? "" + hearth + " en el centro, lo mejor por fuera" : "" + most + " alrededor de " + hearth);
    }

    @Override
    public String nameSeams(int n, String title) {
        return (n == 1 ? "" + title + ", " + n + " costura" : "" + title + ", " + n + " costuras");
    }

    @Override
    public String tiesCannot(String most) {
        return "más que sus trozos: como mucho " + most + " por lado";
    }

    @Override
    public String tiesFinished(String size, String tie) {
        return size + " por lado, terminado; " + tie + ".";
    }

    @Override
    public String tiesGo() {
        return "¿Qué se puede hacer con mis telas?";
    }

    @Override
    public String tiesJust() {
        return "Muéstreme algo";
    }

    @Override
    public String tiesLaid() {
        return "Cómo se pone sobre el paño";
    }

    @Override
    public String tiesNote(String tie) {
        return (tie.equals("FOUR_CORNER") ? "para cosas pesadas" : tie.equals("EDGE_ALONG_EDGE") ? "sobre un paño grande" : tie.equals("ERRAND") ? "para llevar en la mano" : tie.equals("FLAT") ? "sin nudo" : tie.equals("TWO_KNOT") ? "para lo largo" : tie.equals("ONE_BOTTLE") ? "de pie" : tie.equals("TWO_BOTTLES") ? "una junto a otra" : tie.equals("ROUND") ? "para lo redondo" : tie.equals("BOOKS") ? "para dos iguales" : "tumbado");
    }

    @Override
    public String tiesRange(String least, String most) {
        return least + " con puntas cortas, " + most + " con largas; cerca de niños, llamas o máquinas, dejarlas cortas.";
    }

    @Override
    public String tiesSee() {
        return "Verlo atado, paso a paso";
    }

    @Override
    public String tiesSquare(String size) {
        return size + " por lado";
    }

    @Override
    public String tiesTheirs() {
        return "Elija por mí";
    }

    @Override
    public String tiesTheirsNote() {
        return "muestra más tela";
    }

    @Override
    public String tiesTitle() {
        return "¿Cómo se va a atar?";
    }

    @Override
    public String tiesUnsized() {
        return "Escriba sus medidas en el dibujo; cada atado dirá entonces qué tamaño de paño necesita.";
    }

    @Override
    public String way(String way) {
        return (way.equals("free") ? "retales tal como son" : way.equals("among") ? "una cabaña de troncos entre retales" : way.equals("two") ? "cuatro cabañas de troncos pequeñas" : way.equals("three") ? "nueve cabañas de troncos pequeñas" : way.equals("four") ? "dieciséis cabañas de troncos pequeñas" : "una pieza central y tiras alrededor");
    }

    @Override
    public String wishAgain() {
        return "Buscar otra vez";
    }

    @Override
    public String wishAlso() {
        return "También lo reservado para otro paño";
    }

    @Override
    public String wishAny() {
        return "cualquiera";
    }

    @Override
    public String wishBands() {
        return "Bandas de borde a borde";
    }

    @Override
    public String wishBandsPick(String way) {
        return (way.equals("across") ? "a lo ancho de la tela" : way.equals("down") ? "a lo alto de la tela" : "como salga");
    }

    @Override
    public String wishBarWidths(String unit) {
        return "Tiras, cortadas, " + unit;
    }

    @Override
    public String wishBars() {
        return "Tiras y costuras";
    }

    @Override
    public String wishBefore() {
        return "el paño anterior";
    }

    @Override
    public String wishColours() {
        return "Colores";
    }

    @Override
    public String wishContrast() {
        return "Contraste";
    }

    @Override
    public String wishContrastPick(String contrast) {
        return (contrast.equals("most") ? "Con el mayor contraste" : contrast.equals("reads") ? "Se lee la cabaña de troncos" : contrast.equals("easy") ? "Entre los dos" : contrast.equals("quiet") ? "Lo más tranquilo posible" : "Se funde en un solo campo");
    }

    @Override
    public String wishCutting() {
        return "Cortar un retal en dos";
    }

    @Override
    public String wishCuttingPick(String rule) {
        return (rule.equals("as_they_are") ? "nunca; solo se recortan los bordes" : rule.equals("cut") ? "donde ayude" : "ambas cosas");
    }

    @Override
    public String wishExact() {
        return "Tamaños, orden, cómo se compone";
    }

    @Override
    public String wishGood() {
        return "Sus telas se prestan a";
    }

    @Override
    public String wishGoodWhy(String fabric, String kind) {
        return (kind.equals("HALVES") ? "sus claros y sus oscuros se distinguen bien" : kind.equals("SPIRAL") ? "sus claros y sus oscuros se distinguen bien" : kind.equals("TURNS") ? "sus claros y sus oscuros se distinguen bien" : kind.equals("GRADED") ? "sus telas van de claro a oscuro en pasos iguales" : kind.equals("ACCENT") ? "" + fabric + " es más viva que todas las demás" : kind.equals("SCATTERED") ? "tiene muchas telas y ninguna predomina" : kind.equals("FIELD") ? "la mitad o más de la lista es " + fabric : kind.equals("FRAMES") ? "dos telas, una claramente más clara, son casi todo" : "hay bastante de varias telas para una vuelta cada una");
    }

    @Override
    public String wishHeading(String what) {
        return (what.equals("hearth") ? "La pieza central de" : what.equals("show") ? "Se ve al atar" : "Sin");
    }

    @Override
    public String wishHearth(String unit) {
        return "Pieza central, cortada, " + unit;
    }

    @Override
    public String wishMiddle() {
        return "En el centro, sin cortar";
    }

    @Override
    public String wishMixed() {
        return "Mezclado con";
    }

    @Override
    public String wishMostTrim(String unit) {
        return "Recortar como mucho de una pieza, " + unit;
    }

    @Override
    public String wishNarrow() {
        return "Tiras estrechas";
    }

    @Override
    public String wishOpen() {
        return "¿Qué puedo dejar abierto?";
    }

    @Override
    public String wishOpenSays() {
        return "Todo. La pieza central es el cuadrado del medio, las tiras la rodean, una vuelta es una tira por lado. Lo que deje vacío lo deciden las telas. Se pueden poner varios anchos de tira, del centro hacia fuera: 3, 4, 5.";
    }

    @Override
    public String wishOrder() {
        return "Orden";
    }

    @Override
    public String wishPatches() {
        return "Retazos";
    }

    @Override
    public String wishPatchesPick(String sizes) {
        return (sizes.equals("mixed") ? "grandes y pequeños juntos" : sizes.equals("even") ? "lo más iguales posible" : "cualquiera");
    }

    @Override
    public String wishPick(String fabric, String what) {
        return (what.equals("hearth") ? "La pieza central de " + fabric : what.equals("show") ? "Se ve al atar: " + fabric : "Sin " + fabric);
    }

    @Override
    public String wishQuick() {
        return "Primero las de menos costuras";
    }

    @Override
    public String wishRounds() {
        return "Vueltas";
    }

    @Override
    public String wishScraps() {
        return "Para retales tal como son";
    }

    @Override
    public String wishSlack(String unit) {
        return "Mayor que lo mínimo en, " + unit + "; vacío para lo mínimo";
    }

    @Override
    public String wishTogether() {
        return "Composición";
    }

    @Override
    public String wishWide() {
        return "Tiras anchas";
    }

    @Override
    public String wishWith() {
        return "Piezas que deben estar";
    }
}
