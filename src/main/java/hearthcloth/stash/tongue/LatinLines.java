package hearthcloth.stash.tongue;

/**
 * Lines in French, German and Spanish. Words that two languages share are told apart by what stands beside them: "large" is
 * wide only after "de" and a measure, "once" and "elf" are eleven only before a word for pieces, "ein Paar" is two and "ein
 * paar" no number at all.
 */
final class LatinLines {

    private static final String FRENCH_THINGS =
            "(?:bandes?|morceaux?|pi[eè]ces?|chutes?|coupons?|carr[eé]s?|rectangles?"
                    + "|restes?|bouts?|lés?|languettes?|bandelettes?)(?!\\p{L})(?:\\s+(?:de|du|des|en)(?!\\p{L})|\\s+d['’])?";

    private static final String FRENCH_UNITS =
            "(?:demi-)?(?:centim[eè]tres?|millim[eè]tres?|m[eè]tres?|pouces?|yards?|pieds?|cm|mm|m)(?!\\p{L})";

    static final LineTongue FRENCH = new LineTongue(
            "(?<!\\p{L})(?:band|morc|pi[eè]ce|chut|coupon|carr|rectang|rest|bout|lé|langu|demi|centim|millim|m[eè]tr|pouc|pied|par |sur "
                    + "|larg|laiz|long|douz|pair|sans|réver|doubl|deux|avec|endroit|un env|sens|non |pas |jamais|déjà|lav|prél|chacun)",
            """
            un=1 une=1 deux*=2 trois*=3 quatre*=4 cinq*=5 six=6 sept*=7 huit*=8 neuf*=9 dix*=10 onze*=11 douze*=12 treize*=13
            quatorze*=14 quinze*=15 seize*=16 dix-sept*=17 dix-huit*=18 dix-neuf*=19 vingt*=20
            """,
            "\\s(?:petites?\\s|petits\\s|grandes?\\s|grands\\s)?(?:" + FRENCH_THINGS + "|" + FRENCH_UNITS
                    + "|douzaines?|paires?)",
            """
            {{demi-m[eè]tre}} -> 1/2 m
            (\\d)\\s?-?(?:centim[eè]tres?)(?!\\p{L}) -> $1 cm
            (\\d)\\s?-?(?:millim[eè]tres?)(?!\\p{L}) -> $1 mm
            (\\d)\\s?-?(?:m[eè]tres?)(?!\\p{L}) -> $1 m
            (\\d)\\s?-?(?:pouces?)(?!\\p{L}) -> $1 in
            (\\d)\\s?-?(?:pieds?)(?!\\p{L}) -> $1 ft
            (?<![\\d/])1 1/2 m -> 1/2 m
            (\\d+) (m|yd|yards?) et demie?(?!\\p{L}) -> $1 1/2 $2
            ({u}|\\d)\\s+(?:par|sur)\\s+(?=\\d) -> $1 x_
            {l} de (?:large(?:ur)?|laize)(?!\\p{L}) -> $1 wide
            {l} de long(?:ueur)?(?!\\p{L}) -> $1 long
            {{laize(?: de)?}}\\s*:?\\s*(\\d{2,3})(?![\\d.,]|\\s?{u}) -> $1 cm wide
            {{(?:en |de )?(?:largeur|laize|large)(?: de)?}}\\s*:?\\s*{l} -> $1 wide
            {{(?:longueur|long)(?: de)?}}\\s*:?\\s*{l} -> $1 long
            (\\d+)\\s+carrés?\\s+de\\s+(?=\\d) -> $1 of them, squares of_
            {{carrés?\\s+de}}\\s+(?=\\d) -> squares of_
            {l} de côté -> $1 square
            {{(\\d+) douzaines?}}(?:\\s+de(?!\\p{L})|\\s+d['’])? -> $1 dozen,_
            {{(?:une )?demi-douzaine}}(?:\\s+de(?!\\p{L})|\\s+d['’])? -> 6 of them,_
            {{(\\d+) paires?}}(?:\\s+de(?!\\p{L})|\\s+d['’])? -> 2 of them,_
            dozen,\\s+"""
                    + FRENCH_THINGS + " -> dozen,_\n(2|6) of them,\\s+" + FRENCH_THINGS
                    + " -> $1 of them,_\n(?<![\\p{L}\\d.,/-])(\\d+)\\s+(?:petites?\\s|petits\\s|grandes?\\s|grands\\s)?"
                    + FRENCH_THINGS
                    + """
             -> $1 of them,_
            {{sans (?:endroit|envers)(?: ni (?:envers|endroit))?|réversible|double face|(?:les )?deux (?:faces|côtés) (?:identiques|pareils|pareilles)}} -> reversible
            {{(?:avec )?(?:un )?endroit(?: et (?:un )?envers)?|(?:avec )?un envers}} -> right side
            {{sans (?:sens|poil)}} -> no nap
            {{(?:avec )?(?:un )?(?:sens unique|sens du poil)|avec (?:un )?(?:sens|poil)|sens de la longueur}} -> nap lengthwise
            {{non lavée?s?|pas (?:encore )?lavée?s?|jamais lavée?s?}} -> not washed
            {{(?:déjà )?(?:pré)?lavée?s?}} -> washed
            {{chacune?s?}} -> ,
            """);

    private static final String GERMAN_THINGS =
            "(?:Streifen|Stück(?:e|en)?|Stueck|Teile?n?|Reste?n?|Stoffreste?n?|Quadrate?n?"
                    + "|Rechtecke?n?|Flicken|Bahnen?|Abschnitte?n?|Stoffstücke?n?|Lappen|Zuschnitte?n?)(?!\\p{L})(?:\\s+(?:von|aus)(?!\\p{L}))?";

    private static final String GERMAN_UNITS =
            "(?:Zentimetern?|Millimetern?|Metern?|Zoll|Yards?|Fuß|cm|mm|m)(?!\\p{L})";

    static final LineTongue GERMAN = new LineTongue(
            "(?<!\\p{L})(?:streif|stück|stueck|teil|rest|stoff|quadr|recht|flick|bahn|abschn|lapp|zuschn|zentim|millim|meter|zoll|fuß"
                    + "|halb|andert|einein|zweiein|mal |auf |im |bei |breit|läng|dutz|paar|beids|beide|ohne|wend|mit |einsei|in |strich|ungew|nicht"
                    + "|noch|gew|vorgew|jeweils)|\\dbreit",
            """
            ein=1 eine=1 einen=1 einem=1 zwei*=2 drei*=3 vier*=4 fünf*=5 fuenf*=5 sechs*=6 sieben*=7 acht*=8 neun*=9 zehn*=10
            elf=11 zwölf*=12 zwoelf*=12 dreizehn*=13 vierzehn*=14 fünfzehn*=15 sechzehn*=16 siebzehn*=17 achtzehn*=18
            neunzehn*=19 zwanzig*=20
            """,
            "\\s(?:kleine\\s|große\\s)?(?:" + GERMAN_THINGS + "|" + GERMAN_UNITS + "|Dutzend)",
            """
            {{(?:einen? )?halbe[rn]? Meter}} -> 1/2 m
            {{(?:anderthalb|eineinhalb) Meter}} -> 1 1/2 m
            {{zweieinhalb Meter}} -> 2 1/2 m
            (\\d)\\s?-?(?:Zentimetern?)(?!\\p{L}) -> $1 cm
            (\\d)\\s?-?(?:Millimetern?)(?!\\p{L}) -> $1 mm
            (\\d)\\s?-?(?:Metern?)(?!\\p{L}) -> $1 m
            (\\d)\\s?-?(?:Zoll)(?!\\p{L}) -> $1 in
            (\\d)\\s?-?(?:Fuß)(?!\\p{L}) -> $1 ft
            ({u}|\\d)\\s+(?:mal|auf)\\s+(?=\\d) -> $1 x_
            {l}\\s*-?(?:breite?[rsn]?)(?!\\p{L}) -> $1 wide
            {l}\\s*-?(?:lange?[rsn]?)(?!\\p{L}) -> $1 long
            {{(?:bei )?Breite}}\\s*:?\\s*{l} -> $1 wide
            {{Länge}}\\s*:?\\s*{l} -> $1 long
            (\\d+)\\s+Quadrate?n?\\s+(?:von|mit|zu|à|je|in)\\s+(?=\\d) -> $1 of them, squares of_
            {{Quadrate?n?\\s+(?:von|mit|zu|à)}}\\s+(?=\\d) -> squares of_
            {l}\\s+im Quadrat -> $1 square
            (\\d)\\s?-?({u})-?\\s?Quadrate?n?(?!\\p{L}) -> $1 $2 squares
            {{(?:ein )?halbes Dutzend}} -> 6 of them,_
            {{(\\d+) Dutzend}} -> $1 dozen,_
            (?-i:(?<![\\p{L}\\d])(?:ein|1) Paar(?!\\p{L})) -> 2 of them,_
            dozen,\\s+"""
                    + GERMAN_THINGS + " -> dozen,_\n(2|6) of them,\\s+" + GERMAN_THINGS
                    + " -> $1 of them,_\n(?<![\\p{L}\\d.,/-])(\\d+)\\s+(?:kleine\\s|große\\s)?" + GERMAN_THINGS
                    + """
             -> $1 of them,_
            {{beidseitig(?: gleich)?|beide Seiten gleich|ohne rechte Seite|wendbar}} -> reversible
            {{(?:mit )?(?:einer )?rechter Seite|(?:eine )?rechte Seite|einseitig(?: bedruckt)?}} -> right side
            {{ohne (?:Strich|Flor|Richtung)}} -> no nap
            {{mit (?:Strich|Flor|Richtung)|(?:in )?Strichrichtung|(?:in )?Längsrichtung}} -> nap lengthwise
            {{ungewaschene?[rsn]?|(?:noch )?nicht gewaschen}} -> not washed
            {{(?:vor)?gewaschene?[rsn]?}} -> washed
            {{jeweils}} -> ,
            """);

    private static final String SPANISH_THINGS =
            "(?:tiras?|piezas?|trozos?|retal(?:es)?|retazos?|cuadrados?|rectángulos?|recortes?"
                    + "|pedazos?|cortes?|sobrantes?)(?!\\p{L})(?:\\s+del?(?!\\p{L}))?";

    private static final String SPANISH_UNITS =
            "(?:centímetros?|milímetros?|metros?|pulgadas?|yardas?|pies?|cm|mm|m)(?!\\p{L})";

    static final LineTongue SPANISH = new LineTongue(
            "(?<!\\p{L})(?:tira|pieza|trozo|reta|cuadr|rect|recor|pedaz|corte|sobr|centím|milím|metro|pulg|yarda|pie|medi|por |ancho|largo"
                    + "|long|docen|par|de |rever|sin |igual|con |un |no |ya |lavad|prelav|cada|c/u)",
            """
            un=1 una=1 uno=1 dos*=2 tres*=3 cuatro*=4 cinco*=5 seis*=6 siete*=7 ocho*=8 nueve*=9 diez*=10 once=11 doce*=12
            trece*=13 catorce*=14 quince*=15 dieciséis*=16 diecisiete*=17 dieciocho*=18 diecinueve*=19 veinte*=20
            """,
            "\\s(?:pequeñ[oa]s\\s|grandes\\s)?(?:" + SPANISH_THINGS + "|" + SPANISH_UNITS + "|docenas?|pares?)",
            """
            {{medio metro}} -> 1/2 m
            {{media yarda}} -> 1/2 yd
            {{(?:un )?metro y medio}} -> 1 1/2 m
            (\\d)\\s?-?(?:centímetros?)(?!\\p{L}) -> $1 cm
            (\\d)\\s?-?(?:milímetros?)(?!\\p{L}) -> $1 mm
            (\\d)\\s?-?(?:metros?)(?!\\p{L}) -> $1 m
            (\\d)\\s?-?(?:pulgadas?)(?!\\p{L}) -> $1 in
            (\\d)\\s?-?(?:yardas?)(?!\\p{L}) -> $1 yd
            (\\d)\\s?-?(?:pies)(?!\\p{L}) -> $1 ft
            (\\d+) (m|yd) y medi[oa](?!\\p{L}) -> $1 1/2 $2
            ({u}|\\d)\\s+por\\s+(?=\\d) -> $1 x_
            {l} de ancho(?!\\p{L}) -> $1 wide
            {l} de (?:largo|longitud)(?!\\p{L}) -> $1 long
            {{(?:de )?ancho(?: de)?}}\\s*:?\\s*{l} -> $1 wide
            {{(?:largo|longitud)(?: de)?}}\\s*:?\\s*{l} -> $1 long
            (\\d+)\\s+cuadrados?\\s+de\\s+(?=\\d) -> $1 of them, squares of_
            {{cuadrados?\\s+de}}\\s+(?=\\d) -> squares of_
            {l} de lado -> $1 square
            {{media docena}}(?:\\s+de(?!\\p{L}))? -> 6 of them,_
            {{(\\d+) docenas?}}(?:\\s+de(?!\\p{L}))? -> $1 dozen,_
            {{(?:un|1) par}}(?:\\s+de(?!\\p{L}))? -> 2 of them,_
            dozen,\\s+"""
                    + SPANISH_THINGS + " -> dozen,_\n(2|6) of them,\\s+" + SPANISH_THINGS
                    + " -> $1 of them,_\n(?<![\\p{L}\\d.,/-])(\\d+)\\s+(?:pequeñ[oa]s\\s|grandes\\s)?" + SPANISH_THINGS
                    + """
             -> $1 of them,_
            {{reversibles?|sin (?:derecho|revés)(?: ni (?:revés|derecho))?|igual por (?:los dos|ambos) lados}} -> reversible
            {{con (?:derecho|revés)(?: y (?:revés|derecho))?|de una sola cara}} -> right side
            {{sin (?:pelo|dirección|sentido)}} -> no nap
            {{con (?:pelo|dirección|sentido)|(?:de )?un solo sentido}} -> nap lengthwise
            {{sin lavar|no lavad[oa]s?}} -> not washed
            {{(?:ya )?(?:pre)?lavad[oa]s?}} -> washed
            {{cada un[oa]|c/u}} -> ,
            """);

    /** The small words between a measure and what it measures, when all else is read; and dozens. */
    static final LineTongue JOINS = new LineTongue(
            "\\d dozen|\\s(?:y|et|und|de|du|des|del|en|à|von|aus|zu|je|mit)\\s|\\sd['’]", "", "(?!)", """
            {{1 dozen}},? -> 12 of them,_
            {{2 dozen}},? -> 24 of them,_
            {{3 dozen}},? -> 36 of them,_
            {{4 dozen}},? -> 48 of them,_
            {{5 dozen}},? -> 60 of them,_
            (long|wide)\\s+(?:y|et|und)\\s+(?=\\d) -> $1,_
            \\s(?:de|du|en|à|von|aus|zu|je|mit)\\s+(?=\\d) -> ,_
            (\\d\\s?{u})\\s+(?:de|du|des|del|en|von|aus)\\s+(?=\\p{L}) -> $1,_
            (\\d\\s?{u})\\s+d['’](?=\\p{L}) -> $1,_
            """);

    private LatinLines() {}
}
