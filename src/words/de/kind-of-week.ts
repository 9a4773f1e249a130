// German for what kind of week it was: what is new, in numbers, how sure, and what to do.
import type { InWordsOf } from '../catalogue.ts'
import type { kindOfWeek as english } from '../en/kind-of-week.ts'

export const kindOfWeek: InWordsOf<typeof english> = {
  'week.label': 'Diese Woche:',
  'week.is.new': 'Etwas Neues: {families}.',
  'week.is.again':
    'Nichts Neues, aber etwas geht weiter. Schon früher und in dieser Woche wieder gefunden: {families}.',
  'week.is.recent': 'Nichts Neues. In den letzten 8 Wochen gefunden, in dieser aber nicht wieder: {families}.',
  'week.is.alone':
    'Noch nichts Neues. In dieser einen Woche ging mehr schlecht aus, als zu erwarten war: {things}. Eine einzelne solche Woche ist meistens Zufall.',
  'week.is.chance':
    'Nichts Neues. Ein größerer Anteil als üblich ging schlecht aus, aber kein einzelnes Modell und kein einzelner Grund stieg über den Zufall hinaus: höchstwahrscheinlich bloßer Zufall (Rauschen).',
  'week.is.over':
    'Nichts Neues, und etwas Altes ist vorbei. Seit mehr als 8 Wochen wurde nichts mehr gefunden von: {families}.',
  'week.is.growth':
    'Nichts Neues bei den Zellen. Es prüfen mehr Leute als üblich, und es geht kein größerer Anteil der Prüfungen schlecht aus.',
  'week.is.ordinary':
    'Nichts Neues, eine ruhige Woche: {checks, select, fewer {weniger Prüfungen als üblich} more {ein paar mehr Prüfungen als üblich} other {etwa so viele Prüfungen wie üblich}}, und {failed, select, fewer {ein kleinerer Anteil davon als üblich ging schlecht aus} other {der Anteil, der schlecht ausging, ist wie üblich}}.',
  'week.is.ordinary.young': 'Nichts Neues: Nichts stieg über das hinaus, was der Zufall bringt.',
  'week.too-early': 'Das lässt sich noch nicht sagen. Ob etwas steigt, zeigt sich erst, wenn 13 Wochen gezählt sind.',
  'week.also.again': 'Schon früher und in dieser Woche wieder gefunden: {families}.',
  'week.also.recent': 'In den letzten 8 Wochen gefunden, in dieser aber nicht wieder: {families}.',
  'week.also.over': 'Vorbei, weil seit mehr als 8 Wochen nichts mehr gefunden wurde von: {families}.',
  'week.also.growth': 'Dazu weit mehr Prüfungen als üblich: Es prüfen hier jetzt mehr Leute.',
  'week.family.last': '{family} (zuletzt in der Woche vom {week})',
  'week.thing.rule': '{family}: {rule}',
  'week.numbers.label': 'In Zahlen:',
  'week.numbers':
    'Die letzten 4 Wochen brachten {checks, number} neue Prüfungen; {failed, number} davon gingen schlecht aus{beside, select, usual {} other { ({share, number, percent})}}. Üblich sind hier in 4 Wochen {low, number} bis {high, number} Prüfungen; von so vielen wie jetzt gehen üblicherweise {failedLow, number} bis {failedHigh, number} schlecht aus{beside, select, usual {} other { ({usualShare, number, percent} im Jahr davor)}}.',
  'week.numbers.usual': 'Üblich heißt: 8 von 10 Mal brachten 4 Wochen im Jahr davor eine Zahl in diesem Bereich.',
  'week.sure.finding':
    'Öffne es unter „Funde“ oder sieh dir seine Nachricht an: Dort steht, wie sicher es ist und was nötig wäre, damit es Zufall ist.',
  'week.sure.watched':
    'Ziemlich sicher. Jedes Modell und jeder Grund wird nach genauen Zahlen beobachtet, und nichts stieg in dieser Woche über das hinaus, was der Zufall bringt. Ein kleiner Anstieg kann unbemerkt bleiben.',
  'week.sure.alone':
    'Nicht sicher. Über mehrere Wochen stieg nichts über das hinaus, was der Zufall bringt{weeks, plural, =0 {; eine Woche wie diese ist hier aber neu, und eine allein sagt nicht mehr} one {; # der {of, number} Wochen davor hatte etwas dieser Art} other {; # der {of, number} Wochen davor hatten etwas dieser Art}}.',
  'week.sure.chance':
    'Nicht ganz sicher, aber Zufall ist wahrscheinlich: {things, plural, =0 {Kein Modell und kein Grund} other {Von # hier gezeigten Modellen und Gründen}} stieg {things, plural, =0 {} other {keines }}für sich über den Zufall hinaus. {few, select, yes {Ein so großer Anteil ist hier ungewöhnlich, doch nichts Einzelnes fällt auf} other {Ein so großer Anteil ging in {times, number} von {of, number} Abschnitten von 4 Wochen davor schlecht aus}}.',
  'week.sure.growth':
    'Ziemlich sicher. Ein Anstieg wird nach dem Anteil an allen Prüfungen beurteilt, der schlecht ausgeht; mehr Leute allein sind also kein Anstieg, und es wurde keiner gefunden.',
  'week.next.new': 'Sieh dir an, was unter „Funde“ wartet, und entscheide.',
  'week.next.again':
    'Sieh dir an, was unter „Funde“ noch wartet, und entscheide. Wartet dort nichts, ist nichts zu tun.',
  'week.next.recent': 'Nichts Neues. Wartet unter „Funde“ noch etwas, entscheide.',
  'week.next.alone':
    'Noch nichts. Sieh in den Bericht der nächsten Woche: Geht es weiter, wird es von selbst als Fund gemeldet.',
  'week.next.chance':
    'Jetzt nichts. Sieh nächsten Montag wieder nach: Ist es mehr als Zufall, geht es weiter und wird von selbst als Fund gemeldet.',
  'week.next.over':
    'Nichts eilt. Sieh dir alles an, was unter „Funde“ noch wartet, und verwirf, wovon Mitglieder nicht mehr berichten.',
  'week.next.growth':
    'Bei den Zellen nichts. Mehr Leute brauchen vielleicht Hilfe: /prüfung wartend zeigt, wer wartet.',
  'week.next.ordinary': 'Nichts.',
}
