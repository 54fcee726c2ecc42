package hearthcloth.words.sewing;

/** The room of sewing in French. Made from src/main/words by CatalogueTest; mend the catalogue, not this file. */
public final class FrenchSewing implements SewingWords {

    @Override
    public String about(String length) {
        return "environ " + length;
    }

    @Override
    public String beforeGrain() {
        return "Poser chaque morceau avec son droit-fil (le sens de la lisière) de haut en bas.";
    }

    @Override
    public String beforeMeasure(String length) {
        return "Mesurer chaque morceau. S’il en manque plus de " + length + " par rapport à ce plan, refaire le plan avec la vraie taille.";
    }

    @Override
    public String beforePin() {
        return "Épingler son étiquette sur chaque pièce dès qu’elle est coupée : sur la face qui sera le recto du carré, le haut de l’étiquette vers le haut du carré.";
    }

    @Override
    public String beforePress() {
        return "Repasser chaque morceau à plat et laisser refroidir. Couper la lisière si elle y est encore, et mesurer de nouveau.";
    }

    @Override
    public String beforeStraight() {
        return "Couper d’abord le bord gauche et le bord supérieur bien droits et d’équerre, car chaque coupe se mesure depuis un bord. Là où une pièce prend le morceau jusqu’au bord, n’enlever qu’un fil ou deux.";
    }

    @Override
    public String blockBegins(String first, String last, String letters) {
        return "Début de l’ensemble " + letters + ". Disposer " + first + " à " + last + " comme sur l’image du recto. Rien d’autre n’est nécessaire.";
    }

    @Override
    public String blockDone(String letters) {
        return "L’ensemble " + letters + " est terminé.";
    }

    @Override
    public String briefSew(String added, String part, String side, String work) {
        return "Coudre " + added + " au " + (part.equals("end") ? "bout" : "bord") + " " + (side.equals("left") ? "gauche" : side.equals("right") ? "droit" : side.equals("top") ? "supérieur" : "inférieur") + " de " + work + ", comme à l’étape 1.";
    }

    @Override
    public String briefSticksOut(String length, String wrapping) {
        return wrapping + " enveloppe : laisser son bord dépasser de " + length + ".";
    }

    @Override
    public String briefStitch(String top) {
        return "Piquer à " + top + " du bord qui est dessus. Finir comme à l’étape 1.";
    }

    @Override
    public String briefTurn(String added, String part, String side, String work) {
        return (side.equals("left") ? "Tourner " + added + " sur le" : side.equals("right") ? "Tourner " + added + " sur le" : side.equals("top") ? "Rabattre " + added + " vers le bas sur le" : "Rabattre " + added + " vers le haut sur le") + " " + (part.equals("end") ? "bout" : "bord") + " " + (side.equals("left") ? "gauche" : side.equals("right") ? "droit" : side.equals("top") ? "supérieur" : "inférieur") + " de " + work + ".";
    }

    @Override
    public String briefWraps(String wrapping) {
        return wrapping + " enveloppe.";
    }

    @Override
    public String careChildren() {
        return "Un tissu noué peut se serrer autour du cou. Le tenir loin des enfants de moins de trois ans, surtout si ses bouts dépassent 22 cm.";
    }

    @Override
    public String careChildrenTitle() {
        return "Petits enfants";
    }

    @Override
    public String careCutter() {
        return "Refermer la lame après chaque coupe. Couper en s’éloignant de soi, la lame droite. Tenir les doigts loin du bord de la règle, et pas d’épingles sur le tapis. Envelopper les vieilles lames avant de les jeter.";
    }

    @Override
    public String careCutterTitle() {
        return "Cutter rotatif";
    }

    @Override
    public String careDye() {
        return "Les rouges, bleus et violets foncés peuvent déteindre aux premiers lavages. De même si un tissu humide repose sur du clair.";
    }

    @Override
    public String careDyeTitle() {
        return "Teinture";
    }

    @Override
    public String careFlames() {
        return "Le tissu brûle. Tenir un cadeau emballé à au moins 30 cm de toute flamme.";
    }

    @Override
    public String careFlamesTitle() {
        return "Bougies et fourneaux";
    }

    @Override
    public String careFood() {
        return "Réserver un carré aux aliments. Le laver souvent et bien le sécher. Mettre d’abord la viande crue dans un sac fermé.";
    }

    @Override
    public String careFoodTitle() {
        return "Aliments";
    }

    @Override
    public String careIron() {
        return "Le poser sur son talon, là où personne ne se prend dans le cordon. Garder le visage et les doigts hors de la vapeur. Débrancher à la fin.";
    }

    @Override
    public String careIronTitle() {
        return "Fer à repasser";
    }

    @Override
    public String careNeedle() {
        return "Retirer les épingles avant qu’elles arrivent au pied, et ne jamais les tenir dans la bouche. Si une aiguille casse, en retrouver tous les morceaux.";
    }

    @Override
    public String careNeedleTitle() {
        return "Aiguille";
    }

    @Override
    public String cutGives(String how, String patch, String size) {
        return patch + " : " + size + (how.equals("turned") ? " (quart de tour)" : how.equals("whole") ? ", le morceau entier" : how.equals("turnedWhole") ? " (quart de tour), le morceau entier" : "");
    }

    @Override
    public String cutKeep(String number, String size) {
        return "Garder la chute " + number + " : " + size;
    }

    @Override
    public String cutLine(String gives, String leaves, String measure, String side, String way, String what) {
        return "Couper " + what + " " + (way.equals("down") ? "de haut en bas" : "de gauche à droite") + ", à " + measure + " de son bord " + (side.equals("left") ? "gauche" : side.equals("right") ? "droit" : side.equals("top") ? "supérieur" : "inférieur") + ". On obtient : " + gives + ". Il reste : " + leaves + ".";
    }

    @Override
    public String cutScraps(int n) {
        return (n == 0 || n == 1 ? "" + n + " chute trop petite pour être gardée" : "" + n + " chutes trop petites pour être gardées");
    }

    @Override
    public String cutTitle(String fabric, String piece, String size) {
        return "Morceau " + piece + " : " + fabric + ", " + size;
    }

    @Override
    public String cutTitleDone(String fabric, String piece, String size) {
        return "Morceau " + piece + " : " + fabric + ", " + size + ", déjà coupé";
    }

    @Override
    public String fewClip(String length) {
        return "Couper un triangle à chaque coin : " + length + " sur les deux bords.";
    }

    @Override
    public String fewClipNoMore() {
        return "Pas plus : le coin est moins épais et reste fermé.";
    }

    @Override
    public String fewClosePush() {
        return "Rentrer les fils avec le chas d’une aiguille.";
    }

    @Override
    public String fewCloseSew() {
        return "Fermer chaque ouverture à la main, quelques petits points.";
    }

    @Override
    public String fewDiagonals(String length) {
        return "Mesurer les deux diagonales : environ " + length + " chacune.";
    }

    @Override
    public String fewFold(String under, String wrapped, String wrapping) {
        return "Coucher vers " + wrapped + ", replier " + under + " de " + wrapping + ", piquer le pli.";
    }

    @Override
    public String fewFoldShort(String under) {
        return "Repasser ; replier le bord large de " + under + ", piquer le pli.";
    }

    @Override
    public String fewFrenchFold(String band) {
        return "Plier dans l’autre sens sur la piqûre. Piquer à " + band + " du pli.";
    }

    @Override
    public String fewFrenchOpen(String wrapped) {
        return "Ouvrir, coucher le rabat vers " + wrapped + ".";
    }

    @Override
    public String fewFrenchOpenShort() {
        return "Ouvrir, aplatir le rabat au fer.";
    }

    @Override
    public String fewHemFold(String edges, String face, String length) {
        return (face.equals("front") ? "Recto" : "Verso") + " dessus. Replier " + length + " " + (edges.equals("topBottom") ? "en haut et en bas" : edges.equals("sides") ? "aux deux côtés, ourlets compris" : "aux quatre bords") + ". Repasser.";
    }

    @Override
    public String fewHemFoldAgain(String length) {
        return "Replier encore de " + length + ". Repasser et épingler.";
    }

    @Override
    public String fewHemFoldOnce(String edges, String face, String length) {
        return (face.equals("front") ? "Recto" : "Verso") + " dessus. Replier " + length + " " + (edges.equals("topBottom") ? "en haut et en bas" : edges.equals("sides") ? "aux côtés, ourlets compris" : "aux quatre bords") + ". Épingler.";
    }

    @Override
    public String fewHemOpen() {
        return "Le rouvrir. Le coin sera où se croisent les plis intérieurs.";
    }

    @Override
    public String fewHemPress() {
        return "Repasser.";
    }

    @Override
    public String fewHemStitch(String edge, String from) {
        return "Surpiquer à " + edge + " " + (from.equals("fold") ? "du pli intérieur" : "du bord vif") + ". Points d’arrêt aux deux bouts.";
    }

    @Override
    public String fewHemStitchRound(String edge, String from) {
        return "Surpiquer à " + edge + " " + (from.equals("fold") ? "du pli intérieur" : "du bord vif") + ", tout autour.";
    }

    @Override
    public String fewLappedHook(String band) {
        return "Accrocher les plis, " + band + " l’un sur l’autre. Épingler.";
    }

    @Override
    public String fewLappedLay(String added, String face, String side) {
        return (face.equals("front") ? "Recto" : "Verso") + " vers le haut, " + (side.equals("left") ? "à gauche" : side.equals("right") ? "à droite" : side.equals("top") ? "en haut" : "en bas") + " : " + added + ".";
    }

    @Override
    public String fewLappedLayShort(String face) {
        return (face.equals("front") ? "Recto" : "Verso") + " vers le haut, côte à côte.";
    }

    @Override
    public String fewLappedPress(String face, String turn, String under, String wrapping) {
        return "Rabattre " + turn + " de " + wrapping + " vers le " + (face.equals("front") ? "verso" : "recto") + ", l’autre de " + under + " vers le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String fewLappedPressShort() {
        return "Rabattre les deux bords comme sur l’image de la couture.";
    }

    @Override
    public String fewLappedStitch() {
        return "Piquer les deux plis, un de chaque côté. Repasser.";
    }

    @Override
    public String fewLay(String added, String face, String part, String side) {
        return (face.equals("front") ? "Recto" : "Verso") + " vers le haut. Rabattre " + added + " " + (side.equals("left") ? "à gauche" : side.equals("right") ? "à droite" : side.equals("top") ? "en haut" : "en bas") + (part.equals("end") ? ", au bout" : "") + ".";
    }

    @Override
    public String fewLayLook() {
        return "Prendre du recul. Deux de même taille peuvent encore s’échanger.";
    }

    @Override
    public String fewLayOut(int n) {
        return (n == 0 || n == 1 ? "Disposer la pièce comme sur l’image, avec son étiquette." : "Disposer les " + n + " pièces comme sur l’image, chacune avec son étiquette.");
    }

    @Override
    public String fewLayShort(String added, String face, String part, String side) {
        return (face.equals("front") ? "Recto" : "Verso") + " dessus. Rabattre " + (side.equals("left") ? "à gauche" : side.equals("right") ? "à droite" : side.equals("top") ? "en haut" : "en bas") + (part.equals("end") ? ", au bout" : "") + " : " + added + ".";
    }

    @Override
    public String fewLayStack() {
        return "Les empiler dans l’ordre, la première dessus.";
    }

    @Override
    public String fewLevel(String end, String length, String start) {
        return "Aligner " + (start.equals("left") ? "à gauche" : start.equals("right") ? "à droite" : start.equals("top") ? "en haut" : "en bas") + " ; " + length + " dépasse " + (end.equals("left") ? "à gauche" : end.equals("right") ? "à droite" : end.equals("top") ? "en haut" : "en bas") + ".";
    }

    @Override
    public String fewMitreFold(String face) {
        return "Plier le coin en deux, " + (face.equals("front") ? "recto" : "verso") + " à l’intérieur, bords vifs ensemble.";
    }

    @Override
    public String fewMitreMark(String length) {
        return "Marquer les deux bords vifs à " + length + " de la pointe.";
    }

    @Override
    public String fewMitreRule() {
        return "Depuis la marque, tracer une ligne d’équerre avec le pli.";
    }

    @Override
    public String fewMitreStitch(String about) {
        return "Piquer dessus depuis le pli, " + about + ". Points d’arrêt aux deux bouts.";
    }

    @Override
    public String fewMitreStitchOut() {
        return "Piquer dessus, du pli au bord vif. Points d’arrêt aux deux bouts.";
    }

    @Override
    public String fewMitreTrim(String about) {
        return "Couper la pointe à " + about + " à côté. Ouvrir au fer, retourner.";
    }

    @Override
    public String fewPress(String wrapped) {
        return "Coucher les deux bords vers " + wrapped + ".";
    }

    @Override
    public String fewPressShort() {
        return "Coucher les deux bords du même côté.";
    }

    @Override
    public String fewPull() {
        return "Si elles diffèrent, tirer la courte et repasser.";
    }

    @Override
    public String fewRoundCorner() {
        return "Au coin : aiguille piquée, pied levé, tourner le carré.";
    }

    @Override
    public String fewRoundEnd() {
        return "À la fin, piquer sur les premiers points. Repasser.";
    }

    @Override
    public String fewRoundFold() {
        return "Replier l’ourlet sur ses marques, coins bien nets. Repasser et épingler.";
    }

    @Override
    public String fewRoundStart() {
        return "Commencer au milieu d’un côté.";
    }

    @Override
    public String fewSides() {
        return "Côtés du tissu comme sur l’image.";
    }

    @Override
    public String fewSquare(String face) {
        return "Repasser tout le carré à plat, " + (face.equals("front") ? "recto" : "verso") + " dessus.";
    }

    @Override
    public String fewSticksOut(String length, String wrapping) {
        return wrapping + " : dépasser de " + length + ", pour envelopper. Épingler.";
    }

    @Override
    public String fewSticksOutShort(String length) {
        return "Le bord qui enveloppe dépasse de " + length + ". Épingler.";
    }

    @Override
    public String fewStitch(String top) {
        return "Piquer à " + top + " du bord du dessus. Points d’arrêt aux deux bouts.";
    }

    @Override
    public String fewTrialCut(String side) {
        return "Couper deux chutes de " + side + " de côté. Les coudre comme la première couture.";
    }

    @Override
    public String fewTrialLength(String stitch) {
        return "Régler la longueur de point sur " + stitch + ".";
    }

    @Override
    public String fewTrialMeasure() {
        return "Mesurer après chaque étape.";
    }

    @Override
    public String fewTrialNarrow() {
        return "Trop étroit ? Piquer un fil plus près du bord.";
    }

    @Override
    public String fewTrialWide() {
        return "Trop large ? Piquer un fil plus à l’intérieur.";
    }

    @Override
    public String fewTrimBoth(String length) {
        return "Recouper le bout, et le bord de " + length + ".";
    }

    @Override
    public String fewTrimEdge(String length) {
        return "Recouper le bord de " + length + ".";
    }

    @Override
    public String fewTrimEdges() {
        return "Ne recouper les bords que s’ils ne sont pas droits.";
    }

    @Override
    public String fewTrimEnd() {
        return "Recouper le bout au ras.";
    }

    @Override
    public String fewWhipOpen() {
        return "Ouvrir et repasser à plat.";
    }

    @Override
    public String fewWhipPress(String face, String narrow, String wide, String wrapping) {
        return "Rabattre " + wide + " de " + wrapping + ", " + narrow + " de l’autre, vers le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String fewWhipPressShort(String face) {
        return "Rabattre les deux bords vers le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String fewWhipSew() {
        return "Aligner les deux plis. Surjeter à la main, tous les 1 mm environ.";
    }

    @Override
    public String frenchOpen(String face, String wrapped) {
        return "Ouvrir la couture à plat, " + (face.equals("front") ? "recto" : "verso") + " vers le haut. Coucher au fer le rabat vers " + wrapped + ".";
    }

    @Override
    public String frenchOther(String face) {
        return "Repasser la couture, puis plier le long de la piqûre dans l’autre sens, " + (face.equals("front") ? "recto contre recto" : "verso contre verso") + ".";
    }

    @Override
    public String frenchSecond(String band) {
        return "Piquer à " + band + " du pli. Points d’arrêt aux deux bouts. Les bords vifs sont maintenant enfermés.";
    }

    @Override
    public String frenchSharp() {
        return "Bien marquer le pli au fer.";
    }

    @Override
    public String frenchSnip() {
        return "Couper les fils libres pour qu’aucun ne se voie.";
    }

    @Override
    public String frenchTrim(String length) {
        return "Recouper les deux marges à " + length + ".";
    }

    @Override
    public String hemCheck(String size) {
        return "Le carré doit maintenant mesurer " + size + ", largeur × hauteur, recto vers le haut.";
    }

    @Override
    public String hemClip(String length) {
        return "Couper un petit triangle à chaque coin : " + length + " le long des deux bords, pas plus. Le coin de l’ourlet sera moins épais.";
    }

    @Override
    public String hemClipTitle() {
        return "Dégarnir les quatre coins";
    }

    @Override
    public String hemClosePush() {
        return "Chaque ourlet de côté est ouvert aux deux bouts. Rentrer les fils libres avec le chas d’une aiguille.";
    }

    @Override
    public String hemCloseSew() {
        return "Fermer chaque ouverture à la main de quelques petits points.";
    }

    @Override
    public String hemCloseTitle() {
        return "Fermer les quatre coins";
    }

    @Override
    public String hemCreases() {
        return "Rouvrir l’ourlet. À chaque coin, les plis se croisent. Le coin fini sera là où se croisent les plis intérieurs.";
    }

    @Override
    public String hemFold(String edges, String length) {
        return "Replier " + length + " " + (edges.equals("topBottom") ? "le long du bord supérieur et du bord inférieur" : edges.equals("sides") ? "le long du bord gauche et du bord droit, y compris le bout des ourlets déjà cousus" : "le long des quatre bords") + ". Repasser.";
    }

    @Override
    public String hemFoldAgain(String length) {
        return "Replier encore de " + length + ", pour enfermer le bord vif. Repasser et épingler.";
    }

    @Override
    public String hemFoldOnce(String edges, String length) {
        return "Replier " + length + " " + (edges.equals("topBottom") ? "le long du bord supérieur et du bord inférieur" : edges.equals("sides") ? "le long du bord gauche et du bord droit, y compris le bout des ourlets déjà cousus" : "le long des quatre bords") + ". Repasser et épingler. Le bord vif reste visible.";
    }

    @Override
    public String hemLay(String face) {
        return "Poser le carré, " + (face.equals("front") ? "recto" : "verso") + " vers le haut. L’ourlet se rabat sur le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String hemMitreFold(String face) {
        return "Plier le coin en deux, " + (face.equals("front") ? "recto contre recto" : "verso contre verso") + ", pour que ses deux bords vifs se superposent.";
    }

    @Override
    public String hemMitreMark(String length) {
        return "Marquer les bords vifs à " + length + " de la pointe du coin. Depuis cette marque, tracer une ligne d’équerre avec le pli en diagonale. Elle rejoint le pli là où se croisent les plis intérieurs.";
    }

    @Override
    public String hemMitreStitch(String about) {
        return "Piquer sur la ligne, du pli jusqu’à la marque extérieure, " + about + ". Points d’arrêt aux deux bouts. Laisser le reste ouvert jusqu’au bord vif : il sera rentré.";
    }

    @Override
    public String hemMitreStitchOut() {
        return "Piquer sur la ligne, du pli jusqu’au bord vif. Points d’arrêt aux deux bouts.";
    }

    @Override
    public String hemMitreTitle() {
        return "Les quatre coins à onglet, l’un après l’autre";
    }

    @Override
    public String hemMitreTrim(String about) {
        return "Couper la pointe à côté de la ligne, en partant à " + about + " sur chaque bord vif. Ouvrir la petite couture au fer et retourner le coin.";
    }

    @Override
    public String hemPressTitle() {
        return "Marquer l’ourlet au fer";
    }

    @Override
    public String hemRoundCorner() {
        return "À chaque coin, s’arrêter aiguille piquée, lever le pied et tourner le carré. À la fin, piquer par-dessus les premiers points. Repasser.";
    }

    @Override
    public String hemRoundFold() {
        return "Replier l’ourlet sur ses marques et bien pousser les coins. Repasser et épingler.";
    }

    @Override
    public String hemRoundStitch(String edge, String from) {
        return "Surpiquer tout autour, à " + edge + " " + (from.equals("fold") ? "du pli intérieur" : "du bord vif") + ". Commencer au milieu d’un côté.";
    }

    @Override
    public String hemRoundTitle() {
        return "Piquer l’ourlet";
    }

    @Override
    public String hemSidesTitle() {
        return "Ourler la gauche et la droite";
    }

    @Override
    public String hemSquareDiagonals(String length) {
        return "Mesurer les deux diagonales. Chacune doit avoir environ " + length + ". Si elles diffèrent, tirer doucement sur la plus courte et repasser.";
    }

    @Override
    public String hemSquarePress(String face) {
        return "Repasser tout le carré à plat, " + (face.equals("front") ? "recto" : "verso") + " vers le haut.";
    }

    @Override
    public String hemSquareTitle() {
        return "Mettre d’équerre";
    }

    @Override
    public String hemSquareTrim() {
        return "Ne recouper les quatre bords que là où ils ne sont pas droits.";
    }

    @Override
    public String hemStitch(String edge, String from, String stitch) {
        return "Surpiquer à " + edge + " " + (from.equals("fold") ? "du pli intérieur" : "du bord vif") + ", avec des points de " + stitch + ". Points d’arrêt aux deux bouts. Repasser.";
    }

    @Override
    public String hemThick(String places, String plies, String side) {
        return "Épais au bord " + (side.equals("left") ? "gauche" : side.equals("right") ? "droit" : side.equals("top") ? "supérieur" : "inférieur") + ", à environ " + places + " " + (side.equals("left") ? "du haut" : side.equals("right") ? "du haut" : "de la gauche") + " (vu du recto). Des coutures y entrent dans l’ourlet : jusqu’à " + plies + " épaisseurs.";
    }

    @Override
    public String hemThickCorners(String plies) {
        return "Épais à chaque coin : jusqu’à " + plies + " épaisseurs. Commencer un peu plus loin et coudre le coin en dernier. Y tourner le volant.";
    }

    @Override
    public String hemTopBottomTitle() {
        return "Ourler le haut et le bas";
    }

    @Override
    public String lappedHook(String band, String wrapping) {
        return "Accrocher les plis l’un dans l’autre, " + wrapping + " dessus, jusqu’à ce qu’ils se chevauchent de " + band + " et que les bords vifs se touchent à l’intérieur. Épingler.";
    }

    @Override
    public String lappedLay(String added, String face, String side, String work) {
        return "Poser " + work + ", " + (face.equals("front") ? "recto" : "verso") + " vers le haut. Poser " + added + " à côté, même face vers le haut, " + (side.equals("left") ? "à gauche" : side.equals("right") ? "à droite" : side.equals("top") ? "en haut" : "en bas") + ".";
    }

    @Override
    public String lappedPress(String face, String turn, String under, String wrapped, String wrapping) {
        return "Rabattre au fer " + turn + " le long du bord de " + wrapping + " vers le " + (face.equals("front") ? "verso" : "recto") + ", et " + under + " le long du bord de " + wrapped + " vers le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String lappedStitch(String edge, String stitch) {
        return "Surpiquer au bord, à " + edge + " du pli visible, avec des points de " + stitch + ". Retourner et surpiquer l’autre pli. Points d’arrêt aux deux bouts. Repasser.";
    }

    @Override
    public String layAll(int n) {
        return (n == 0 || n == 1 ? "Disposer la pièce comme sur l’image du recto, avec son étiquette." : "Disposer les " + n + " pièces comme sur l’image du recto, chacune avec son étiquette.");
    }

    @Override
    public String layBars() {
        return "La pièce centrale est au milieu. Une bande est nommée par son tour et son rang : 2C est la troisième bande du deuxième tour. 2C·1 est la première partie de cette bande.";
    }

    @Override
    public String layLetters() {
        return "Une lettre est une petite tâche. Assembler d’abord tout A, puis tout B et ainsi de suite, dans l’ordre des numéros. Garder chaque lettre en une pile à part.";
    }

    @Override
    public String layLook() {
        return "Prendre du recul et regarder. C’est le dernier moment pour échanger deux pièces de même taille.";
    }

    @Override
    public String layStack() {
        return "Empiler les pièces dans l’ordre de couture, la première dessus.";
    }

    @Override
    public String layTitle() {
        return "Tout disposer";
    }

    @Override
    public String layWork() {
        return "Dans les étapes, « l’ouvrage » désigne tout ce qui est déjà cousu.";
    }

    @Override
    public String lessThan(String length) {
        return "moins de " + length;
    }

    @Override
    public String nameBar(String label) {
        return "la bande " + label;
    }

    @Override
    public String nameBlock(String letters) {
        return "l’ensemble " + letters;
    }

    @Override
    public String nameFree(String label) {
        return "la pièce " + label;
    }

    @Override
    public String nameHearth() {
        return "la pièce centrale";
    }

    @Override
    public String nameJoined(String label) {
        return "la bande " + label + " déjà assemblée";
    }

    @Override
    public String nameOffcut(String number) {
        return "la chute " + number;
    }

    @Override
    public String namePair(String from, String to) {
        return "la paire " + from + " et " + to;
    }

    @Override
    public String namePart(String label) {
        return "la partie " + label;
    }

    @Override
    public String namePartTo(String from, String to) {
        return "la partie " + from + " à " + to;
    }

    @Override
    public String namePatch(String label) {
        return "la pièce " + label;
    }

    @Override
    public String namePiece(String label) {
        return "le morceau " + label;
    }

    @Override
    public String nameScrap() {
        return "une chute trop petite pour être gardée";
    }

    @Override
    public String nameStepBlock(String step) {
        return "l’ensemble de l’étape " + step;
    }

    @Override
    public String nameStrip(String label) {
        return "la bandelette " + label;
    }

    @Override
    public String nameThePiece() {
        return "le morceau";
    }

    @Override
    public String nameWork() {
        return "l’ouvrage";
    }

    @Override
    public String nameWorkTo(String from, String to) {
        return "l’ouvrage " + from + " à " + to;
    }

    @Override
    public String needPiece(String piece, String size) {
        return "morceau " + piece + ", " + size;
    }

    @Override
    public String needPieceDone(String piece, String size) {
        return "morceau " + piece + ", " + size + ", déjà coupé";
    }

    @Override
    public String seamCheck(String size, String what) {
        return (what.equals("bar") ? "La bande" : "L’ouvrage") + " doit maintenant mesurer " + size + ", largeur × hauteur, recto vers le haut.";
    }

    @Override
    public String seamEdgestitch(String edge, int plies) {
        return "Surpiquer au bord, à " + edge + " du pli, à travers les " + (plies == 4 ? "quatre" : "" + plies) + " épaisseurs. Points d’arrêt aux deux bouts. Repasser.";
    }

    @Override
    public String seamEven() {
        return "Faire coïncider les deux bords. Épingler.";
    }

    @Override
    public String seamFold(String band, String under, String wrapped, String wrapping) {
        return "Replier de " + under + " le bord vif de " + wrapping + " pour envelopper le bord vif de " + wrapped + ". Le pli est à " + band + " de la piqûre. Repasser et épingler.";
    }

    @Override
    public String seamLay(String added, String face, String part, String side, String work) {
        return "Poser " + work + ", " + (face.equals("front") ? "recto" : "verso") + " vers le haut. " + (side.equals("left") ? "Tourner " + added + " dessus comme une page" : side.equals("right") ? "Tourner " + added + " dessus comme une page" : side.equals("top") ? "Rabattre " + added + " dessus vers le bas" : "Rabattre " + added + " dessus vers le haut") + ", " + (face.equals("front") ? "recto" : "verso") + " vers le bas, le long du " + (part.equals("end") ? "bout" : "bord") + " " + (side.equals("left") ? "gauche" : side.equals("right") ? "droit" : side.equals("top") ? "supérieur" : "inférieur") + " de " + work + ".";
    }

    @Override
    public String seamLevel(String start) {
        return "Faire coïncider les bouts " + (start.equals("left") ? "à gauche" : start.equals("right") ? "à droite" : start.equals("top") ? "en haut" : "en bas") + ".";
    }

    @Override
    public String seamOffset(String length, String wrapped, String wrapping) {
        return "Laisser le bord de " + wrapping + " dépasser de " + length + " le bord de " + wrapped + ". Cette marge plus large enveloppera l’autre. Épingler.";
    }

    @Override
    public String seamOpen(String face, String wrapped, String wrapping) {
        return "Ouvrir la couture à plat, " + (face.equals("front") ? "recto" : "verso") + " vers le haut. Coucher au fer les deux marges vers " + wrapped + " ; la plus large, celle de " + wrapping + ", est dessus.";
    }

    @Override
    public String seamOpenEven(String face, String wrapped, String wrapping) {
        return "Ouvrir la couture à plat, " + (face.equals("front") ? "recto" : "verso") + " vers le haut. Coucher au fer les deux marges vers " + wrapped + " ; celle de " + wrapping + " est dessus.";
    }

    @Override
    public String seamRunsPast(String added, String end, String length) {
        return added + " mesure " + length + " de trop en longueur et dépasse " + (end.equals("left") ? "à gauche" : end.equals("right") ? "à droite" : end.equals("top") ? "en haut" : "en bas") + ".";
    }

    @Override
    public String seamStitch(String added, String stitch, String top) {
        return "Piquer à " + top + " du bord de " + added + ", au-dessus, avec des points de " + stitch + ". Points d’arrêt aux deux bouts.";
    }

    @Override
    public String seamStitchBoth(String added, String below, String stitch, String top, String work) {
        return "Piquer à " + top + " du bord de " + added + ", au-dessus, avec des points de " + stitch + ". C’est à " + below + " du bord de " + work + ", au-dessous. Points d’arrêt aux deux bouts.";
    }

    @Override
    public String seamThickAt(String end, String places) {
        return places + " " + (end.equals("top") ? "du haut" : "de la gauche");
    }

    @Override
    public String seamTrimAllowance(String length, String wrapped) {
        return "Recouper la marge de couture de " + wrapped + " à " + length + ".";
    }

    @Override
    public String seamTrimEdge(String across, String added, String length, String way) {
        return "Recouper droit le bord extérieur de " + added + ", de " + length + ". L’ouvrage a alors " + across + " de " + (way.equals("wide") ? "large" : "haut") + ".";
    }

    @Override
    public String seamTrimEnd(String added, String work) {
        return "Couper le bout de " + added + " au ras de " + work + ".";
    }

    @Override
    public String seamWarning(String end, String places, String plies) {
        return "Épais à environ " + places + " " + (end.equals("top") ? "du bout supérieur" : "du bout gauche (vu du recto)") + " : cette couture en croise une autre, jusqu’à " + plies + " épaisseurs. Ralentir, ou tourner le volant.";
    }

    @Override
    public String thickAt(String places) {
        return "Épais à " + places;
    }

    @Override
    public String thickBand(String plies) {
        return "En section courante, une couture a " + plies + " épaisseurs.";
    }

    @Override
    public String thickFoot() {
        return "En y arrivant, glisser une chute pliée derrière le pied presseur pour le tenir à niveau. Allonger un peu le point et tourner le volant. Ne jamais pousser ni tirer le tissu : cela tord l’aiguille.";
    }

    @Override
    public String thickHem() {
        return "Épais où des coutures entrent";
    }

    @Override
    public String thickPlace(String height, int n, String plies) {
        return (n == 0 || n == 1 ? "Jusqu’à " + plies + " épaisseurs à " + n + " endroit, environ " + height + "." : "Jusqu’à " + plies + " épaisseurs à " + n + " endroits, environ " + height + ".");
    }

    @Override
    public String thickPress() {
        return "Avant de coudre sur un endroit épais, bien l’aplatir à la vapeur. Ou y poser une chute et l’aplatir au marteau.";
    }

    @Override
    public String threadHand(String percent, String ply, String stitch, String tail, String total) {
        return "Environ " + total + " en tout. Régler la longueur de point sur " + stitch + ". Compté pour un tissu de " + ply + " d’épaisseur, " + tail + " de fil aux deux bouts de chaque piqûre et " + percent + " en plus.";
    }

    @Override
    public String threadMachine(String each, String percent, String ply, String stitch, String tail, String total) {
        return "Environ " + total + " en tout ; en enrouler la moitié, " + each + ", sur des canettes. Régler la longueur de point sur " + stitch + ". Compté pour un tissu de " + ply + " d’épaisseur, " + tail + " de fil aux deux bouts de chaque piqûre et " + percent + " en plus.";
    }

    @Override
    public String titleJoin(String added, String work) {
        return "Assembler " + added + " et " + work;
    }

    @Override
    public String titleSeam(String added, String side, String work) {
        return added + " " + (side.equals("left") ? "à gauche de" : side.equals("right") ? "à droite de" : side.equals("top") ? "au-dessus de" : "au-dessous de") + " " + work;
    }

    @Override
    public String toolCutter() {
        return "Cutter rotatif, règle et tapis de coupe, ou ciseaux, règle et craie";
    }

    @Override
    public String toolHand() {
        return "Aiguilles fines à coudre à la main et machine à coudre pour l’ourlet";
    }

    @Override
    public String toolIron() {
        return "Fer et planche à repasser, un peu d’eau ou un vaporisateur";
    }

    @Override
    public String toolMachine(String needle) {
        return "Machine à coudre avec une aiguille neuve, taille " + needle;
    }

    @Override
    public String toolPins() {
        return "Épingles ou pinces, découseur, petits ciseaux";
    }

    @Override
    public String toolSlips() {
        return "Les étiquettes, ou de petits papiers, et une épingle pour chacune";
    }

    @Override
    public String toolThread() {
        return "Fil, voir « Fil » dans ce guide";
    }

    @Override
    public String touchBoth(String added, String ofAdded, String ofWork, String work) {
        return (ofAdded.equals("right") ? "L’endroit" : "L’envers") + " de " + added + " contre " + (ofWork.equals("right") ? "l’endroit" : "l’envers") + " de " + work + ".";
    }

    @Override
    public String touchFacing(String one, String other, String side) {
        return (side.equals("right") ? "L’endroit" : "L’envers") + " de " + one + " contre " + other + ".";
    }

    @Override
    public String touchLayBoth(String added, String ofAdded, String ofWork, String work) {
        return (ofAdded.equals("right") ? "L’endroit" : "L’envers") + " de " + added + " contre " + (ofWork.equals("right") ? "l’endroit" : "l’envers") + " de " + work + ".";
    }

    @Override
    public String touchLayFacing(String one, String other, String side) {
        return (side.equals("right") ? "L’endroit" : "L’envers") + " de " + one + " contre " + other + ".";
    }

    @Override
    public String touchLayMixed() {
        return "Certaines pièces endroit à l’intérieur, d’autres envers à l’intérieur, comme sur l’image.";
    }

    @Override
    public String touchLayTogether(String side) {
        return (side.equals("right") ? "Endroit contre endroit." : "Envers contre envers.");
    }

    @Override
    public String touchMixed() {
        return "Certaines pièces endroit à l’intérieur, d’autres envers à l’intérieur, comme sur l’image.";
    }

    @Override
    public String touchTogether(String side) {
        return (side.equals("right") ? "Endroit contre endroit." : "Envers contre envers.");
    }

    @Override
    public String trialCheck(String size) {
        return "Ensemble, ils doivent mesurer " + size + ". Mesurer d’abord en travers de la couture.";
    }

    @Override
    public String trialCut(String side) {
        return "Couper deux carrés d’essai de " + side + " de côté et les assembler comme à la première couture ci-dessous.";
    }

    @Override
    public String trialFells(String fells) {
        return "Toutes les coutures sont rabattues sur le " + (fells.equals("front") ? "recto" : "verso") + " ; le " + (fells.equals("front") ? "verso" : "recto") + " reste lisse. C’est ainsi qu’on distingue les deux faces.";
    }

    @Override
    public String trialFree() {
        return "Mesurer après chaque étape. Ici, rien n’est coupé trop long. S’il y a plus d’un fil ou deux d’écart, une partie ne rejoint plus sa voisine.";
    }

    @Override
    public String trialLeeway(String leeway) {
        return "Mesurer après chaque étape. Chaque bande est coupée " + leeway + " trop longue : un petit écart est sans gravité. S’il est plus grand, découdre.";
    }

    @Override
    public String trialLength(String loss, String narrow, String stitch, String wide) {
        return "Régler la longueur de point sur " + stitch + ". La couture prend " + narrow + " d’un bord et " + wide + " de l’autre : " + loss + " en tout.";
    }

    @Override
    public String trialTitle() {
        return "Essayer la couture sur deux chutes";
    }

    @Override
    public String trialWidth() {
        return "Si l’essai est trop étroit, piquer une épaisseur de fil plus près du bord. S’il est trop large, piquer une épaisseur de fil plus loin.";
    }

    @Override
    public String washAll() {
        return "Tous les tissus ont été lavés.";
    }

    @Override
    public String washDye(String fabrics) {
        return "Les couleurs foncées peuvent déteindre sur les claires. Faire tremper un coin de " + fabrics + " une demi-heure dans de l’eau chaude savonneuse et le presser mouillé sur un tissu blanc. S’il tache, laver ce tissu seul jusqu’à ce qu’il ne tache plus, ou s’en passer.";
    }

    @Override
    public String washMixed(String pieces, String which) {
        return "Des morceaux lavés et non lavés sont mélangés. " + (which.equals("washed") ? "Lavés" : "Non lavés") + " : " + pieces + ".";
    }

    @Override
    public String washMixedThen(String length) {
        return "Laver d’abord ceux qui ne le sont pas et les mesurer de nouveau. Sur le côté de ce carré, ils pourraient rétrécir d’environ " + length + " de plus que les autres, et le tissu gondolerait.";
    }

    @Override
    public String washNone() {
        return "Rien n’a été lavé. Tout laver maintenant, comme on lavera le carré fini, et mesurer de nouveau. Si le tissu a rétréci, refaire le plan. Ou ne rien laver du tout.";
    }

    @Override
    public String washNoneSaid() {
        return "D’après la réserve, rien n’a été lavé. Tout laver maintenant, comme on lavera le carré fini, et mesurer de nouveau. Si le tissu a rétréci, refaire le plan. Ou ne rien laver du tout.";
    }

    @Override
    public String washSomeUnknown(int n, String pieces) {
        return (n == 0 || n == 1 ? "La réserve ne dit pas s’il est lavé : " + pieces + ". Dans le doute, laver." : "La réserve ne dit pas s’ils sont lavés : " + pieces + ". Dans le doute, laver.");
    }

    @Override
    public String washUnknown() {
        return "La réserve ne dit pas ce qui a été lavé. Tout laver comme on lavera le carré fini, et mesurer de nouveau. Si le tissu a rétréci, refaire le plan. Ou ne rien laver du tout.";
    }

    @Override
    public String washingAlone() {
        return "Laver le carré fini seul la première fois, aussi doucement que l’exige son tissu le plus délicat. Dans le doute, à la main à l’eau fraîche.";
    }

    @Override
    public String washingSquare(String face) {
        return "Le tirer d’équerre encore humide et le sécher à plat. Le repasser sur le " + (face.equals("front") ? "recto" : "verso") + " avant qu’il soit tout à fait sec.";
    }

    @Override
    public String whipOpen(String face) {
        return "Ouvrir la couture et la repasser à plat. Les bords vifs restent sur le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String whipPress(String face, String narrow, String wide, String wrapped, String wrapping) {
        return "Rabattre au fer " + wide + " le long du bord de " + wrapping + " et " + narrow + " le long du bord de " + wrapped + " vers le " + (face.equals("front") ? "recto" : "verso") + ".";
    }

    @Override
    public String whipSew() {
        return "Faire coïncider les deux plis. Les coudre à la main à points de surjet, tous les 1 mm environ. Chaque point prend un fil ou deux des deux plis.";
    }
}
