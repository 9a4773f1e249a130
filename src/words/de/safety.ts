// German for safety: what to do while it happens, when it happened and is cold, and at a sign on a quiet cell. Each order stands here alone.

import type { InWordsOf } from '../catalogue.ts'
import type { safety as english } from '../en/safety.ts'

export const safety: InWordsOf<typeof english> = {
  'safety.now.ask':
    'Brennt, raucht oder zischt die Zelle gerade, ist sie heiß, bläht sie sich auf oder läuft aus? Wenn ja:',
  'safety.now.sign':
    'Die Zelle brennt, raucht, zischt, knistert oder ist heiß, oder sie bläht sich gerade auf oder läuft gerade aus',
  'safety.now': 'Geh jetzt weg von der Zelle und wähl den Notruf.',
  'safety.now.far':
    'Bring alle hinaus, schließ die Tür hinter dir und atme den Rauch nicht ein: Er ist giftig. Im Freien: mindestens 25 m Abstand.',
  'safety.now.carry':
    'Fass sie nicht an, heb sie nicht auf, fotografiere sie nicht. Nur wenn es gefahrlos geht und sie weder brennt, raucht noch zischt: Zieh den Stecker, oder schieb sie mit einem Werkzeug ohne Metall, nie mit der Hand, weg von allem, was Feuer fangen kann.',
  'safety.now.call':
    'In Europa 112, in den USA und Kanada 911, in Großbritannien 999, in Australien 000, anderswo die Notrufnummer dort. Sag, dass es ein Lithium-Ionen-Akku ist.',
  'safety.now.gone-quiet':
    'Wird sie still, bleib weg: Es kann wieder anfangen, Stunden oder sogar Wochen später. Geh erst zurück, wenn die Feuerwehr es sagt.',
  'safety.cold.sign':
    'Sie war heiß, hat geraucht, gezischt, sich aufgebläht oder ist ausgelaufen, und ist jetzt kalt und ruhig',
  'safety.cold':
    'Lass sie, wo sie ist, und fass sie mindestens 24 Stunden lang nicht an, auch nicht, um zu fühlen, ob sie kalt ist, danach nur, wie die Feuerwehr es sagt. Es kann wieder anfangen, sogar Wochen später.',
  'safety.cold.keep': 'Halte andere fern. Bleib und schlaf nicht in diesem Raum.',
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
    'Frag eine Sammelstelle, die beschädigte Lithiumzellen annimmt, wie du sie abgibst. Nicht in den Müll, und nie per Post.',
  'safety.turns':
    'Wird sie von selbst warm, wird sie heiß, zischt, riecht oder raucht sie, bläht sie sich auf oder läuft aus: Geh weg von ihr und wähl den Notruf.',
  'safety.aid':
    'Erste Hilfe, wenn etwas aus der Zelle an dich kam: Haut mit Wasser und Seife waschen, Augen bei offenen Lidern mit klarem Wasser spülen, je mindestens 15 Minuten. Kontaktlinsen und benetzte Kleidung ablegen. In den Augen, eingeatmet oder verschluckt: frische Luft und sofort ärztliche Hilfe.',
}
