package hearthcloth.words.typing;

/** The room of typing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchTyping implements TypingWords {

    @Override
    public String commandUnknown(String command, String commands) {
        return "Il n’y a pas de commande " + command + " ; il y a " + commands + ".";
    }

    @Override
    public String guidelineFavourite(String fabrics, String name) {
        return "--favourite : aucun tissu de la réserve ne s’appelle \"" + name + "\" ; il y a " + fabrics + ".";
    }

    @Override
    public String guidelineTwice(String option) {
        return option + " : la consigne le dit ; enlevez " + option + ", ou écrivez-le dans la consigne.";
    }

    @Override
    public String guidelineWrote(String file, String name) {
        return file + " est écrit : " + name + ".";
    }

    @Override
    public String ideaLarge(String most, String size) {
        return "La page ferait " + size + " ko, plus de " + most + " ko ; enlevez l’image, ou réduisez-la.";
    }

    @Override
    public String ideaNoPieces() {
        return "Les morceaux de l’exemple manquent ; donnez-en avec --from STASH.csv.";
    }

    @Override
    public String ideaWrote(String file, String size) {
        return file + " est écrit, " + size + " ko : un seul fichier, qui s’ouvre sans réseau. Envoyez-le, ou mettez-le sur votre site.";
    }

    @Override
    public String inside(String what) {
        return "Quelque chose s’est mal passé dans Hearthcloth (" + what + ").";
    }

    @Override
    public String kitsBoth() {
        return "--students : la liste dit combien il y a de carrés ; enlevez --students ou --wishes.";
    }

    @Override
    public String kitsEmpty() {
        return "La réserve est vide ; ajoutez au moins un morceau.";
    }

    @Override
    public String kitsWhich() {
        return "Quels carrés ? Donnez --wishes LIST.csv, ou --students 12 --size \"16 in\".";
    }

    @Override
    public String language(String tags, String text) {
        return "\"" + text + "\" n’est pas une langue parlée ici ; écrivez " + tags + ", ou son nom";
    }

    @Override
    public String memory() {
        return "La mémoire n’a pas suffi pour cette réserve. Enlevez quelques morceaux et réessayez.";
    }

    @Override
    public String missing(String what) {
        return "Il manque quelque chose : " + what + ".";
    }

    @Override
    public String notFile(String text) {
        return "\"" + text + "\" n’est pas un nom de fichier ; choisissez-en un autre";
    }

    @Override
    public String note(String what) {
        return "Note : " + what;
    }

    @Override
    public String optionNoValue(String option, String text) {
        return option + " ne prend pas de valeur ; enlevez \"" + text + "\".";
    }

    @Override
    public String optionTwice(String option) {
        return option + " est tapé deux fois ; enlevez-en un.";
    }

    @Override
    public String optionUnknown(String option) {
        return "Il n’y a pas d’option " + option + ".";
    }

    @Override
    public String pictureColours(String what) {
        return "Les couleurs de l’image et vos tissus les plus proches : " + what + ".";
    }

    @Override
    public String pictureNear(String colour, String fabric, String percent) {
        return colour + " " + percent + ", " + fabric;
    }

    @Override
    public String pictureNothing(String colour, String percent) {
        return colour + " " + percent + ", rien de proche";
    }

    @Override
    public String progress(String percent, String what) {
        return (what.equals("drawing") ? "dessin" : "lecture : " + percent);
    }

    @Override
    public String readCannot(String file) {
        return file + " ne peut pas être lu :";
    }

    @Override
    public String readCannotInput() {
        return "L’image ne peut pas être lue :";
    }

    @Override
    public String readDrawn(String file) {
        return "Dessiné sur la photo : " + file + ".";
    }

    @Override
    public String readMemory() {
        return "La mémoire n’a pas suffi pour cette image ; prenez-en une plus petite.";
    }

    @Override
    public String readNothing() {
        return "Aucun fichier de réserve n’est écrit, car aucun morceau ne peut y entrer tel quel.";
    }

    @Override
    public String report() {
        return "Vos fichiers sont intacts. Merci de le signaler, avec le fichier de la réserve et ce que vous avez tapé.";
    }

    @Override
    public String settings(String file, String line, String name) {
        return "Le fichier de réglages " + file + ", que nomme " + name + ", ne peut pas être lu ; écrivez des lignes comme " + line + ", ou enlevez " + name + ".";
    }

    @Override
    public String sheetWrote(String file) {
        return file + " est écrit. L’imprimer à 100 %, sans l’ajuster à la page ; sa ligne fine mesure alors 20 cm, soit 7 7/8 in.";
    }

    @Override
    public String shown(String command) {
        return "\"" + command + "\" montre comment l’écrire.";
    }

    @Override
    public String sizeReach(String text) {
        return "\"" + text + "\" est hors de portée ; un carré mesure de 5 cm à 5 m, vérifiez le nombre et son unité";
    }

    @Override
    public String sizeWhich() {
        return "Dites ou bien ce que vous emballez, --gift \"box 30 x 20 x 8 cm\", ou bien le carré que vous avez, --cloth \"38 1/2 in\".";
    }

    @Override
    public String unread(String what) {
        return "Cela ne peut pas être lu tel que c’est tapé : " + what + ".";
    }

    @Override
    public String unusable(String file) {
        return file + " ne convient pas tel quel :";
    }

    @Override
    public String unusableInput(String what) {
        return (what.equals("stash") ? "La réserve" : "Ce qui est arrivé") + " ne convient pas tel quel :";
    }

    @Override
    public String wordTooMany(String word) {
        return "\"" + word + "\" est de trop ; mettez entre guillemets droits un souhait de plusieurs mots.";
    }
}
