// German for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

const wait =
  'Fass sie mindestens 24 Stunden nicht an, auch nicht, um zu fühlen, ob sie kalt ist. Danach nur so, wie die Feuerwehr es sagt. Sie kann noch Wochen später wieder zu brennen anfangen.'

const call = 'Frag die Feuerwehr oder eine Sammelstelle für beschädigte Lithiumzellen, wer sie abholt.'
const power =
  'Nur wenn nichts brennt, raucht, zischt oder knistert und du nicht nah an sie heranmusst: Schalte den Strom am Sicherungskasten oder an einem Schalter fern von ihr ab.'
const only =
  'Nur wenn sie kalt und ruhig ist, in den letzten 24 Stunden weder gefallen ist noch verbeult, gequetscht oder kurzgeschlossen wurde (falsch herum eingelegt zählt), nie gebrannt, geraucht, gezischt, geknistert oder gerochen hat, nie ausgelaufen ist, nie mehr als handwarm, von selbst warm, aufgebläht oder versengt war, nie durchstochen oder geöffnet wurde und nie mit anderer Flüssigkeit als sauberem Wasser oder einem Getränk in Berührung kam:'
const keep =
  'Steckt sie in keinem Gerät oder Ladegerät, kleb beide Enden mit Isolierband ab, ohne darauf zu drücken, und bewahre die Zelle trocken, vor Sonne geschützt und allein in einem nicht brennbaren, nicht luftdichten Behälter auf, möglichst draußen, fern von Schlafplätzen, Ausgängen und Brennbarem. Steckt sie in einem Gerät oder Ladegerät, lass sie darin (Strom aus nur an einem Schalter fern von ihr), und frag, wie du sie samt Gerät abgibst. Fehlen nur die 24 Stunden, warte sie ab. Trifft eine andere der Bedingungen am Anfang nicht zu, fass sie nicht an: Frag die Feuerwehr.'

const touch = [
  '- Sie ist ruhig, nichts deutet darauf hin, dass sie warm ist, sie riecht nicht, und es ist nichts Ausgelaufenes daran.',
  '- Sie hat nie gebrannt, geraucht, gezischt, geknistert oder gerochen, ist nie ausgelaufen und war nie mehr als handwarm, von selbst warm, aufgebläht oder versengt.',
  '- Sie wurde nie durchstochen oder geöffnet und kam nie mit anderer Flüssigkeit als sauberem Wasser oder einem Getränk in Berührung.',
  '- In den letzten 24 Stunden ist sie nicht gefallen, wurde weder verbeult noch gequetscht oder kurzgeschlossen und lag nie falsch herum.',
].join('\n')

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    'Brennt, raucht, zischt oder knistert die Zelle gerade, ist sie heiß, von selbst warm, aufgebläht, versengt oder undicht, oder riecht sie? Wenn ja:',
  'safety.now.sign':
    'Die Zelle brennt, raucht, zischt oder knistert gerade, ist heiß, von selbst warm, aufgebläht, versengt oder undicht, oder sie riecht',
  'safety.now': 'Lass die Zelle fallen, wenn du sie hältst, geh jetzt weg und wähl den Notruf.',
  'safety.away': 'Geh jetzt weg, und wähl den Notruf.',
  'safety.now.worn':
    'Steckt sie in deiner Kleidung, einer Tasche oder einem Gerät an dir (auch Stirnlampe), greif nicht nach ihr: Zieh die Kleidung aus, streif Tasche oder Gerät ab oder lass sie fallen, und geh weg.',
  'safety.now.far':
    'Bring alle aus dem Raum und schließ die Tür; bei Feuer, Rauch, Zischen oder Knistern müssen alle aus dem Gebäude. Atme keinen Rauch ein: Er ist giftig. Im Freien: mindestens 25 m Abstand.',
  'safety.now.carry': `Fass weder sie noch ihr Gerät an, und beweg und fotografier nichts davon. ${power}`,
  'safety.power': power,
  'safety.now.call':
    'Notruf, sobald du weg bist: Europa 112; USA, Kanada und Mexiko 911; Vereinigtes Königreich 999; Australien 000; anderswo die Nummer deines Landes. Sag, dass es ein Lithium-Ionen-Akku ist.',
  'safety.now.gone-quiet':
    'Bleib weg, auch wenn sie ruhig wird, bis die Feuerwehr etwas anderes sagt: Sie kann noch Wochen später wieder zu brennen anfangen.',
  'safety.cooling': `Anders nur in einem Fall: Sie wurde im Gebrauch oder beim Laden heiß, war nie zu heiß zum Festhalten, hat und hatte sonst keines dieser Zeichen und kühlt jetzt ab. Hältst du sie, leg sie und ihr Gerät hin; steckt sie in etwas, das du trägst, leg das ab. Lass alles dort, fass es nicht mehr an, auch nicht, um Wärme zu fühlen, bleib und schlaf nicht in diesem Raum, und benutze und lade die Zelle nie wieder. Hängt sie am Strom, schalte ihn ab wie oben gesagt. Wird sie heißer, zeigt sie ein anderes Zeichen oder scheint sie nicht abzukühlen: Geh weg und wähl den Notruf.`,
  'safety.cold.sign':
    'Sie hat gebrannt, geraucht, gezischt oder geknistert, war heiß oder von selbst warm, ist ausgelaufen oder hat gerochen, und wirkt jetzt kalt und ruhig, ohne Geruch, Flüssigkeit, Kruste oder Pulver, weder aufgebläht noch versengt',
  'safety.cold.leave':
    'Hältst du die Zelle, leg sie hin; steckt sie in etwas, das du trägst, leg das ab, ohne hineinzugreifen. Lass sie, wo sie ist, fass sie nicht an, und bleib und schlaf nicht in diesem Raum.',
  'safety.cold.wait': wait,
  'safety.cold': `Hältst du sie, leg sie hin; steckt sie in etwas, das du trägst, leg das ab, ohne hineinzugreifen. Lass sie, wo sie ist. ${wait}`,
  'safety.cold.keep':
    'Halte andere fern. Bleib nicht in diesem Raum. Nur wenn sie am Strom hängt und du nicht nah an sie heranmusst: Schalte ihn am Sicherungskasten oder an einem Schalter fern von ihr ab.',
  'safety.cold.call': call,
  'safety.cold.carry':
    'Nur wenn die Feuerwehr es sagt: Trag Handschuhe und Augenschutz, bring sie ins Freie, weg von Gebäuden, und leg sie allein in einen Behälter, der nicht brennen kann und nicht luftdicht ist. Lass sie dort.',
  'safety.quiet.sign':
    'Sie ist kalt und ruhig und war es immer, aber etwas stimmt nicht, etwa Delle, Sturz, Kurzschluss, Riss in Hülle oder Ring, Rost, sauberes Wasser oder Getränk, zu niedrige oder zu hohe Spannung oder Fälschungsverdacht',
  'safety.quiet': 'Benutze, lade und teste die Zelle nicht, und trag sie nicht bei dir.',
  'safety.quiet.wait':
    'In den letzten 24 Stunden gefallen, verbeult, gequetscht, kurzgeschlossen oder falsch herum eingelegt? Dann leg sie hin, falls du sie hältst oder bei dir hast, lass sie dort, und bleib weg, bis seitdem 24 Stunden vergangen sind.',
  'safety.quiet.only': only,
  'safety.quiet.keep': `${only} ${keep}`,
  'safety.quiet.touch': touch,
  'safety.quiet.hands':
    'Fass die Zelle nur an, wenn sie heil, nicht aufgebläht, sauber, trocken, geruchlos, kalt und ruhig ist und es immer war, und wenn sie in den letzten 24 Stunden weder gefallen ist noch kurzgeschlossen wurde oder falsch herum lag.',
  'safety.quiet.until':
    'Hältst du sie oder trägst du sie bei dir, leg sie hin, samt Gerät, wenn sie in einem steckt. Lass sie, wo sie ist, halte andere fern, und schlaf nicht in diesem Raum. Bevor du sie anfasst oder bewegst, lies „Wie bewahre ich eine verdächtige Zelle auf, bis ich sie abgebe?“.',
  'safety.quiet.hand-in':
    'Frag eine Sammelstelle für beschädigte Lithiumzellen, wie du deine abgibst. Wirf sie nicht in den Müll, verschick sie nie.',
  'safety.turns':
    'Wenn die Zelle brennt, raucht, zischt, knistert, heiß oder von selbst warm wird, sich aufbläht, versengt ist, ausläuft oder riecht: Lass sie los, geh weg und wähl den Notruf.',
  'safety.aid':
    'Erste Hilfe, wenn jemand etwas aus der Zelle abbekam, einatmete oder schluckte. Eingeatmet: Geh zuerst mit allen an die frische Luft. Dann sofort die Augen: Spül sie mindestens 15 Minuten mit sauberem Wasser, Lider offen; Kontaktlinsen nimm nur heraus, wenn es leicht geht. Zieh betroffene Kleidung aus, außer sie klebt fest. Wasch die Haut mindestens 15 Minuten mit Wasser und Seife. Im Auge, eingeatmet, verschluckt oder bei Schmerzen auf der Haut: Wähl sofort den Notruf, während du spülst, oder lass jemanden anrufen.',
  'safety.aid.swallowed':
    'Verschluckt: Wähl sofort den Notruf oder Giftnotruf. Spül den Mund aus. Iss und trink nichts, außer man sagt es dir dort, und löse bei niemandem Erbrechen aus.',
  'safety.aid.burn':
    'Erste Hilfe bei Verbrennung, weg von der Zelle: Halte sofort nur die verbrannte Stelle 20 Minuten, oder so lange, wie der Notruf sagt, unter kühles, nicht eiskaltes fließendes Wasser; bei großen Verbrennungen und Kindern frag dort, wie lange. Wähl den Notruf, während du kühlst, oder lass jemanden anrufen. Leg Ringe und lose Kleidung nahe der Stelle ab; lass dran, was an der Haut klebt.',
  'safety.test': `Lass den Test nie unbeaufsichtigt laufen. Teste nur auf einer Fläche, die nicht brennen kann, ohne Brennbares in der Nähe und weit weg von Schlafplätzen und Ausgängen. Bei 60 °C beim Entladen oder 45 °C beim Laden: Fass sie nicht mehr an, und benutze und lade sie nie wieder. ${power} Geht das nicht, oder wird sie trotzdem heißer, geh weg und wähl den Notruf: Bleib nicht, um den Test zu beenden.`,
}
