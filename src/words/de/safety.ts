// German for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

const wait =
  'Fass sie mindestens 24 Stunden nicht an, auch nicht, um zu fühlen, ob sie kalt ist, und danach nur so, wie die Feuerwehr es sagt. Es kann wieder anfangen, sogar Wochen später.'

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    'Brennt, raucht, zischt oder knistert die Zelle gerade, ist sie heiß, aufgebläht oder versengt, riecht sie oder läuft sie aus? Wenn ja:',
  'safety.now.sign':
    'Die Zelle brennt, raucht, zischt, knistert, riecht oder läuft gerade aus, oder sie ist heiß, aufgebläht oder versengt',
  'safety.now': 'Geh jetzt weg von der Zelle und wähl den Notruf.',
  'safety.now.far':
    'Bring alle hinaus, schließ die Tür hinter dir und atme den Rauch nicht ein: Er ist giftig. Im Freien: mindestens 25 m Abstand.',
  'safety.now.carry':
    'Fass sie nicht an, heb sie nicht auf, fotografiere sie nicht. Nur wenn es gefahrlos geht und sie weder brennt noch raucht, zischt oder knistert: Zieh den Stecker, oder schieb sie mit einem Werkzeug ohne Metall, nie mit der Hand, weg von allem Brennbaren.',
  'safety.now.call':
    'Notruf: in Europa 112, in den USA und Kanada 911, in Großbritannien 999, in Australien 000, anderswo die Nummer deines Landes. Sag, dass es ein Lithium-Ionen-Akku ist.',
  'safety.now.gone-quiet':
    'Bleib weg, auch wenn sie ruhig wird: Es kann wieder anfangen, Stunden oder sogar Wochen später. Geh erst zurück, wenn die Feuerwehr es sagt.',
  'safety.cold.sign':
    'Sie war heiß, hat gebrannt, geraucht, gezischt, geknistert oder ist ausgelaufen, und wirkt jetzt kalt und ruhig',
  'safety.cold.leave': 'Lass die Zelle, wo sie ist, und fass sie nicht an.',
  'safety.cold.wait': wait,
  'safety.cold': `Lass sie, wo sie ist. ${wait}`,
  'safety.cold.keep': 'Halte andere fern. Bleib nicht in diesem Raum, und schlaf nicht darin.',
  'safety.cold.call': 'Frag die Feuerwehr oder eine Sammelstelle für beschädigte Lithiumzellen, wer die Zelle abholt.',
  'safety.cold.carry':
    'Nur wenn die Feuerwehr es sagt: Trag Handschuhe und Augenschutz, bring die Zelle ins Freie, weg von Gebäuden, und leg sie allein in einen Behälter, der nicht brennen kann und nicht luftdicht ist. Hol sie nicht wieder herein.',
  'safety.quiet.sign':
    'Sie ist kalt und ruhig und war es immer, aber etwas stimmt nicht: eine Delle, ein Riss in Hülle oder Ring, Rost, Wasser, eine zu niedrige oder hohe Spannung, oder sie könnte gefälscht sein',
  'safety.quiet': 'Benutze, lade und teste sie nicht, und trag sie nicht bei dir.',
  'safety.quiet.keep':
    'Kleb beide Enden mit Isolierband ab und bewahre die Zelle allein in einem Behälter auf, der nicht brennen kann und nicht luftdicht ist, möglichst draußen, fern von Schlafplätzen.',
  'safety.quiet.hand-in':
    'Frag eine Sammelstelle, die beschädigte Lithiumzellen annimmt, wie du die Zelle abgibst. Wirf sie nicht in den Müll, und verschick sie nie.',
  'safety.turns':
    'Wird die Zelle heiß oder von selbst warm, zischt, knistert, riecht oder raucht sie, bläht sie sich auf oder läuft sie aus: Geh weg von ihr und wähl den Notruf.',
  'safety.aid':
    'Erste Hilfe, wenn etwas aus der Zelle an dich kam: Zieh benetzte Kleidung aus. Wasch Haut mit Wasser und Seife, spül Augen mit klarem Wasser, Lider offen, Kontaktlinsen heraus, je mindestens 15 Minuten. Eingeatmet: Geh ins Freie. Im Auge, eingeatmet, verschluckt oder Schmerz auf der Haut: Hol sofort ärztliche Hilfe.',
}
