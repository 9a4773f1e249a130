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
    /(?<!\p{L})(rauch(?!melder|er|en verboten|erecke)|qualm|flamm|funken|gluh(?!birne|wein))/u,
    /(?<!\p{L})(brennt(?! (?:die|das) (?:licht|led|lampe))|gebrannt|feuer(?!loscher|werk)|explodier|geplatzt|platzt|hochgegangen|durchgegangen|schmilzt|geschmolzen|schmort|verschmort)/u,
    /(?<!\p{L})(zisch|knister|brutzel|pfeif|fiept)/u,
    /(?<!\p{L})(aufgebla|gebla|blah(?:t|en)|bla[eh]+t|gewolbt|wolbt|aufgequollen|quillt|dick geworden|wird dick|ist dick|dicker geworden|ausgebeult|beult)/u,
    /(?<!\p{L})(lauft aus|ausgelaufen|lauft was aus|lauft etwas aus|auslauf|undicht|tropft|suppt|siff|flussigkeit (?:kommt|tritt|auf|an|am|aus)|elektrolyt|ins auge|in die augen|eingeatmet)/u,
    /(?<!\p{L})(stinkt|stinken|riecht|riechen|geruch|gestank|mieft)/u,
    /(?<!wie )(?<!\p{L})(?:ist|sind|wird|werden|wurde|so|sehr|zu|richtig|super|total|mega|kochend|gluhend|extrem|verdammt|echt|immer|ganz|voll) (?:ganz |so |sehr |immer |total |richtig )?heiss(?!\p{L})|(?<!\p{L})(?:uberhitz|kochend|heiss geworden|heissgelaufen)/u,
    /(?<!\p{L})(pfutze|geknallt|lauter knall|plopp|verfarbt|angekokelt|verkohlt|versengt|dampft(?!er)|von (?:selbst|selber|allein|alleine) (?:warm|heiss)|warm ohne|im liegen warm)/u,
  ],
  otherThings:
    /(?<!\p{L})(tiger|lowen?|pferde?|vogel|fisch|freund|freundin|handtasche|sofa|stuhl|fenster|tur|poster|film|filme|lied|gitarre|klavier|konzert|ticket|brot|sirup|kase|rezept|emoji|reisepass|hemd|kleid|hose|diesel|benzin|rasen|garten|pflanzen?|tapete|tastatur|maus|drucker|fernseher|hausaufgaben|prufung an der uni|gedicht|hotel|restaurant|kupferrohr|spulmaschine|haare|hautcreme|medizin|fieber|arzttermin|eauto|e auto|waschmaschine lauft|katzen?|hund|hunde|baby|chef|chefin|mann|frau|opa|oma|nachbar\p{L}*|lehrer|auto|autos|lkw|motor|auspuff|zug|bus|bahnhof|kuche|herd|ofen|pfanne|pizza|essen|suppe|kaffee|tee|bier|grill|kamin|kerze|zigarette\p{L}*|reifen|dach|wasserhahn|rohr|klo|heizung|dusche|kuhlschrank|knie|knochel|fuss|bein|gesicht|lippe|bauch|wetter|sommer|draussen|sauna|curry|schuhe?|socken|computer|monitor|parfum)(?!\p{L})/u,
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
