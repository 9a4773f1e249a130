// German for verdicts: the word, what it means, why, what to do, and the caution that is never left out.

import type { InWordsOf } from '../catalogue.ts'
import type { verdicts as english } from '../en/verdicts.ts'
import { safety } from './safety.ts'

const proves =
  'Von außen lässt sich zeigen, dass mit einer Zelle etwas nicht stimmt; dass sie in Ordnung ist, lässt sich von außen nie zeigen.'
const unsure = 'Wenn du dir bei irgendetwas unsicher bist, benutze und lade die Zelle nicht.'
const loose =
  'Die US-Behörde für Produktsicherheit (Consumer Product Safety Commission, 8. Januar 2021) sagt, dass man lose 18650-Zellen überhaupt nicht kaufen oder benutzen soll: Sie sind Industrieteile, gedacht für Akkupacks mit Schutzschaltung.'
const local =
  'Die Anleitung des Herstellers, die Brandschutz- und Abfallregeln an deinem Ort und zugelassene Fachbetriebe gehen allem vor, was hier steht.'

export const verdicts: InWordsOf<typeof english> = {
  'verdict.danger': 'Gefahr: sofort aufhören',
  'verdict.ruled-out': 'Widerlegt: nicht das, wofür sie ausgegeben wird',
  'verdict.doubtful': 'Zweifelhaft: zu viel spricht gegen sie',
  'verdict.open': 'Ungeklärt: Diese Prüfung kann es nicht entscheiden',
  'verdict.nothing-found': 'Nichts gefunden, und das beweist nichts',
  'verdict.danger.means':
    'Nach dem, was du angegeben hast, ist die Zelle gefährlich, ganz gleich, was für eine es ist.',
  'verdict.ruled-out.means':
    'Mindestens eine deiner Antworten ist bei der Zelle, als die sie verkauft wurde, unmöglich.',
  'verdict.doubtful.means': 'Was gegen sie spricht, ist kein Beweis, aber es reicht: Benutze und lade sie nicht.',
  'verdict.open.means':
    'Nichts widerlegt, dass sie ist, was sie sein soll, und nichts kann es bestätigen: Das Geprüfte reicht nicht, um mehr zu sagen.',
  'verdict.nothing-found.means':
    'Jeder Prüfpunkt, der für ihr Modell aufgeführt ist, wurde beantwortet und erfüllt. Gute Fälschungen bestehen sie alle; keine Prüfung von außen kann beweisen, dass eine Zelle echt ist.',
  'kind.counterfeit': 'eine Fälschung',
  'kind.another-cell': 'eine andere Zelle unter der Hülle',
  'kind.salvaged': 'eine gebrauchte Zelle, die als neu verkauft wurde',
  'kind.impossible-claim': 'eine unmögliche Angabe',
  'verdict.which': 'Das allein genügt und deutet auf {kinds} hin.',
  'part.why': 'Warum',
  'part.also': 'Was noch auffiel',
  'part.no-bearing': 'Sagt nichts aus, auch wenn viele anderes glauben',
  'part.enough': 'Was das Ergebnis entschieden hat',
  'part.unchecked': 'Nicht geprüft',
  'part.changes': 'Was das Ergebnis ändern würde',
  'part.next': 'Was jetzt zu tun ist',
  'part.judged': 'Beurteilt nach {packs}',
  'finding.published': '{says} (veröffentlicht: {source})',
  'finding.derived': '{says} (errechnet; die Zahlen stehen im Regelpaket)',
  'finding.common-practice': '{says} (übliche Praxis, keine Quelle)',
  'finding.memory': '{says} (aus dem Gedächtnis, nicht überprüft)',
  'finding.out-of-date': '{says} (diese Zahl ist veraltet und wurde nicht gezählt)',
  'answer.said': '{question} {answer}',
  'reason.answered': 'Deine Antwort: {answers}. {reason}',
  'reason.answered-by-moderator': 'Antwort einer helfenden Person: {answers}. {reason}',
  'answer.reading': '{value, number} {unit}',
  'answer.range.under': '{to, number} {unit} oder weniger',
  'answer.range.over': '{from, number} {unit} oder mehr',
  'answer.range.between': 'zwischen {from, number} und {to, number} {unit}',
  'unchecked.not-asked': '{question} (nicht gefragt)',
  'unchecked.cant-tell': '{question} („Kann ich nicht sagen“)',
  'unchecked.undecided': '{said} (zu nah an der Gefahrengrenze, um Gefahr auszuschließen)',
  'unchecked.danger': 'Alles andere. Geh nicht zur Zelle zurück, um nachzusehen.',
  'change.correction': 'Wenn auf „{question}“ eigentlich „{answer}“ stimmt: {verdict}',
  'change.more': 'Wenn du auf „{question}“ noch „{answer}“ antwortest: {verdict}',
  'change.undecided': 'Wenn der Wert bei „{question}“ in Wirklichkeit {range} ist, lässt es sich nicht entscheiden',
  'change.none': 'Keine der Fragen, die noch offen sind.',
  'list.rest': '…und {count, number} weitere',
  'next.keep':
    'Heb auf, was den Kauf belegt: das Angebot, die Bestellung, deine Nachrichten, Fotos, die du schon hast.',
  'next.seller':
    'Passt die Zelle nicht zur Beschreibung, schreib das dem Verkäufer, und verlang dein Geld zurück, ohne sie zurückzuschicken.',
  'next.no-post':
    'Verschick sie nicht, auch nicht mit der Post: Eine verdächtige Zelle zu versenden ist gefährlich und kann verboten sein.',
  'next.hazard-unsure': `Behandle die Zelle als gefährlich, bis das geklärt ist. Bei {count, plural, one {# Gefahrenzeichen} other {# Gefahrenzeichen}} warst du unsicher: {signs}. ${safety['safety.quiet']}`,
  'next.untouched': `Du hast gesagt, dass die Zelle nicht angefasst werden darf, oder warst nicht sicher. Behandle sie als gefährlich, bis das geklärt ist. ${safety['safety.quiet']}`,
  'next.hazard-undecided': `{count, plural, one {# Messwert liegt} other {# Messwerte liegen}} zu nah an einer Gefahrengrenze, um Gefahr auszuschließen. Behandle die Zelle als gefährlich. ${safety['safety.quiet']}`,
  'verdict.hazards-unasked':
    '**Noch nicht gefragt:** {signs}. Hinter jeder dieser Fragen kann eine Gefahr stecken; „{button}“ fragt danach.',
  'next.until-sure': 'Bist du unsicher, was die Zelle ist, benutze und lade sie nicht.',
  'next.buy': 'Kauf nur dort, wo viele seit Jahren kaufen, und nie allein wegen eines niedrigen Preises.',
  'next.helper': '{ask} Hier: Drück „{button}“.',
  'next.ask':
    'Frag jemanden, der sich mit Zellen auskennt, mit Fotos von der Hülle und beiden Enden, die du schon hast oder machen kannst, ohne die Zelle zu berühren oder ihr nahe zu kommen.',
  'next.ask.untouched': 'Frag jemanden, der sich mit Zellen auskennt, und zeig Fotos, die du schon hast.',
  'caution.full': `${proves} ${unsure} ${loose} ${local}`,
  // Where the result says already not to use the cell.
  'caution.failed': `${proves} ${local}`,
  'button.go-on': 'Weitere Fragen beantworten',
  'button.close': 'Schließen und Antworten löschen',
  'verdict.danger.so-far': 'Das ist gefährlich.',
  'verdict.ruled-out.so-far': 'Schon jetzt widerlegt: Sie ist nicht das, wofür sie ausgegeben wird.',
  'verdict.doubtful.so-far': 'Schon zweifelhaft.',
  'verdict.would-tell': 'Was mehr verraten würde: {tools}.',
  'next.leave':
    'Hältst du sie oder trägst du sie bei dir, leg sie hin, samt Gerät, wenn sie in einem steckt. Lass sie, wo sie ist, halte andere fern, und schlaf nicht in diesem Raum. Bevor du sie anfasst oder bewegst, drück „{button}“: Die letzte Seite sagt, ob du es darfst und wie du sie bis zum Abgeben aufbewahrst.',
  'next.handle.held':
    'Solange sie kalt und ruhig bleibt, bewahre sie allein auf, fern von losem Metall und allem, was brennen kann.',
  'next.handle': `${safety['safety.quiet.only']} Bewahre sie allein auf, fern von losem Metall und allem, was brennen kann. Sonst lass sie, wo sie ist, und fass sie nicht an.`,
  'part.means': 'Was das Ergebnis bedeutet',
  'button.details': 'Einzelheiten',
  'button.change': 'Eine Antwort ändern',
  'details.page': 'Seite {page} von {pages}',
  'details.on': 'Nächste Seite',
  'details.back': 'Vorige Seite',
  'details.close': 'Zurück zum Ergebnis',
  'details.nothing': 'Dazu gibt es hier nichts zu sagen.',
  'part.asked-next': 'Die Frage, die jetzt am meisten weiterhilft',
}
