// German for the search: what newcomers call the things that the answers have one word for. Without accents, as typed words are read.
import { stemmer } from '@orama/stemmers/german'
import type { Vocabulary } from './vocabulary.ts'

export const german: Vocabulary = {
  small:
    'aber alle alles als also am an auch auf aus bei beim bin bis bitte bloss da damit dann das dass dem den der des dich die dies diese diesem diesen dieser dieses dir doch du durch ein eine einem einen einer eines er es etwas euch fur gar gegen gerne geht gibt guck hab habe haben hallo hat hatte hi hier ich ihm ihn ihr im in ins ist ja jemand jetzt kann kannst konnen konnte konnt leute mal man mein meine meinem meinen meiner mich mir mit moin mochte muss mussen nach noch nicht nix nun nur ob oder schon sehr sein seine sich sie sind so soll sollte solche und uns unter vom von vor war warum was wegen weil weiss welche welcher welches wenn wer werden wie wieder will wir wird wirklich wo wofur woran worauf wurde wurden zu zum zur uber bedeutet bedeuten heisst sagt denn dabei darf durfen denke danke gerade eigentlich',
  same: [
    'zelle zellen akku akkus batterie batterien akkuzelle rundzelle rundzellen',
    'falschung gefalscht fake gefakt plagiat nachgemacht kopie falschungen gefalschte gefalschter gefalschten fakes unecht',
  ],
  ours: 'zelle zellen akku akkus batterie batterien rundzelle rundzellen akkuzelle 18650 21700 26650 20700 14500 16340 18350 26800 cr123 cr123a rcr123 lithium liion ion mah wh mwh volt milliohm natrium',
  danger: [
    /(?<!\p{L})(rauch(?!melder|er|en verboten|erecke)|qualm|flamm|funken?(?!\p{L})|funkenf|gluh(?!birne|wein))/u,
    /(?<!\p{L})(brennt(?! (?:die|das) (?:licht|led|lampe))|gebrannt|feuer(?!loscher|werk)|explodier|geplatzt|platzt|hochgegangen|durchgegangen|schmilzt|geschmolzen|schmort|verschmort)/u,
    /(?<!\p{L})(zisch|knister|brutzel|pfeif|fiept)/u,
    /(?<!\p{L})(aufgebla|gebla|blah(?:t|en)|bla[eh]+t|gewolbt|wolbt|aufgequollen|quillt|dick geworden|wird dick|ist dick|dicker geworden|ausgebeult|beult)/u,
    /(?<!\p{L})(lauft aus|ausgelaufen|lauft was aus|lauft etwas aus|auslauf|undicht|tropft|suppt|siff|flussigkeit (?:kommt|tritt|auf|an|am|aus)|elektrolyt|ins auge|in die augen|eingeatmet)/u,
    /(?<!\p{L})(stinkt|stinken|riecht|riechen|geruch|gestank|mieft)/u,
    /(?<!wie )(?<!\p{L})(?:ist|sind|wird|werden|wurde|so|sehr|zu|richtig|super|total|mega|kochend|gluhend|extrem|verdammt|echt|immer|ganz|voll) (?:ganz |so |sehr |immer |total |richtig )?heiss(?!\p{L})|(?<!\p{L})(?:uberhitz|kochend|heiss geworden|heissgelaufen)/u,
    /(?<!\p{L})(pfutze|geknallt|lauter knall|plopp|verfarbt|angekokelt|verkohlt|versengt|dampft(?!er)|von (?:selbst|selber|allein|alleine) (?:warm|heiss)|warm ohne|im liegen warm)/u,
    /(?<!\p{L})(?:immer (?:warmer|heisser|dicker)|(?:hosentasche|tasche|schublade|dose|kiste) (?:\p{L}+ ){0,3}(?:warm|heiss)|(?:warm|heiss) in (?:der|meiner) (?:hosentasche|tasche)|(?:jetzt|plotzlich|auf einmal) (?:\p{L}+ ){0,4}(?:warm|heiss)|kuhlt (?:\p{L}+ )?(?:nicht|nimmer)|nicht (?:mehr )?(?:anfassen|anfassbar|halten)|zu (?:heiss|warm) zum|verbrenn\p{L}*|verbrannt|heisse[rns]? (?:kartoffel|eisen)|(?:fuhlt sich|ist|wird) (?:\p{L}+ )?heiss|grad und (?:steigt|es steigt|steigend)|so heiss)(?!\p{L})/u,
    /(?<!\p{L})(?:brand(?:fleck|loch|stelle|geruch|blase)|brennend|(?:wird|wurde|ist|ganz) (?:\p{L}+ )?(?:weich|braun)|russ(?!isch|land|e)|fackel|lodert|stichflamme|steht in (?:flammen|brand)|in brand|(?:wand|tisch|boden|teppich|hulle) (?:\p{L}+ )?(?:schwarz|angesengt)|entzund|kokelt|schmort|anbrenn)/u,
    /(?<!\p{L})(?:spritz|herausgeschossen|rausgeschossen|schiesst|geflogen|weggeflogen|abgeflogen|geknallt|knallt|knall|peng|bumm|plopp|tickt|tickert|bratpfanne|brutzel|(?:macht|machen) (?:\p{L}+ ){0,2}(?:gerausche?|\p{L}*gerausche)|im (?:kamin|feuer|ofen|(?<!ins |im |in das )lagerfeuer|grill)|ins (?:\p{L}*feuer|kamin|grill)|schwarze[rns]? (?:staub|pulver)|summt und|summen und)/u,
    /(?<!\p{L})(?:(?:zelle|akku|batterie|die|er|sie) ist (?:\p{L}+ )?(?:dicker|dick|runder)|bauch|druckts? (?:\p{L}+ ){0,3}(?:raus|hoch|heraus)|(?:raus|hoch|heraus)gedruckt|(?:weich|schwammig|prall) (?:geworden|an)|wie ein (?:fass|ballon|kissen|hefeteig)|blasen?|geht auf wie|bauchig)(?!\p{L})/u,
    /(?<!\p{L})(?:(?!(?:chlor|mund|schweiss|fuss|korper|fisch|farb|keller|katzen|hunde|kaffee|essens)geruch)\p{L}*geruch|muffelt|mufft|duftet|nach (?:aceton|losungsmittel|nagellack\p{L}*|chemie|klebstoff|verdunner|ather))/u,
    /(?<!\p{L})(?:kommt (?:da |so )?(?:was|etwas|zeug|bruhe|saft|klares|schwarzes)(?: \p{L}+)? (?:raus|heraus|aus)|schmierig\p{L}*|schleim\p{L}*|flussig|feuchte[rs]? (?:stelle|fleck)|feucht unten|unten feucht|olig|klebrig|schmierig|(?:augen|auge|finger|hande|hand|haut|gesicht|hals|zunge) (?:\p{L}+ )?(?:brenn|juck|tran|kribbel)|(?:brenn|juck|tran|kribbel)\p{L}* (?:\p{L}+ ){0,2}(?:augen|finger|hande|haut)|ins gesicht|im mund|in den mund|verschluck)/u,
    // Roots of verbs, whatever stands before them: geraucht, angeschmolzen, abgebrannt.
    /(?<!\p{L})(?!zerbeult)(?:ge|an|auf|ab|aus|zer|durch|weg|raus|heraus|los)+(?:raucht|qualmt|brannt|schmolzen|schmort|zischt|knistert|ploppt|knallt|platzt|spritzt|blaht|beult|wolbt|quollen|tropft|stunken|blasen|gluht)(?!\p{L})/u,
    /(?<!\p{L})(?:beult|beulen|schaum\p{L}*|bruhe|(?<!munze )verschluckt|dampf|qualm|(?:geht|fliegt) (?:\p{L}+ )?(?:gleich|jeden moment) (?:hoch|in die luft)|(?:kam|trat|entwich) (?:\p{L}+ )?(?:gas|dampf)|gast (?:\p{L}+ )?aus|ausgas\p{L}*|gast (?:stark|heftig)|(?:fangt|fing|beginnt) (?:\p{L}+ ){0,2}(?:an )?zu (?:brennen|rauchen|qualmen|zischen|knistern|stinken)|wieder (?:\p{L}+ ){0,2}(?:brennen|entzund\p{L}*|angegangen|aufgeflammt)|ausgedehnt|eingeatmet|zerbissen|\p{L}*gekaut|schmilzt|schmolz|(?:wird|werden) (?:\p{L}+ ){0,3}(?:warmer|heiss|heisser)|wird (?!beim |im )(?:\p{L}+ ){0,3}warm(?!$|.*normal))(?!\p{L})/u,
  ],
  alarm: 'heiss raucht zischt aufgeblaht',
  holders:
    /(?<!\p{L})(?:(?!\p{L}*(?:schoko|marme|schub|rou|bal|ein|herunter|hoch|runter|down|up)lade)\p{L}*lade\p{L}*|lader|geladen|aufgeladen|ladt|stecker|taschenlampe|stirnlampe|lampe|dampfe\p{L}*|verdampfer|\p{L}*akkus?|akku\p{L}*|ersatzzelle|e ?-?roller|scooter|ebike|e ?-?bike|powerbank|powerstation|hoverboard|pack)(?!\p{L})/u,
  places:
    /(?<!\p{L})(?:in|im|ins|auf|am|an|bei|beim|neben|unter|hinter|durch|quer durch|aus) (?:der |die |das |den |dem |meiner |meinem |meine |meinen |einem |einer )?(?:zimmer|schlafzimmer|wohnzimmer|raum|bad|badezimmer|kuche|garage|flur|treppenhaus|garten|rasen|auto|lkw|zug|bus|bahnhof|hotel|buro|zelt|haus|wohnung|sofa|stuhl|bett|tisch|schreibtisch|fenster|tur|regal|schrank|schublade|tasche|hosentasche|hose|jacke|mantel|handtasche|rucksack|schuhe?|boden|dach|see|meer|fluss)(?!\p{L})/u,
  double: 'zelle zellen batterie batterien',
  otherWorlds:
    /(?<!\p{L})(?:tabelle\p{L}*|excel|spalte|formel|gefangnis\p{L}*|knast|haftling\p{L}*|gefangniszelle|biolog\p{L}*|dna|organism\p{L}*|blut\p{L}*|stammzell\p{L}*|krebs\p{L}*|pflanzenzelle\p{L}*|tierische|pflanzliche|menschliche|korper|zellkern|zellteilung|artillerie|weltkrieg|kanone\p{L}*|schlagzeug\p{L}*|batterie von|legebatterie|huhner|telefonzelle|wahlzelle|sturmer|torwart|bundesliga|mittelfeld\p{L}*|diese saison|drachen?|endgegner|gitarrist\p{L}*|playlist|videospiel\p{L}*|computerspiel\p{L}*|dungeons?|schwert\p{L}*|nebenquest|feuerwerk\p{L}*|kamin\p{L}*|lagerfeuer|grillen|grillabend|firewall|neue album|auf (?:der )?arbeit|burn ?out|kur beantragt|raucht (?:hier|von euch)|borse|feuer und flamme|feuerwehrmann|ausbildung|lehrplan|brennende fragen?|nebelmaschine\p{L}*|rauchmelder\p{L}*|bin (?:\p{L}+ )?geladen|charts|(?:kopfhorer|lautsprecher|box(?:en)?|ohrstopsel) (?:\p{L}+ ){0,3}(?:knister|knack|rausch|brumm)\p{L}*|lauter (?:drehen|stell\p{L}*|mach\p{L}*)|lautstarke|waldbrand\p{L}*|gutschein\p{L}*|rabatt\p{L}*|trailer|zocken|zockt)(?!\p{L})/u,
  signedThings:
    /^(?:oben|unten|oberseite|unterseite|seite|seiten|ende|enden|rand|hulle|folie|plastik|kunststoff|metall|kappe|deckel|gehause|pol|pluspol|minuspol|plus|minus|kontakt\p{L}*|ring|ventil|loch|ding|dinger|teil|zeug|flussigkeit|geruch|gerausch|knall|blase|gerat|spielzeug|handy|laptop|notebook|tablet|kamera|bohrmaschine|akkuschrauber|drohne|staubsauger|tasche|hosentasche|kiste|box|dose|schublade|luft|zimmer|schlafzimmer|garage|wohnung|haus|augen|auge|hand|hande|finger|haut|kind|sohn|tochter|kleine|kabel|netzteil|zwei|andere|eine|feuer|rauch|flammen|irgendwas|irgendetwas|etwas|alles|nichts|jetzt|hier|immer|wieder|dann|heute|gestern|diese|\p{L}*(?:zelle|zellen|akku|akkus|lampe|batterie|gerat|lader))$/u,
  doer: /(?<!\p{L})(\p{L}{3,}) (?:riecht|stinkt|mieft|tropft|zischt|wolbt|blaht|raucht|qualmt|pfeift|lauft (?:\p{L}+ )?aus|(?:ist|sind|wird) (?:\p{L}+ )?(?:heiss|warm|geschwollen|gewolbt|undicht|dick))(?!\p{L})/u,
  subject:
    /^(?:(?:wie|was|warum|wieso|wann|wo|woran|welche|ist|sind|kann|kannst|darf|soll|muss|hat|haben|ich|du|wir|man|erkenne|erkennt|erkenn|sehe|sieht|weiss|merke|merkt|ob|dass|gross|lange|viel|viele|bitte|hi|hey|hallo|hilfe|also|leute|hab|habe|mir|mal|sicher|jemand|da|denn|heisst|bedeutet) )*(?:mein|meine|meinen|unser|unsere|sein|seine|ihr|ihre|diese|dieser|dieses|diesen|ein|eine|einen|der|die|das) (?:(?:alte|alter|altes|neue|neuer|neues|kleine|grosse|gefalschte[rns]?|echte[rns]?|linke|rechte|untere|obere|gute|ganze|andere) )*(\p{L}{3,})/u,
  otherThings:
    /(?<!\p{L})(display ?folie|schutzfolie|panzerglas|see|meer|fluss|berge?|tiger|lowen?|pferde?|vogel|fisch|freund|freundin|handtasche|sofa|stuhl|fenster|poster|spray\p{L}*|limo|limonade|konsole|gefrierfach|hefeteig|grillt|film|filme|lied|gitarre|klavier|konzert|ticket|brot|sirup|kase|rezept|emoji|reisepass|hemd|kleid|hose|diesel|benzin|rasen|garten|pflanzen?|tapete|tastatur|maus|drucker|fernseher|hausaufgaben|prufung an der uni|gedicht|hotel|restaurant|kupferrohr|spulmaschine|haare|hautcreme|medizin|fieber|arzttermin|eauto|e auto|waschmaschine lauft|katzen?|hund|hunde|baby|chef|chefin|mann|frau|opa|oma|nachbar\p{L}*|lehrer|auto|autos|lkw|motor|auspuff|zug|bus|bahnhof|kuche|herd|ofen|pfanne|pizza|essen|suppe|kaffee|tee|bier|grill|kamin|kerze|zigarette\p{L}*|reifen|dach|wasserhahn|rohr|klo|heizung|dusche|kuhlschrank|knie|knochel|fuss|bein|gesicht|lippe|bauch|wetter|sommer|draussen|sauna|curry|schuhe?|socken|computer|monitor|parfum|atem|mundgeruch|achsel\p{L}*|fusse|kopf|rucken|sonnenbrand|mucke\p{L}*|mantel|jacke|pullover|rock|schal|handschuhe?|stiefel|turnschuhe?|wasche|kleidung|trockner|bugeleisen|decke|bettdecke|kissen|matratze|handtuch|vorhang|teppich|inhalator|asthmaspray|spray|herzschrittmacher|horgerat|brille|kontaktlinsen?|thermometer|spritze|insulin|pflaster|zahn|zahne|zahnfullung|wunde|magen|ohr|ohren|nase|armbanduhr|uhr|kette|schmuck|gemalde|geldschein\p{L}*|vase|luftballons?|zelt|klebepistole|heissklebepistole|toner\p{L}*|flasche|glas|konserve\p{L}*|keller|dachboden|pool|teich|boot|fahrrad\p{L}*|rad|bremse\p{L}*|gartenschlauch|regenrinne|waschmaschine|mikrowelle|toaster|wasserkocher|fohn|geige|schlagzeug|flote|trompete|eier|reis|milch|fleisch|kuchen|obst|apfel|bananen?|tomaten?|gemuse|wein|stadion|neugeborene\p{L}*|welpe|bienen?|wespen?|spinnen?)(?!\p{L})/u,
  elsewhere: [
    'welche taschenlampe soll ich kaufen, hellste lampe, lumen, reichweite, stirnlampe zum laufen',
    'led streifen anschliessen, led treiber, vorwiderstand, schaltplan, dimmer, welcher lotkolben, stecker kaputt',
    'punktschweissgerat kaufen, nickelband dicke, welches bms, balancer, motorsteuerung, ebike motor, reichweite',
    'solaranlage, solarmodul, laderegler, wechselrichter, balkonkraftwerk, steckdose, sicherungskasten',
    'autobatterie, starthilfe, bleiakku, motorrad, elektroauto, ladesaule, wallbox',
    'alkaline, nimh, knopfzelle, uhr, fernbedienung, memory effekt, mignon',
    'handyakku, handy, tablet, laptop startet nicht, ladekabel, usb buchse, netzteil',
    'liquid, nikotin, geschmack, coil, verbrannt, watte, wickeln',
    'drohne, rc auto, modellflugzeug, bohrmaschine, sage, rasenmaher, drucker, filament',
    'wie werden akkus hergestellt, wer hat den akku erfunden, hausaufgaben, feststoffakku, wasserstoff, aktien',
    'serverregeln, rolle bekommen, nickname andern, stummschalten, spammer, bot einladen, bot offline',
    'guten morgen, hallo zusammen, danke, gute nacht, wetter, fussball, film, musik, rezept, pizza, hund, katze, politik',
    'wie lange dauert der versand, sendungsnummer, zoll, rabattcode, verkaufe, suche gebraucht, verlosung',
    'rauchmelder piept, klingel, kamera, lufter laut, kondensator, kabelquerschnitt, schalter, relais',
    'alte farbe entsorgen, sperrmull, mobel, reifen, matratze, kleidung',
    'schere im handgepack, flussigkeiten im flugzeug, koffer, visum, reisepass',
    'geld fur bahnkarte zuruck, abo kundigen, fitnessstudio, vertrag, steuererklarung, miete',
    'gefalschte handtasche, gefalschte uhr, gefalschte schuhe, falschgeld, fake profil',
    'essen im kuhlschrank, wie lange halten eier, gekochter reis, milch noch gut',
    'puls, blutdruck, gewicht baby, kalorien',
    'geschenke verpacken, lauft im trockner ein, bei 60 grad waschen',
    'lohnt eine feuerfeste tasche, lipo bag',
    'platze im stadion, speicherplatz, festplatte',
  ],
  together: [
    [/\bweiss nicht\b|\bkann ich nicht sagen\b|\bkann nicht sagen\b/g, ' canttell '],
    [/\bnichts gefunden\b/g, ' nothingfound '],
    [/\bgeld zuruck\b/g, ' erstattung '],
    [/\bqr ?-?code\b|\bdata ?matrix\b|\bpunktcode\b|\bbarcode\b|\bkastchencode\b/g, ' dotcode '],
    [/\bdatumscode\b|\bchargencode\b|\bherstellungsdatum\b|\bproduktionsdatum\b|\bchargennummer\b/g, ' datecode '],
    [/\buber nacht\b/g, ' nacht '],
  ],
  compounds: true,
  stem: stemmer,
}
