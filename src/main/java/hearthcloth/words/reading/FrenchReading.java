package hearthcloth.words.reading;

/** The room of reading in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchReading implements ReadingWords {

    @Override
    public String lengthBelow(String text) {
        return "« " + text + " » est en dessous de zéro ; une longueur est de zéro ou plus";
    }

    @Override
    public String lengthByZero(String text) {
        return "« " + text + " » divise par zéro ; écrivez une fraction comme 1/2";
    }

    @Override
    public String lengthMissing() {
        return "il manque une longueur ; écrivez par exemple « 16,5 cm » ou « 6 1/2 in »";
    }

    @Override
    public String lengthNoUnit(String text) {
        return "« " + text + " » n’a pas d’unité ; écrivez cm, mm ou in après le nombre";
    }

    @Override
    public String lengthNumbers(String n, String text) {
        return "« " + text + " » a " + n + " nombres ; une taille en a un (un carré) ou deux, comme « 30 x 20 cm »";
    }

    @Override
    public String lengthTooLong(String text) {
        return "« " + text + " » dépasse un kilomètre ; vérifiez le nombre et l’unité";
    }

    @Override
    public String lengthTwoWays(String one, String other, String text) {
        return "« " + text + " » peut se lire de deux façons ; écrivez " + one + " ou " + other;
    }

    @Override
    public String lengthUnit(String text, String word) {
        return "« " + text + " » : « " + word + " » n’est pas une unité ; écrivez cm, mm, m, in, ft ou yd";
    }

    @Override
    public String lengthUnread(String text) {
        return "« " + text + " » n’est pas une longueur ; écrivez par exemple « 16,5 cm » ou « 6 1/2 in »";
    }

    @Override
    public String lineColour(String text) {
        return "« " + text + " » n’est pas une couleur ; écrivez-en une comme #8a9a5b ou un nom comme teal";
    }

    @Override
    public String lineHowMany(String most) {
        return "combien ? écrivez un nombre de 1 à " + most;
    }

    @Override
    public String lineLong(String n) {
        return "cette ligne fait " + n + " lettres ; écrivez une seule sorte de morceau par ligne";
    }

    @Override
    public String lineLongName(String most) {
        return "le nom du tissu est trop long pour une étiquette ; " + most + " lettres y tiennent";
    }

    @Override
    public String lineNoName() {
        return "comment s’appelle le tissu ? une couleur suffit, comme « imprimé vert »";
    }

    @Override
    public String sizeMissing() {
        return "quelle est sa taille ? écrivez par exemple « 10 x 20 cm »";
    }

    @Override
    public String sizeNothing() {
        return "un côté est nul ; écrivez une taille au-dessus de zéro";
    }

    @Override
    public String sizeOneSide(String side) {
        return side + " est un côté ; et l’autre ? écrivez « " + side + " x 20 cm »";
    }

    @Override
    public String sizeTooMuch() {
        return "c’est plus que n’en tient aucun rouleau ; vérifiez les nombres et leur unité";
    }
}
