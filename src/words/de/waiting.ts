// German for what waits on a server, for helpers, and for whoever looks at somebody's question.
import type { InWordsOf } from '../catalogue.ts'
import type { waiting as english } from '../en/waiting.ts'
import { safety } from './safety.ts'

export const waiting: InWordsOf<typeof english> = {
  'command.check.waiting': 'Sehen, wer auf diesem Server nicht weiterkommt oder auf jemanden wartet, und seit wann',
  'queue.title': 'Was wartet',
  'queue.none': 'Nichts dieser Art wartet auf jemanden.',
  'queue.asked': 'kommt nicht weiter seit {since}',
  'queue.offered': 'angeboten für {taker}, seit {since}',
  'queue.entry': '**{what}**, bei {holder}: {state}',
  'queue.claimed': '{who} sieht es sich an.',
  'queue.meant': 'Weitergegeben an {taker}.',
  'queue.look': 'Ansehen',
  'queue.choose': 'Was aufgelistet wird',
  'queue.filter.all': 'Alles, was wartet',
  'queue.filter.help': 'Fragen, bei denen jemand nicht weiterkommt',
  'queue.filter.free': 'Fragen, die sich noch niemand ansieht',
  'queue.filter.mine': 'Meine, und was mir oder meinen Rollen weitergegeben wurde',
  'queue.filter.taker': 'Prüfungen, die jemand übernehmen soll',
  'queue.to-message': 'Zur Nachricht',
  'queue.count': '{count, plural, one {# wartet} other {# warten}}{pages, plural, one {} other {, Seite {page} von #}}',
  'help-request.claim': 'Ich sehe es mir an',
  'help-request.let-go': 'Wieder freigeben',
  'help-request.pass-on': 'Weitergeben an …',
  'form.pass-on.to.hint': 'Eine Person oder Rolle. Leer: alle, die helfen dürfen.',
  'deed.claimed': '{when}: {who} hat es sich angesehen',
  'deed.let-go': '{when}: {who} hat es wieder freigegeben',
  'deed.passed-on': '{when}: {who} hat es an {taker} weitergegeben',
  'refusal.claimed-already':
    'Jemand sieht sich diese Frage schon an und kann sie freigeben oder an dich weitergeben; beantworten kannst du sie trotzdem.',
  'refusal.not-claimed': 'Du siehst dir diese Frage nicht an, also gibt es nichts freizugeben.',
  'setup.open.helpers': 'Helfende',
  'setup.part.helpers': 'Helfende',
  'setup.short.helpers': 'Rollen, die für Leute antworten dürfen, die nicht weiterkommen, und sonst nichts.',
  'setup.long.helpers':
    'Mitglieder dieser Rollen sehen mit /prüfung wartend, bei welchen Fragen jemand nicht weiterkommt, und dürfen sie beantworten oder an jemanden weitergeben. Fotos sehen sie nur, wenn sie den Kanal für Rückfragen lesen können. Sie sehen keine Berichte, entscheiden über keine Funde und können keine Prüfung übernehmen. Ihre eigenen Prüfungen werden gezählt wie alle. Nenn bis zu {roles, number} Rollen; nicht die, die alle haben, und keine, die einem Bot gehört.',
  'setup.now.no-helpers': 'keine: Nur die Moderation antwortet',
  'setup.problem.everyone-as-helper':
    'Das ist die Rolle, die alle haben: Mit ihr könnten alle für alle antworten. Es wurde nichts geändert: Wähl eine andere Rolle.',
  'counting.now.moderator':
    'Du moderierst diesen Server, deshalb werden deine Prüfungen hier nicht gezählt, was immer du wählst. Anderswo:',
  'queue.filter.still': 'Prüfungen, die stillstehen',
  'queue.filter.handled': 'Fragen, die erledigt sind',
  'queue.untouched': 'nicht angerührt seit {since}',
  'queue.closing': '{who} hat gefragt, ob sie geschlossen werden kann.',
  'queue.held': '**{what}**, bei {holder}',
  'queue.still.count':
    '{count, plural, =0 {Keine Prüfung in anderen Händen steht still.} one {# Prüfung steht still} other {# Prüfungen stehen still}}{pages, plural, one {} other {, Seite {page} von #}}',
  'queue.handled.count':
    '{count, plural, =0 {Keine erledigte Frage ist noch aufbewahrt. Was zu einer geschlossenen Prüfung gehört, ist gelöscht.} one {# Frage ist erledigt} other {# Fragen sind erledigt}}{pages, plural, one {} other {, Seite {page} von #}}',
  'desk.redirect': 'Jemandem anbieten …',
  'desk.ask-closing': 'Schließen vorschlagen',
  'desk.close': 'Ja, schließen',
  'desk.keep': 'Nein, offen lassen',
  'desk.reopen': 'Noch einmal ansehen',
  'desk.pair': 'Eine zweite Person wünschen',
  'desk.no-pair': 'Eine Person reicht',
  'desk.pair.on':
    'Du wünschst eine zweite Person: Hieße eine Antwort, die jemand für dich gibt, dass die Zelle nicht das ist, wofür sie ausgegeben wird, muss noch jemand dasselbe sagen, bevor sie zählt.',
  'desk.asked': '{holder} wird gefragt, ob die Prüfung geschlossen werden kann.',
  'desk.untold':
    'Der Bot konnte {holder} nicht benachrichtigen: Die Prüfung war in keinem Kanal zu sehen, in dem der Bot schreiben darf. Beim nächsten Öffnen der Prüfung steht es da.',
  'desk.redirected.unseen':
    'Der Bot konnte sie in keinem Kanal zeigen. Die Person, für die sie gedacht ist, findet sie mit /prüfung liste.',
  'desk.settled': 'Ob diese Prüfung gezählt wird, ist schon entschieden: Eine neue Antwort ändert daran nichts.',
  'desk.kept': 'Sie bleibt offen.',
  'hands.closing': '{who} hat gefragt, ob diese Prüfung geschlossen werden kann. Machst du weiter, bleibt sie offen.',
  'hands.reopened':
    'Jemand sieht sich eine Frage dieser Prüfung noch einmal an, das Ergebnis kann sich also noch ändern. Benutze und lade die Zelle bis dahin nicht.',
  'helping.second':
    'Jemand hat das schon beantwortet. Sag nur, was du selbst siehst: Sagt ihr dasselbe, zählt es; sonst zählt es als „Kann ich nicht sagen“.',
  'helping.waits-second':
    'Danke. {holder} wünscht, dass noch jemand hinsieht, bevor diese Antwort zählt. Deine ist aufbewahrt, und die Frage wartet auf jemand anderen.',
  'word.closing':
    '{who}, die Prüfung steht still ({what}), und {helper} fragt, ob sie geschlossen werden kann. Beim Schließen werden deine Antworten gelöscht. Tust du nichts, bleibt sie offen, bis sie abläuft.',
  'word.reopened':
    '{who}, {helper} sieht sich eine Frage noch einmal an, die für dich beantwortet wurde ({what}). Das Ergebnis kann sich noch ändern: Benutze und lade die Zelle bis dahin nicht.',
  'word.redirected':
    '{who}, deine Prüfung ({what}) ist jetzt neu angeboten. Für: {taker}. Geändert hat es {helper}. Du kannst sie weiterhin zurücknehmen.',
  'word.disagree': `{who}, zwei Personen haben sich deine Frage angesehen und sagen nicht dasselbe; das zählt als „Kann ich nicht sagen“. Behandle die Zelle als gefährlich: Hältst du sie, leg sie hin; steckt sie in etwas, das du trägst, leg das ab, ohne hineinzugreifen; sonst lass sie liegen. ${safety['safety.quiet']} ${safety['safety.turns']} Deine Prüfung geht weiter.`,
  'deed.redirected': '{when}: {who} hat sie neu angeboten, für: {taker}',
  'deed.asked-closing': '{when}: {who} hat gefragt, ob sie geschlossen werden kann',
  'deed.kept-open': '{when}: {who} hat sie offen gelassen',
  'deed.reopened': '{when}: {who} hat sich eine Antwort noch einmal angesehen',
  'refusal.closing-asked':
    'Ob sie geschlossen werden kann, wurde schon gefragt. Kommt keine Antwort, läuft sie von selbst ab.',
  'refusal.closing-not-asked': 'Niemand fragt mehr, ob diese Prüfung geschlossen werden kann. Sie bleibt offen.',
  'refusal.moves-still':
    'In den letzten {hours, number} Stunden hat jemand an dieser Prüfung weitergemacht, sie steht also nicht still. Frag später.',
  'refusal.not-finished':
    'Diese Prüfung ist nicht zu Ende. Wer sie hat, kann jede Antwort ändern und bei jeder Frage wieder fragen.',
  'refusal.not-helped':
    'In dieser Prüfung gibt es keine Antwort, die du dir noch einmal ansehen darfst. Wer sie hat, kann jede Antwort ändern.',
  'refusal.danger-stands':
    'Diese Prüfung hat eine Gefahr erkannt, und das nimmt niemand von fern zurück. Nur wer bei der Zelle ist, kann diese Antwort ändern.',
  'refusal.second-helper':
    'Du hast das schon beantwortet, und gewünscht ist eine zweite Person. Überlass es jemand anderem.',
  'closed.again':
    'Was du geantwortet hast, ist gelöscht, deshalb lässt sich diese Prüfung nicht wieder öffnen. Du kannst neu beginnen, und zwar mit dem, was schon bekannt ist: als was die Zelle verkauft wurde und was auf ihr steht.',
  'closed.begin': 'Neu beginnen',
  'setup.open.reminders': 'Erinnern',
  'setup.part.reminders': 'Erinnerungen',
  'setup.short.reminders': 'Einmal, im Kanal für Rückfragen, wenn jemand lange wartet.',
  'setup.long.reminders':
    'Wartet eine Frage oder eine Prüfung, die jemand übernehmen soll, länger als eingestellt, sagt es der Bot einmal im Kanal für Rückfragen, mit dem Weg zu jeder. Er nennt niemanden, der wartet. Angepingt wird niemand, solange du keine Rolle dafür wählst.',
  'setup.now.no-reminders': 'keine',
  'setup.now.reminders': 'nach {hours, plural, one {# Stunde} other {# Stunden}}; niemand wird angepingt',
  'setup.now.reminders-pinging': 'nach {hours, plural, one {# Stunde} other {# Stunden}}; angepingt wird {role}',
  'setup.reminders.nowhere': 'Es gibt keinen Kanal für Rückfragen, also keinen Ort dafür: Wähl zuerst einen.',
  'setup.reminders.role-gone':
    'Die Rolle, die angepingt werden soll, gibt es nicht mehr: Niemand wird angepingt, bis du eine andere wählst.',
  'setup.reminders.silent':
    '{role} würde nicht angepingt: Erlaube in ihren Einstellungen allen, sie zu erwähnen, oder lass den Bot alle Rollen erwähnen.',
  'setup.choose.hours': 'Nach welcher Zeit',
  'setup.choose.ping': 'Wähl eine Rolle, die angepingt wird',
  'setup.hours': '{hours, plural, one {Nach # Stunde} other {Nach # Stunden}}',
  'setup.hours.off': 'Keine Erinnerungen',
  'setup.no-ping': 'Niemanden anpingen',
  'setup.problem.everyone-as-pinged':
    'Das ist die Rolle, die alle haben, und alle werden nie angepingt. Es wurde nichts geändert: Wähl eine andere Rolle.',
  'setup.problem.no-reminders': 'Es gibt keine Erinnerungen. Schalte sie zuerst ein, dann wähl eine Rolle.',
  'reminder.title': 'Jemand wartet',
  'reminder.text':
    '{count, plural, one {# Prüfung wartet} other {# Prüfungen warten}} schon länger als {hours, plural, one {# Stunde} other {# Stunden}}. Alles, was wartet, zeigt /prüfung wartend.',
  'reminder.help': 'eine Frage in der Prüfung ({what}), seit {since}',
  'reminder.taker': 'die Prüfung ({what}), die jemand übernehmen soll, seit {since}',
  'reminder.role-gone': 'Die Rolle, die angepingt werden sollte, gibt es nicht mehr: Wähl eine andere mit /einrichten.',
  'queue.help':
    '{count, plural, =0 {In den letzten {weeks, number} abgeschlossenen Wochen hat niemand {least, number} Fragen oder mehr erledigt, soweit es gezählt ist.} other {Wer in den letzten {weeks, number} abgeschlossenen Wochen Fragen erledigt hat, ab {least, number} und in Schritten von {least, number}; wer es nicht will, wird nicht gezählt:}}',
  'queue.help.one': '{who}: {count, number} oder mehr',
}
