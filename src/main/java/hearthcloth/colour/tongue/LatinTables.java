package hearthcloth.colour.tongue;

/** What words for the look of cloth mean in English: French, German, Spanish. A star stands for the endings of the language. */
final class LatinTables {

    static final Vocabulary FRENCH = Vocabulary.read(Vocabulary.Habit.TONE_BEHIND, """
            black: noir*
            white: blanc* blanche blanches
            offwhite: blanccasse
            grey: gris* souris
            red: rouge*
            orange: orangé* oranges
            yellow: jaune*
            green: vert*
            blue: bleu*
            purple: pourpre* violet* violette violettes
            pink: roses rosé
            brown: marron marrons brun* brune brunes
            beige: beiges
            cream: crème crèmes
            ecru: écru*
            ivory: ivoire
            natural: naturel* naturelle naturelles
            sky: ciel
            royalblue: roi
            turquoise: turquoises
            teal: canard
            petrol: pétrole
            lavender: lavande
            lilac: lilas
            plum: prune
            burgundy: bordeaux bourgogne
            wine: lie
            raspberry: framboise
            brick: brique
            rust: rouille
            terracotta: terrecuite
            salmon: saumon
            coral: corail
            peach: pêche
            apricot: abricot
            mustard: moutarde
            lemon: citron
            saffron: safran
            ochre: ocre
            golden: doré* dorée dorées
            silver: argent argenté*
            khaki: kaki
            olive: olives
            bottle: bouteille sapin
            forest: forêt
            moss: mousse
            mint: menthe
            sage: sauge
            emerald: émeraude
            caramel: caramels
            chocolate: chocolat
            coffee: café
            chestnut: châtaigne
            sand: sable
            slate: ardoise
            anthracite: anthracites
            charcoal: charbon
            rose: vieuxrose
            light: clair* claire claires
            dark: foncé* foncée foncées sombre sombres
            deep: profond*
            pale: pâle pâles
            bright: vif vifs vive vives
            dusty: passé délavé*
            linen: lin lins
            denim: jean jeans
            corduroy: côtelé velours
            twill: sergé
            hemp: chanvre
            calico: calicot
            check: carreau carreaux vichy écossais
            stripe: rayure rayures rayé* rayée rayées
            dot: pois
            floral: fleur fleurs fleuri* fleurie fleuries
            leaf: feuille feuilles feuillage
            star: étoile étoiles étoilé*
            bird: oiseau oiseaux
            print: imprimé* imprimée imprimées
            small: petit* petite petites
            large: grand* grande grandes
            cotton: coton
            silk: soie
            wool: laine
            cloth: tissu toile
            """, "", "e", "s", "es");

    static final Vocabulary GERMAN = Vocabulary.read(Vocabulary.Habit.COMPOUNDS, """
            black: schwarz*
            white: weiß* weiss*
            offwhite: rohweiß* wollweiß* cremeweiß*
            grey: grau*
            red: rot*
            orange: orangen* orangefarben*
            yellow: gelb*
            green: grün* gruen*
            blue: blau*
            purple: lila violett* lilafarben*
            pink: rosa rosafarben*
            brown: braun*
            beige: beigefarben*
            cream: creme cremefarben*
            ecru: ungebleicht*
            ivory: elfenbein elfenbeinfarben*
            natural: natur naturfarben* naturleinen
            navy: marineblau* nachtblau*
            sky: himmelblau*
            royalblue: königsblau* royalblau*
            cornflower: kornblumenblau*
            turquoise: türkis* tuerkis* türkisfarben*
            teal: petrolblau* blaugrün* tealblau*
            lavender: lavendel lavendelfarben*
            lilac: flieder fliederfarben*
            plum: pflaume pflaumenblau* pflaumenfarben*
            aubergine: auberginefarben*
            wine: weinrot* bordeauxrot*
            raspberry: himbeere himbeerrot*
            cherry: kirschrot*
            brick: ziegelrot*
            rust: rost rostrot* rostbraun* rostfarben*
            salmon: lachs lachsfarben* lachsrosa
            coral: koralle korallenrot* korallenfarben*
            peach: pfirsich pfirsichfarben*
            apricot: aprikose apricotfarben* aprikosenfarben*
            mustard: senf senfgelb* senffarben*
            lemon: zitronengelb*
            ochre: ocker ockergelb* ockerfarben*
            gold: golden* goldfarben*
            silver: silber silbern* silberfarben* silbergrau*
            khaki: khakifarben*
            olive: oliv olivgrün* olivfarben*
            bottle: flaschengrün*
            forest: tannengrün* waldgrün*
            moss: moosgrün*
            mint: minze mintgrün*
            sage: salbei salbeigrün*
            emerald: smaragd smaragdgrün*
            lime: lindgrün*
            chocolate: schokobraun* schokoladenbraun*
            caramel: karamell karamellfarben*
            chestnut: kastanienbraun*
            sand: sandfarben*
            slate: schiefer schiefergrau*
            anthracite: anthrazit anthrazitfarben*
            charcoal: kohle
            rose: altrosa altrosafarben*
            light: hell*
            dark: dunkel dunkle dunkler dunkles dunklen
            deep: tief*
            pale: blass* zart*
            bright: leuchtend* knallig* kräftig*
            dusty: verwaschen* ausgewaschen*
            linen: leinen leinens
            denim: jeansstoff jeans
            corduroy: cord cordsamt samt
            twill: köper
            hemp: hanf
            calico: nessel
            check: kariert* karo karos vichykaro
            stripe: gestreift* streifenmuster ringel geringelt*
            dot: gepunktet* punkt punkte punkten tupfen getupft*
            floral: geblümt* blumen blümchen blumenmuster
            leaf: blatt blätter blättern
            star: stern sterne sternen
            bird: vogel vögel vögeln
            print: bedruckt* gemustert* muster druck
            small: klein*
            large: groß*
            cotton: baumwolle baumwollstoff
            silk: seide
            wool: wolle
            cloth: stoff
            """, "", "e", "er", "es", "en", "em");

    static final Vocabulary SPANISH =
            Vocabulary.read(Vocabulary.Habit.TONE_BEHIND, """
            black: negro*
            white: blanco*
            grey: gris*
            red: rojo*
            orange: naranja* anaranjado*
            yellow: amarillo*
            green: verde*
            blue: azul*
            purple: morado* púrpura
            violet: violeta*
            pink: rosa* rosado*
            brown: marrón marrones pardo* café
            beige: beis
            cream: crema
            ecru: crudo*
            ivory: marfil
            natural: naturales
            navy: marino
            sky: celeste* cielo
            turquoise: turquesa*
            petrol: petróleo
            indigo: añil índigo
            lavender: lavanda
            lilac: lila*
            plum: ciruela
            aubergine: berenjena
            burgundy: burdeos granate*
            wine: vino
            raspberry: frambuesa
            cherry: cereza
            brick: ladrillo teja
            terracotta: terracotas
            salmon: salmón
            coral: corales
            peach: melocotón durazno
            apricot: albaricoque
            mustard: mostaza
            lemon: limón
            saffron: azafrán
            ochre: ocres
            golden: dorado*
            silver: plata plateado*
            khaki: caqui*
            olive: oliva
            bottle: botella
            moss: musgo
            mint: menta
            sage: salvia
            emerald: esmeralda
            chocolate: chocolates
            caramel: caramelo
            chestnut: castaño*
            cinnamon: canela
            sand: arena
            slate: pizarra
            charcoal: carbón
            fuchsia: fucsia*
            light: claro*
            dark: oscuro*
            deep: profundo*
            pale: pálido*
            bright: vivo* intenso*
            dusty: desteñido* gastado*
            linen: lino
            denim: vaquero* mezclilla
            corduroy: pana terciopelo
            twill: sarga
            hemp: cáñamo
            calico: calicó
            check: cuadro cuadros vichí escocés
            stripe: raya rayas rayado* listado*
            dot: lunar lunares topos
            floral: flor flores floreado*
            leaf: hoja hojas
            star: estrella estrellas
            bird: pájaro pájaros
            print: estampado*
            small: pequeño*
            large: grande*
            cotton: algodón
            silk: seda
            wool: lana
            cloth: tela
            """, "o", "a", "os", "as", "s", "es");

    private LatinTables() {}
}
