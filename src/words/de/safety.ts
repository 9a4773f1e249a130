// German for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    'Brennt, raucht, zischt oder knistert die Zelle gerade, ist sie heiß, riecht sie, bläht sie sich auf oder läuft sie aus? Wenn ja:',
  'safety.now.sign':
    'Die Zelle brennt, raucht, zischt, knistert, riecht oder ist heiß, oder sie bläht sich gerade auf oder läuft gerade aus',
  'safety.now': 'Geh jetzt weg von der Zelle und wähl den Notruf.',
  'safety.now.far':
    'Bring alle hinaus, schließ die Tür hinter dir und atme den Rauch nicht ein: Er ist giftig. Im Freien: mindestens 25 m Abstand.',
  'safety.now.carry':
    'Fass sie nicht an, heb sie nicht auf, fotografiere sie nicht. Nur wenn es gefahrlos geht und sie weder brennt noch raucht noch zischt: Zieh den Stecker, oder schieb sie mit einem Werkzeug ohne Metall, nie mit der Hand, weg von allem, was Feuer fangen kann.',
  'safety.now.call':
    'Notruf: in Europa 112, in den USA und Kanada 911, in Großbritannien 999, in Australien 000, anderswo die Nummer deines Landes. Sag, dass es ein Lithium-Ionen-Akku ist.',
  'safety.now.gone-quiet':
    'Bleib weg, auch wenn sie ruhig wird: Es kann wieder anfangen, Stunden oder sogar Wochen später. Geh erst zurück, wenn die Feuerwehr es sagt.',
  'safety.cold.sign':
    'Sie war heiß, hat geraucht, gezischt, sich aufgebläht oder ist ausgelaufen, und wirkt jetzt kalt und ruhig',
  'safety.cold':
    'Lass sie, wo sie ist. Fass sie mindestens 24 Stunden lang nicht an, auch nicht, um zu fühlen, ob sie kalt ist. Danach fass sie nur an, wie die Feuerwehr es sagt. Es kann wieder anfangen, sogar Wochen später.',
  'safety.cold.keep': 'Halte andere fern. Halte dich nicht in diesem Raum auf, und schlaf nicht darin.',
  'safety.cold.call':
    'Frag die Feuerwehr oder eine Sammelstelle, die beschädigte Lithiumzellen annimmt, wie sie abgeholt werden kann.',
  'safety.cold.carry':
    'Nur wenn Feuerwehr oder Sammelstelle es dir sagen: Trag Handschuhe und Augenschutz, bring sie nach draußen, weg von Gebäuden, und leg sie allein in etwas, das nicht brennen kann. Hol sie nicht wieder herein.',
  'safety.quiet.sign':
    'Sie ist kalt und ruhig und war es immer, aber etwas stimmt nicht: eine Delle, ein Riss in Hülle oder Ring, Rost, Wasser, eine zu niedrige Spannung, oder sie könnte gefälscht sein',
  'safety.quiet': 'Benutze, lade und teste sie nicht, und trag sie nicht bei dir.',
  'safety.quiet.keep':
    'Kleb beide Enden mit Isolierband ab und bewahre sie allein in einem Behälter auf, der nicht brennen kann und nicht luftdicht schließt, möglichst draußen, weit weg von Schlafplätzen.',
  'safety.quiet.hand-in':
    'Frag eine Sammelstelle, die beschädigte Lithiumzellen annimmt, wie du sie abgibst. Wirf sie nicht in den Müll, und verschick sie nie.',
  'safety.turns':
    'Wird die Zelle heiß oder von selbst warm, zischt, knistert, riecht oder raucht sie, bläht sie sich auf oder läuft sie aus: Geh weg von ihr und wähl den Notruf.',
  'safety.aid':
    'Erste Hilfe, wenn etwas aus der Zelle an dich kam: Wasch Haut mit Wasser und Seife, spül Augen bei offenen Lidern mit klarem Wasser, je mindestens 15 Minuten. Leg Kontaktlinsen und benetzte Kleidung ab. Eingeatmet: Geh an die frische Luft. In den Augen, eingeatmet oder verschluckt: Hol sofort ärztliche Hilfe.',
}
