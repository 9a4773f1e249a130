// German for what can be wrong with a pack, a case or an answer: each one sentence that says what to change.

import type { InWordsOf } from '../catalogue.ts'
import type { problems as english } from '../en/problems.ts'

export const problems: InWordsOf<typeof english> = {
  'problem.yaml': '{at}: Das ist kein gültiges YAML ({says}). Berichtige die Zeile und versuch es noch einmal.',
  'problem.too-large': '{at}: Die Datei ist größer als {most, number} Bytes. Teile das Paket auf oder kürze es.',
  'problem.shape': '{at}: {says}.',
  'problem.unknown-key': '{at}: Hier heißt nichts „{name}“. Prüf die Schreibweise, oder nimm es heraus.',
  'problem.duplicate': '{at}: {what} „{name}“ kommt zweimal vor. Gib einem davon eine andere id.',
  'problem.unknown-name':
    '{at}: {what} „{name}“ gibt es nicht{near, select, none {} other {; meintest du „{near}“?}}{near, select, none {. Nimm etwas, das das Paket festlegt.} other {}}',
  'problem.not-an-option-question':
    '{at}: „{name}“ wird mit einem Messwert beantwortet; schreib eine Grenze (below, above) oder einen Messwert, keine Option.',
  'problem.not-a-reading-question':
    '{at}: „{name}“ wird mit einer seiner Optionen beantwortet; schreib eine Option, keine Grenze und keine Zahl.',
  'problem.limit-out-of-range':
    '{at}: Die Grenze {limit, number} für „{name}“ muss zwischen dem kleinsten ({least, number}) und dem größten Wert ({most, number}) liegen.',
  'problem.missing-pack':
    '{at}: Das Paket „{name}“ ist nicht hier{near, select, none {} other {; meintest du „{near}“?}}. Leg es neben dieses.',
  'problem.hazard-cannot-be-waived':
    '{at}: Auf die Gefahr „{name}“ kann nicht verzichtet werden, denn keine andere liest, was sie liest. Nimm sie aus waives heraus.',
  'problem.enough-cannot-be-met':
    '{at}: „{name}“ kann durch keine Antwort erfüllt werden, also könnte „nichts gefunden“ nie gesagt werden. Nimm es aus enough heraus.',
  'problem.too-many-states':
    '{at}: Die Regeln unterscheiden {states, number} Arten von Antworten auf „{name}“, höchstens {most, number} sind möglich. Halte sie gegen weniger verschiedene Werte.',
  'problem.too-tangled':
    '{at}: Diese Regeln hängen zu eng zusammen, um genau beurteilt zu werden: {rules}. Entwirre sie: Sie teilen sich die Fragen {questions}; teile Bedingungen auf, die viele davon zugleich lesen.',
  'problem.uncovered': '{at}: Kein Fall zeigt die Regel „{name}“ als {lacks}. Füg einen hinzu.',
  'problem.case-differs': '{at}: Für {name} war „{expected}“ erwartet, es ist aber „{got}“.',
  'problem.unit-does-not-fit':
    '{at}: „{name}“ wird in {wanted} angegeben, nicht in {unit}. Rechne um, oder berichtige die Einheit.',
  'problem.not-a-number': '{at}: „{name}“ braucht eine einfache Zahl.',
  'problem.out-of-range':
    '{at}: {value, number} {unit} kann für „{name}“ nicht stimmen: Es muss zwischen {least, number} und {most, number} {unit} liegen. Miss noch einmal, oder lies noch einmal ab.',
  'problem.cannot-be-drawn':
    '{at}: Mit {name}: {value} lässt sich das Bild nicht zeichnen. Schreib eines von diesen: {allowed}.',
  'problem.no-cases':
    '{at}: Das Paket hat keine Fälle. Füg einen Ordner „cases“ hinzu, mit mindestens einem Fall je Regel, in dem sie zutrifft, einem, in dem sie still bleibt, und einem, in dem es unbekannt bleibt.',
  'problem.not-a-language':
    '{at}: „{name}“ benennt keine andere Sprache als die des Pakets. Nenn die Datei nur nach ihrer Sprache, etwa de.yaml.',
}
