// German for the masses or capacities of cells that were bought together.
import type { InWordsOf } from '../catalogue.ts'
import type { batch as english } from '../en/batch.ts'

export const batch: InWordsOf<typeof english> = {
  'command.batch': 'Sehen, ob zusammen gekaufte Zellen nach ihrem Gewicht aus einer Charge stammen können',
  'command.batch.figures': 'Für jede Zelle eine Zahl, etwa 45,1; 45,3; 45,2 g',
  'command.batch.quantity': 'Was die Zahlen sind; leer lassen für Gewichte',
  'batch.of.mass': 'Gewichte, in Gramm',
  'batch.of.capacity': 'Gemessene Kapazitäten neuer Zellen, in mAh',
  'batch.start': 'Eine dieser Zellen prüfen',
  'batch.problem.not-positive': 'Null ist kein Messwert. Tipp für jede Zelle ein, was die Anzeige gezeigt hat.',
  'batch.title':
    'Was {count, number} zusammen gekaufte Zellen nach {quantity, select, mass {ihrem Gewicht} other {ihrer Kapazität}} zeigen',
  'batch.figures':
    'Im Mittel {mean} {unit}, von {least} bis {most} {unit}: eine Spannweite von {range} {unit}, {share} des Mittels. Fast alle Chargen bleiben mit so einem Messgerät innerhalb von {limit} {unit}.',
  'batch.one-lot-possible':
    'Sie liegen so nah beieinander wie die Zellen einer Charge. Das zeigt nichts darüber, was sie sind: Auch Fälschungen kommen in Chargen.',
  'batch.two-runs':
    'Sie liegen etwas weiter auseinander als die Zellen einer Charge: Sie können aus zwei Chargen stammen.',
  'batch.two-kinds': 'Es sind zwei Arten von Zellen oder zwei Ausführungen derselben.',
  'batch.not-one-lot': 'Sie sind nicht aus einer Charge: Die Zellen einer Charge liegen viel näher beieinander.',
  'batch.clusters': 'Sie zerfallen in zwei Gruppen: {low} und {high} {unit}.',
  'batch.scale-too-coarse':
    'Sie liegen weiter auseinander als eine Charge, aber das Messgerät zeigt zu wenige Stellen, um sicher zu sein. Nimm eins mit Schritten von {wanted} {unit} oder kleiner.',
  'batch.not-counterfeit':
    '„Nicht aus einer Charge“ heißt nicht „gefälscht“: Andere Modelle darunter, eine mit Schutzschaltung oder neu umhüllte Zellen bewirken dasselbe. Sind alle ohne Schutzschaltung, und stecken alle in der gleichen Hülle? Wiegt eine Münze auf der Waage jedes Mal gleich viel? Sieh dir dann jede Zelle für sich an.',
  'batch.used': 'Gebrauchte Zellen werden allein durch den Gebrauch ungleich. Das hier gilt also nur für neue.',
  'batch.problem.too-few-values':
    'Hier {count, plural, =0 {steht keine Zahl} one {steht # Zahl} other {stehen # Zahlen}}; nötig sind mindestens {fewest, number}. Tipp für jede Zelle eine, etwa 45,1; 45,3; 45,2 g.',
  'batch.problem.too-many-values':
    'Hier stehen {count, number} Zahlen; höchstens {most, number} werden genommen. Schick erst einen Teil der Zellen.',
  'batch.problem.value': 'Zahl {place, number} („{typed}“)',
  'batch.problem.commas':
    'In „{typed}“ kann ein Komma die Zahlen trennen oder die Dezimalstellen. Setz einen Strichpunkt zwischen die Zahlen.',
  'batch.problem.ten-times':
    'Zahl {place, number} ist {value}, etwa zehnmal zu groß oder zu klein. Ist nicht {other} gemeint? Tipp sie noch einmal.',
}
