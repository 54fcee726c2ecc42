package hearthcloth.words.refusing;

/** The room of refusing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchRefusing implements RefusingWords {

    @Override
    public String fileAfterQuote(String text) {
        return "il y a du texte après un guillemet fermant : " + text + " ; doublez un guillemet qui fait partie du texte, comme \"6 1/2\"\" wide\"";
    }

    @Override
    public String fileAt(String column, String line, String what) {
        return (column.equals("none") ? "ligne " + line + " : " + what : "ligne " + line + ", " + column + " : " + what);
    }

    @Override
    public String fileCells(String cells, String columns) {
        return "il y a " + cells + " cases mais " + columns + " colonnes ; mettez entre guillemets \" une case qui contient une virgule, comme \"16,5 cm\"";
    }

    @Override
    public String fileChoice(String one, String other, String text) {
        return text + " ne veut rien dire ici ; écrivez " + one + " ou " + other + ", ou laissez vide";
    }

    @Override
    public String fileColour(String text) {
        return text + " n’est pas une couleur ; écrivez-en une comme #8a9a5b ou un nom comme dark green, ou laissez vide";
    }

    @Override
    public String fileCount(String most, String text) {
        return text + " n’est pas un nombre de morceaux ; écrivez un entier de 1 à " + most + ", ou laissez vide pour un seul";
    }

    @Override
    public String fileDisagree(String before, String name, String now, String was) {
        return name + " est " + now + " ici et " + was + " à la ligne " + before + " ; un tissu est l’un ou l’autre : corrigez une ligne ou donnez-lui un autre nom";
    }

    @Override
    public String fileEmpty() {
        return "le fichier de la réserve est vide ; sa première ligne nomme les colonnes fabric,width,length et chaque ligne suivante est un morceau";
    }

    @Override
    public String fileLongName(String letters, String most, String name) {
        return name + " a " + letters + " lettres ; " + most + " tiennent sur une étiquette : raccourcissez et mettez le reste sous note";
    }

    @Override
    public String fileMore(String more) {
        return "et " + more + " de plus";
    }

    @Override
    public String fileMost(String metres, String text) {
        return text + " dépasse les " + metres + " m admis pour un morceau ; vérifiez le nombre et son unité";
    }

    @Override
    public String fileNoColumn(String header) {
        return "aucune colonne ne porte ce nom ; la première ligne doit nommer les colonnes fabric, width et length (elle dit " + header + ")";
    }

    @Override
    public String fileNoName() {
        return "le tissu n’a pas de nom ; écrivez comment vous l’appelez";
    }

    @Override
    public String fileNoPieces() {
        return "les colonnes sont nommées mais aucun morceau ne suit ; ajoutez une ligne par morceau";
    }

    @Override
    public String fileNoUnit(int more) {
        return "la taille n’a pas d’unité" + (more == 0 ? "" : " (ni sur " + more + " autres lignes)") + " ; écrivez in, cm ou mm après les nombres, ajoutez une colonne unit, ou dites --unit in ou --unit cm";
    }

    @Override
    public String fileNothing(String text) {
        return text + " est nul ; écrivez une taille au-dessus de zéro ou ôtez la ligne";
    }

    @Override
    public String fileQuoteOpen() {
        return "un guillemet \" s’ouvre ici et ne se ferme jamais ; fermez-le ou ôtez-le";
    }

    @Override
    public String fileTooMany(String most) {
        return "ici la réserve dépasse " + most + " morceaux, plus qu’il n’est permis ; vérifiez les nombres ou ôtez des morceaux";
    }

    @Override
    public String fileTwice() {
        return "deux colonnes portent ce nom ; renommez-en une ou supprimez-la";
    }

    @Override
    public String fileTwoColours(String before, String line, String name, String now, String side, String was) {
        return "ligne " + line + " : " + (side.equals("wrong") ? "l’envers de " : "") + name + " est " + now + " ici et " + was + " à la ligne " + before + " ; le premier est retenu";
    }

    @Override
    public String fileUnit(String text) {
        return text + " n’est pas une unité ; écrivez in, cm, mm, m, ft ou yd";
    }

    @Override
    public String giftBook() {
        return "un livre s’enveloppe comme une boîte ; écrivez \"box\" et ses trois mesures, ou \"books\" pour deux livres pareils";
    }

    @Override
    public String giftBottle() {
        return "le goulot d’une bouteille n’est pas plus large que son corps, ni son épaule plus haute que le goulot ; vérifiez les mesures";
    }

    @Override
    public String giftCount(String count, String rule, String text) {
        return "« " + text + " » a " + count + " mesures, mais " + rule;
    }

    @Override
    public String giftKinds() {
        return "écrivez le genre et ses mesures, comme \"box 30 x 20 x 8 cm\", \"bottle 8 x 30 cm\", \"two bottles 8 x 30 cm\", \"ball 22 cm\", \"books 21 x 15 x 2 cm\" ou \"roll 6 x 40 cm\"";
    }

    @Override
    public String giftLarge(String size) {
        return size + ", c’est plus de deux mètres, trop grand pour un seul carré ; vérifiez le nombre et son unité";
    }

    @Override
    public String giftLong(String kinds, String text) {
        return "« " + text + "… » est trop long pour un cadeau ; " + kinds;
    }

    @Override
    public String giftNone(String kinds) {
        return "aucun cadeau n’est écrit ; " + kinds;
    }

    @Override
    public String giftRule(String kind) {
        return (kind.equals("BOX") ? "une boîte a trois mesures : longueur x largeur x hauteur" : kind.equals("CUBE") ? "un cube a une mesure" : kind.equals("BOTTLE") ? "une bouteille a deux mesures : diamètre x hauteur" : kind.equals("BOTTLES") ? "deux bouteilles pareilles ont deux mesures : diamètre x hauteur" : kind.equals("BALL") ? "un objet rond a une mesure, son diamètre" : kind.equals("BOOKS") ? "deux livres pareils ont trois mesures, celles d’un seul : hauteur x largeur x épaisseur" : "un rouleau a deux mesures : diamètre x longueur");
    }

    @Override
    public String giftSmall() {
        return "un cadeau de moins d’un centimètre ne se noue pas ; vérifiez les nombres et leur unité";
    }

    @Override
    public String giftUnmeasured(String rule, String text) {
        return "« " + text + " » n’a pas de mesures ; " + rule;
    }

    @Override
    public String giftWhat(String kinds, String text) {
        return "« " + text + " » ne dit pas ce qu’est le cadeau ; " + kinds;
    }

    @Override
    public String giftWord(String kinds, String text, String word) {
        return "« " + text + " » : « " + word + " » n’est pas compris ; " + kinds;
    }

    @Override
    public String giftZero() {
        return "les mesures d’un cadeau sont toutes au-dessus de zéro ; écrivez celle qui manque";
    }

    @Override
    public String givenCsv(String name, String such) {
        return name + " est un dossier ; donnez le fichier CSV qu’il contient, par exemple " + such + ".";
    }

    @Override
    public String givenEmpty(String name) {
        return name + " est vide ; sa première ligne nomme les colonnes fabric,width,length, et chaque ligne suivante est un morceau.";
    }

    @Override
    public String givenGone(String name, String place) {
        return "Il n’y a pas de fichier " + name + " ; vérifiez son nom et l’endroit où vous êtes (" + place + ").";
    }

    @Override
    public String givenInput() {
        return "l’entrée standard";
    }

    @Override
    public String givenLarge(String most, String name) {
        return name + " dépasse " + most + " Mo, bien plus qu’il n’en faut pour une réserve ; donnez le fichier où sont inscrits vos tissus.";
    }

    @Override
    public String givenNoText(String line, String name, String why) {
        return (why.equals("ARCHIVE") ? "" + name + " est un classeur ou une archive, pas du texte ; enregistrez le tableau en CSV (UTF-8) et donnez ce fichier." : why.equals("UTF16") ? "" + name + " est du texte en UTF-16 ; enregistrez le tableau en CSV (UTF-8) et donnez ce fichier." : why.equals("BYTE") ? "" + name + " n’est pas du texte (la ligne " + line + " contient un octet qui n’est pas une lettre) ; enregistrez le tableau en CSV (UTF-8) et donnez ce fichier." : "" + name + " n’est pas en UTF-8 (la ligne " + line + " contient une lettre dans un autre codage) ; enregistrez le tableau en CSV (UTF-8) et donnez ce fichier.");
    }

    @Override
    public String givenNot(String name, String why) {
        return (why.equals("NAME") ? "« " + name + " » n’est pas un nom de fichier ; vérifiez comment il est écrit." : why.equals("LOCKED") ? "Vous n’avez pas le droit de lire " + name + " ; changez ses droits ou copiez-le." : "" + name + " n’a pas pu être lu jusqu’au bout ; vérifiez le disque et recommencez.");
    }

    @Override
    public String givenPhoto(String name) {
        return name + " est un dossier ; donnez la photo qu’il contient.";
    }

    @Override
    public String givenPhotoEmpty(String name) {
        return name + " est vide ; donnez la photo telle que l’appareil ou le téléphone l’a prise.";
    }

    @Override
    public String heapLine(String line, String what) {
        return "Ligne " + line + " : " + what + ".";
    }

    @Override
    public String heapMany(String most, String pieces) {
        return "Il y a " + pieces + " morceaux ; une page en planifie " + most + " au plus. Ôtez-en quelques-uns.";
    }

    @Override
    public String listAt(String line, String list, String what) {
        return list + ", ligne " + line + ", " + what;
    }

    @Override
    public String listColumn(String names, String text) {
        return "aucun souhait ne s’appelle « " + text + " » ; il y a " + names + ".";
    }

    @Override
    public String listExtent() {
        return "la taille n’est pas dite ; écrivez une taille comme 16 in, ou un cadeau";
    }

    @Override
    public String listFile(String list, String what) {
        return list + ", " + what + ".";
    }

    @Override
    public String listMissing() {
        return "name : un nom manque ; écrivez à qui est le carré.";
    }

    @Override
    public String listMost(String list, String most) {
        return list + " a plus de " + most + " carrés ; partagez-la.";
    }

    @Override
    public String listNoName() {
        return "aucune colonne ne s’appelle name ; la première ligne nomme les colonnes, comme name,size,gift.";
    }

    @Override
    public String listNone(String list) {
        return list + " ne nomme aucun carré ; sa première ligne nomme les colonnes, comme name,size,gift, et chaque ligne suivante est un carré.";
    }

    @Override
    public String listSame(String text) {
        return "name : un autre carré s’appelle aussi « " + text + " » ; distinguez-les.";
    }

    @Override
    public String listTwice(String text) {
        return text + " : deux colonnes portent ce nom ; supprimez-en une.";
    }

    @Override
    public String listUnder(String text) {
        return "« " + text + " » n’est sous aucune colonne ; mettez entre guillemets ce qui contient une virgule.";
    }

    @Override
    public String listWhole(String line, String list, String what) {
        return list + ", ligne " + line + " : " + what;
    }

    @Override
    public String listYes(String text) {
        return "free : « " + text + " » ne va pas ; écrivez yes ou no.";
    }

    @Override
    public String outEnding(String ending, String name, String option) {
        return option + " : « " + name + " » ne convient pas ; écrivez un nom de fichier qui finit par " + ending + ".";
    }

    @Override
    public String outFile(String name, String option, String why) {
        return (why.equals("FOLDER") ? "" + option + " : " + name + " est un dossier ; donnez un nom de fichier." : why.equals("THERE") ? "" + option + " : il y a déjà un fichier " + name + " ; donnez un autre nom, ou ajoutez --replace pour l’écraser." : why.equals("NOWHERE") ? "" + option + " : il n’y a pas de dossier pour " + name + " ; créez-le d’abord, ou vérifiez le nom." : why.equals("LOCKED") ? "" + option + " : vous n’avez pas le droit d’écrire dans le dossier de " + name + " ; changez ses droits ou donnez-en un autre." : why.equals("NAME") ? "" + option + " : « " + name + " » n’est pas un nom de fichier ; vérifiez comment il est écrit." : "" + option + " : " + name + " n’a pas pu être écrit ; vérifiez ses droits et la place sur le disque.");
    }

    @Override
    public String outFolder(String name, String why) {
        return (why.equals("MISSING") ? "--out : il manque un dossier ; écrivez par exemple --out cloths." : why.equals("FILE") ? "--out : " + name + " est un fichier ; donnez un dossier, qui peut ne pas exister encore." : why.equals("NAME") ? "--out : « " + name + " » n’est pas un nom de dossier ; vérifiez comment il est écrit." : why.equals("CLOSED") ? "--out : impossible de regarder dans " + name + " ; vérifiez ses droits." : "--out : " + name + " n’a pas pu être écrit ; vérifiez ses droits et la place sur le disque. Rien n’a été changé.");
    }

    @Override
    public String outHolds(String name, String thing) {
        return "--out : " + name + " contient autre chose (" + thing + ") ; donnez un nouveau dossier, ou un dossier qui ne contient que des propositions.";
    }

    @Override
    public String outInWay(String name, String thing) {
        return "--out : " + name + " n’a pas pu être créé, un fichier est à sa place (" + thing + ") ; donnez un autre dossier.";
    }

    @Override
    public String outStopped(String name) {
        return "Arrêté. Rien n’a été changé dans " + name + ".";
    }

    @Override
    public String stashFull(String most) {
        return "la réserve dépasserait " + most + " morceaux, plus qu’il n’est permis ; vérifiez les nombres. Rien n’a été ajouté";
    }

    @Override
    public String stashKnown(String fabric) {
        return fabric + " est déjà là ; sa couleur, ses faces et son sens restent comme ici.";
    }

    @Override
    public String tieFirst() {
        return "un nouage a besoin d’un objet à envelopper ; ajoutez --gift \"box 30 x 20 x 8 cm\"";
    }

    @Override
    public String tieOther(String names, String suited, String tie) {
        return tie + " : pour " + suited + " ; pour ce cadeau, choisissez " + names;
    }

    @Override
    public String tieUnknown(String names, String text) {
        return "« " + text + " » n’est pas un nouage connu ; il y a " + names;
    }

    @Override
    public String wishAt(String field, String what) {
        return field + " : " + what + ".";
    }

    @Override
    public String wishBands() {
        return "cela ne va pas avec des morceaux qui doivent en être ou être au milieu";
    }

    @Override
    public String wishBlocks(String text) {
        return "« " + text + " » n’est pas un nombre de blocs ; écrivez \"3 x 3\"";
    }

    @Override
    public String wishBlocksReach(String most, String text) {
        return "« " + text + " » est hors de portée ; on planifie de 1 x 1 à " + most + " x " + most + " blocs";
    }

    @Override
    public String wishBoth() {
        return "on ne peut souhaiter à la fois une taille et un cadeau ; ôtez l’un des deux";
    }

    @Override
    public String wishCloth(String text) {
        return "« " + text + " » est hors de portée ; les carrés vont de 5 cm (2 po) à 5 m (196 po), vérifiez donc le nombre et son unité";
    }

    @Override
    public String wishContrast(String names, String text) {
        return "« " + text + " » n’est pas un contraste ; écrivez l’un de " + names;
    }

    @Override
    public String wishFabric(int more, String name, String names) {
        return "aucun tissu de la réserve ne s’appelle « " + name + " » ; il y a " + names + (more == 0 ? "" : " et " + more + " de plus");
    }

    @Override
    public String wishFar(String text) {
        return "« " + text + " » est hors de portée ; vérifiez le nombre et son unité";
    }

    @Override
    public String wishFell(String text) {
        return "« " + text + " » ne laisse pas de rabat : la seconde marge enveloppe la première, elle doit être la plus large";
    }

    @Override
    public String wishGoes(String other) {
        return "cela va avec " + other;
    }

    @Override
    public String wishGoesBars() {
        return "cela va avec une pièce centrale et des bandes, pas avec --free ou --blocks";
    }

    @Override
    public String wishManyWidths(String count, String most) {
        return count + " largeurs, c’est trop ; écrivez-en " + most + " au plus";
    }

    @Override
    public String wishMiddle() {
        return "écrivez le numéro d’un seul morceau";
    }

    @Override
    public String wishMixed(String text) {
        return "« " + text + " » ne se mélange pas ; après le + écrivez scattered evenly ou one bright scrap";
    }

    @Override
    public String wishNarrow(String band, String eaten, String how, String needed, String text) {
        return "« " + text + " » est trop étroit : " + (how.equals("finished") ? "le rabat seul fait " + band + " de large" : "coutures ou ourlet en prennent jusqu’à " + eaten + " et le rabat couvre " + band) + " ; écrivez plus de " + needed;
    }

    @Override
    public String wishNeed(String most, String size, String tie) {
        return tie + " demanderait un carré de " + size + ", et on planifie jusqu’à " + most + " ; enveloppez plus petit ou choisissez un autre nouage";
    }

    @Override
    public String wishNoCloth(String most, String text) {
        return "« " + text + " » dépasse " + most + " et ne laisse pas de tissu ; vérifiez le nombre et son unité";
    }

    @Override
    public String wishNotWith(String other) {
        return "cela ne va pas avec " + other;
    }

    @Override
    public String wishNothing() {
        return "une pièce de rien ne se coud pas ; écrivez une longueur comme \"2 in\"";
    }

    @Override
    public String wishOff(String text) {
        return "« " + text + " » n’est pas un écart du milieu ; écrivez une longueur et right, left, away ou near : \"2 cm left, 3 cm away\"";
    }

    @Override
    public String wishOrder(String text) {
        return "« " + text + " » n’est pas un ordre ; écrivez round, pairs ou two-sides";
    }

    @Override
    public String wishPair(int count, String text, String what) {
        return "« " + text + " » a " + (count == 0 || count == 1 ? "" + count + " nombre" : "" + count + " nombres") + " ; " + (what.equals("seam") ? "une couture rabattue a une marge étroite et une large, comme \"1/4 + 1/2 in\"" : "un ourlet a un premier et un second pli, comme \"1/4 + 1/4 in\"");
    }

    @Override
    public String wishPart(String most, String text) {
        return "« " + text + " » ne va pas : chaque partie est au-dessus de zéro et au plus " + most;
    }

    @Override
    public String wishReach(String least, String most, String text) {
        return "« " + text + " » est hors de portée ; on planifie de " + least + " à " + most + ", vérifiez donc le nombre et son unité";
    }

    @Override
    public String wishScheme(String names, String text) {
        return "« " + text + " » n’est pas un plan de couleurs ; écrivez stash ou l’un de " + names;
    }

    @Override
    public String wishScraps(String text) {
        return "« " + text + " » n’est pas une règle pour les chutes ; écrivez as-they-are, cut ou either";
    }

    @Override
    public String wishSeam(String names, String text) {
        return "« " + text + " » n’est pas une couture ; écrivez sa marge étroite et sa marge large, comme \"1/4 + 1/2 in\", ou l’un de " + names;
    }

    @Override
    public String wishSeed(String text) {
        return "« " + text + " » n’est pas un entier ; écrivez-en un comme 7";
    }

    @Override
    public String wishSetting(String text) {
        return "« " + text + " » n’est pas une disposition ; écrivez straight furrow, barn raising, sunshine and shadow, turned at will ou all alike";
    }

    @Override
    public String wishShow(String text) {
        return "« " + text + " », c’est plus d’un tissu ; écrivez celui qui doit se voir";
    }

    @Override
    public String wishSlack(String most, String text) {
        return "« " + text + " » dépasse " + most + ", que la couture ne prend pas ; vérifiez le nombre et son unité, ou écrivez none";
    }

    @Override
    public String wishTied() {
        return "cela concerne un cadeau noué ; ajoutez --gift \"box 30 x 20 x 8 cm\"";
    }

    @Override
    public String wishTime(String text) {
        return "« " + text + " » n’est pas une durée ; écrivez-en une comme 2s, 500ms ou 1min";
    }

    @Override
    public String wishTimeReach(String text) {
        return "« " + text + " » est hors de portée ; donnez entre 1ms et 10min";
    }

    @Override
    public String wishUnit(String text) {
        return "« " + text + " » n’est pas une unité de mesure ici ; écrivez in ou cm";
    }

    @Override
    public String wishWhole(String least, String most, String text) {
        return "« " + text + " » ne va pas ; écrivez un entier de " + least + " à " + most;
    }

    @Override
    public String wishWidths(int rounds, int widths) {
        return (widths == 0 || widths == 1 ? "" + widths + " largeur" : "" + widths + " largeurs") + " pour " + (rounds == 0 || rounds == 1 ? "" + rounds + " tour" : "" + rounds + " tours") + " ; écrivez une largeur par tour, ou plus de tours";
    }

    @Override
    public String wishWord(String names, String text) {
        return "« " + text + " » ne va pas ; écrivez " + names;
    }
}
