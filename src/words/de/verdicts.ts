// German for verdicts: the word, what it means, why, what to do, and the caution that is never left out.

import type { InWordsOf } from '../catalogue.ts'
import type { verdicts as english } from '../en/verdicts.ts'

export const verdicts: InWordsOf<typeof english> = {
  'verdict.danger': 'Gefahr: hör jetzt auf',
  'verdict.ruled-out': 'Ausgeschlossen: nicht die Zelle, für die sie ausgegeben wird',
  'verdict.doubtful': 'Zweifelhaft: zu viel spricht gegen sie',
  'verdict.open': 'Offen: es ließ sich nicht klären',
  'verdict.nothing-found': 'Nichts gefunden, und das beweist nichts',
  'verdict.danger.means': 'Was du gesehen hast, ist jetzt gefährlich, was für eine Zelle es auch ist.',
  'verdict.ruled-out.means': 'Mindestens eine Sache kann bei der Zelle, als die sie verkauft wurde, nicht so sein.',
  'verdict.doubtful.means':
    'Was gegen sie spricht, reicht, um die Finger von ihr zu lassen, auch wenn es nichts beweist.',
  'verdict.open.means':
    'Nichts schließt die Zelle aus, und nichts kann sie bestätigen: Was geprüft wurde, reicht nicht, um mehr zu sagen.',
  'verdict.nothing-found.means':
    'Jede Prüfung, die für ihre Modellreihe aufgeführt ist, wurde beantwortet und erfüllt. Gute Fälschungen bestehen sie alle; keine Prüfung von außen kann eine Zelle beweisen.',
  'kind.counterfeit': 'eine Fälschung',
  'kind.another-cell': 'eine andere Zelle unter der Hülle',
  'kind.salvaged': 'eine gebrauchte Zelle, als neu verkauft',
  'kind.impossible-claim': 'eine unmögliche Angabe',
  'verdict.which': 'Worauf es hindeutet: {kinds}.',
  'part.why': 'Warum',
  'part.also': 'Auch gesehen',
  'part.no-bearing': 'Sagt nichts, obwohl viele es glauben',
  'part.enough': 'Reicht dafür schon allein',
  'part.unchecked': 'Nicht geprüft',
  'part.changes': 'Was es ändern würde',
  'part.next': 'Was jetzt zu tun ist',
  'part.judged': 'Beurteilt nach {packs}',
  'finding.published': '{says} (veröffentlicht: {source})',
  'finding.derived': '{says} (errechnet; die Zahlen stehen im Regelpaket)',
  'finding.common-practice': '{says} (übliche Praxis, keine Quelle)',
  'finding.memory': '{says} (aus dem Gedächtnis, nicht überprüft)',
  'finding.out-of-date': '{says} (diese Zahl ist veraltet und wurde nicht gezählt)',
  'answer.said': '{question} {answer}',
  'answer.reading': '{value, number} {unit}',
  'answer.range.under': '{to, number} {unit} oder weniger',
  'answer.range.over': '{from, number} {unit} oder mehr',
  'answer.range.between': 'zwischen {from, number} und {to, number} {unit}',
  'unchecked.not-asked': '{question} (nicht gefragt)',
  'unchecked.cant-tell': '{question} (du konntest es nicht sagen)',
  'unchecked.undecided': '{said} (zu nah an der Grenze der Gefahr, um sie auszuschließen)',
  'unchecked.danger': 'Alles andere. Geh nicht zur Zelle zurück, um nachzusehen.',
  'change.correction': 'Wenn „{question}“ in Wirklichkeit „{answer}“ war: {verdict}',
  'change.more': 'Wenn sich bei „{question}“ „{answer}“ ergibt: {verdict}',
  'change.undecided': 'Wenn „{question}“ in Wirklichkeit {range} war, lässt es sich nicht entscheiden',
  'change.none': 'Nichts von dem, was noch zu prüfen wäre.',
  'list.rest': '…und {count, number} weitere',
  'next.keep':
    'Heb auf, was den Kauf belegt: das Angebot, die Bestellung, deine Nachrichten, Fotos von der Hülle, beiden Enden und den Codes.',
  'next.seller':
    'Schreib dem Händler, dass die Zelle nicht zu ihrer Beschreibung passt. Verlang dein Geld zurück, ohne sie zurückzuschicken.',
  'next.no-post':
    'Verschick sie nicht mit der Post: Eine verdächtige Zelle zu versenden kann verboten sein und ist gefährlich.',
  'next.dispose':
    'Gib sie mit abgeklebten Enden bei einer Sammelstelle ab, die Lithiumzellen annimmt. Nie in den Hausmüll.',
  'next.not-use': 'Benutze sie nicht.',
  'next.hazard-unsure':
    'Bei {count, plural, one {# Gefahrenzeichen} other {# Gefahrenzeichen}} konntest du es nicht sagen. Bis du es kannst, behandle die Zelle als gefährlich: nicht benutzen, nicht laden, nicht herumtragen.',
  'next.hazard-undecided':
    '{count, plural, one {# Messwert liegt} other {# Messwerte liegen}} zu nah an einer Grenze der Gefahr, um sie auszuschließen. Behandle die Zelle als gefährlich: nicht benutzen, nicht laden, nicht herumtragen.',
  'next.until-sure': 'Benutze sie nicht, bis du sicher bist, was sie ist.',
  'next.buy': 'Kauf nur bei bekannten, viel genutzten Quellen, und nie allein wegen eines niedrigen Preises.',
  'next.ask': 'Frag jemanden, der sich mit Zellen auskennt, mit Fotos von der Hülle und beiden Enden.',
  'caution.full':
    'Eine Prüfung von außen kann zeigen, dass eine Zelle falsch ist; dass eine richtig ist, kann sie nie zeigen. Wenn du dir bei irgendetwas unsicher bist, benutze die Zelle nicht. Die US-Behörde für Produktsicherheit (Consumer Product Safety Commission, 8. Januar 2021) sagt, dass man lose 18650-Zellen überhaupt nicht kaufen oder benutzen soll: Sie sind Industrieteile, gedacht für Akkupacks mit Schutzschaltung. Die Anleitung des Herstellers, die Brandschutz- und Abfallregeln an deinem Ort und zugelassene Fachbetriebe gehen allem vor, was hier steht.',
  'button.go-on': 'Weiter prüfen',
  'button.close': 'Diese Prüfung schließen',
  'verdict.danger.so-far': 'Das ist gefährlich.',
  'verdict.ruled-out.so-far': 'Schon ausgeschlossen.',
  'verdict.doubtful.so-far': 'Schon zweifelhaft.',
  'verdict.would-tell': 'Was mehr sagen würde: {tools}.',
  'next.handle':
    'Bewahre sie bis dahin für sich auf, fern von Metall und allem, was Feuer fangen kann, und lade sie nicht.',
  'part.means': 'Was das Ergebnis bedeutet',
  'button.details': 'Einzelheiten',
  'button.change': 'Eine Antwort ändern',
  'details.page': 'Seite {page} von {pages}',
  'details.on': 'Nächste Seite',
  'details.back': 'Vorige Seite',
  'details.close': 'Zurück zum Ergebnis',
  'details.nothing': 'Hier gibt es nichts zu sagen.',
  'part.asked-next': 'Die Frage, die jetzt am meisten helfen würde',
}
