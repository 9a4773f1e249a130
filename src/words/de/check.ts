// German for a running check: questions, forms, consents, progress.

import type { InWordsOf } from '../catalogue.ts'
import type { check as english } from '../en/check.ts'
import { safety } from './safety.ts'

export const check: InWordsOf<typeof english> = {
  'caution.line': 'Bist du dir bei irgendetwas unsicher? Dann benutze die Zelle nicht.',
  'check.title': 'Prüfung: {what}',
  'check.batch':
    '{cells, plural, other {Du prüfst # zusammen gekaufte Zellen. Sieh dir jede an und antworte für die, die am schlechtesten aussieht.}}',
  'check.progress':
    '{answered, plural, =0 {Noch keine Frage beantwortet} one {# Frage beantwortet} other {# Fragen beantwortet}}, höchstens noch {left, number}. Du kannst jederzeit aufhören.',
  'check.again': 'Bitte sieh noch einmal hin',
  'check.again.why':
    'Du hast „{answer}“ geantwortet. Zusammen mit dem, was du vorher gesagt hast, hieße das: Es ist nicht die Zelle, für die sie ausgegeben wird. Dabei verzählt oder verliest man sich leicht. Sieh noch einmal hin und antworte dann noch einmal; dieselbe Antwort zählt. Wenn eine frühere Antwort das Versehen war, geh zurück.',
  'check.unsure': 'Kann ich nicht sagen',
  'check.back': 'Zurück',
  'check.pause': 'Pause',
  'check.finish': 'Aufhören und das Ergebnis zeigen',
  'check.measure': 'Messwert eintippen',
  'check.choose': 'Wähle, was du siehst',
  'check.letter': '{letter} · {label}',
  'check.not-so': 'Stimmt nicht: frag mich noch einmal',
  'care.look': 'Nur hinsehen, oder sagen, was du weißt. Nichts muss angefasst werden.',
  'care.handle': 'Halte die Zelle behutsam. Halte beide Enden von Metall fern.',
  'care.meter': 'Du brauchst ein Messgerät. Wenn du keines hast, antworte „Kann ich nicht sagen“.',
  'care.unwrap':
    'Nur wenn du sicher bist, dass du es ohne Schaden kannst. Nichts schneiden, nichts hebeln, nichts mit Gewalt.',
  'care.bench':
    'Nur unter Aufsicht, auf einer Fläche, die nicht brennen kann, ohne Brennbares in der Nähe. Hör bei 60 °C auf, und bei jedem Geruch, Zischen oder Aufblähen.',
  'consent.unwrap.title': 'Hast du schon einmal eine Hülle oder einen Isolierring angehoben?',
  'consent.unwrap.text':
    'Für die nächsten Fragen muss man unter die Hülle oder den Isolierring sehen. Ein Ausrutscher kann die Zelle kurzschließen: Sie kann innerhalb von Sekunden brennen. Niemand hebt Hülle oder Ring an, der nicht sicher ist, dass er es ohne Schaden kann. Wenn du es noch nie gemacht hast, sag Nein. Die Prüfung geht ohne das weiter, und eine Zelle, bei der du dir nicht sicher sein kannst, wird nicht benutzt.',
  'consent.unwrap.yes': 'Ich habe es schon gemacht und nehme das Risiko auf mich',
  'consent.unwrap.no': 'Nein, ohne das weitermachen',
  'consent.bench.title': 'Hast du schon einmal mit der richtigen Ausrüstung bloße Zellen belastet?',
  'consent.bench.text':
    'Für die nächsten Fragen braucht es eine gemessene Last. Es muss jemand dabei sein, auf einer Fläche, die nicht brennen kann, ohne Brennbares in der Nähe und weit weg von Schlafplätzen. Hör bei 60 °C auf, bei jedem Geruch, Zischen oder Aufblähen. Die Regeln an deinem Ort und die Anleitung des Herstellers gehen vor. Eine Messung, die die Zelle besteht, beweist nichts.',
  'consent.bench.yes': 'Ich habe es schon gemacht und nehme das Risiko auf mich',
  'consent.bench.no': 'Nein, ohne das weitermachen',
  'paused.text':
    'Pause. Deine Antworten bleiben bis {date} erhalten. Drück den Knopf, oder nimm in irgendeinem Kanal /prüfung weiter.',
  'paused.resume': 'Weitermachen',
  'closed.text': 'Geschlossen. Eine Zelle, bei der du dir nicht sicher bist, wird nicht benutzt.',
  'form.title': 'Dein Messwert',
  'form.value': 'Was du abliest, mit Einheit',
  'form.capacity': 'Aufgedruckte Kapazität',
  'form.diameter': 'Durchmesser, gemessen',
  'form.length': 'Länge, gemessen',
  'form.mass': 'Masse, gemessen',
  'form.nominal-voltage': 'Aufgedruckte Nennspannung',
  'form.nominal-voltage.hint': 'Leer lassen, wenn keine aufgedruckt ist; dann werden 3,6 V genommen',
  'form.claimed-current': 'Angegebener Strom',
  'form.cutoff': 'Entladeschlussspannung',
  'form.room': 'Raumtemperatur',
  'form.hint': 'Zum Beispiel {example}',
  'form.instrument': 'Womit du gemessen hast',
  'instrument.kitchen-scale': 'Küchenwaage (ganze Gramm)',
  'instrument.tenth-gram-scale': 'Waage, die 0,1 g anzeigt',
  'instrument.calliper': 'Messschieber',
  'instrument.ruler': 'Lineal',
  'instrument.thermometer': 'Thermometer',
  'instrument.other': 'Etwas anderes, oder nicht sicher',
  'instrument.basic-multimeter': 'Einfaches Multimeter',
  'instrument.four-wire-meter': 'Innenwiderstands-Messgerät mit vier Leitungen',
  'instrument.hobby-load': 'Hobby-Ladegerät oder elektronische Last',
  'instrument.lab-load': 'Laborlast',
  'list.none': 'Du hast keine offene Prüfung. Beginne eine mit /prüfung start.',
  'list.title': 'Deine offenen Prüfungen',
  'list.entry':
    '{what}: {count, plural, =0 {noch keine Antwort} one {# Antwort} other {# Antworten}}, aufbewahrt bis {date}',
  'list.resume': 'Weiter mit {number}',
  'what.family': '{name} von {maker}',
  'what.unknown': 'eine Zelle (Modellreihe nicht in der Liste)',
  'language.missing':
    'Auf {language} gibt es hier noch keine Texte, darum steht hier Englisch. Der Bot spricht auch {others}.',
  'check.hazard-unsure': `Bei einem Zeichen von Gefahr warst du unsicher. Lass die Zelle liegen, wo sie ist. Müsstest du sie für eine Antwort anfassen, wähle „Kann ich nicht sagen“. ${safety['safety.turns']}`,
  'stale.note':
    'Dieser Knopf war von einem früheren Schritt. Es wurde nichts geändert; hier siehst du, wo die Prüfung jetzt steht.',
}
