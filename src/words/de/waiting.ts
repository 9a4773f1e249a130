// German for what waits on a server, for helpers, and for whoever looks at somebody's question.
import type { InWordsOf } from '../catalogue.ts'
import type { waiting as english } from '../en/waiting.ts'

export const waiting: InWordsOf<typeof english> = {
  'command.check.waiting': 'Sehen, wer auf diesem Server festsitzt oder auf jemanden wartet, und seit wann',
  'queue.title': 'Was wartet',
  'queue.none': 'Nichts dieser Art wartet auf jemanden.',
  'queue.asked': 'sitzt fest seit {since}',
  'queue.offered': '{taker} angeboten seit {since}',
  'queue.entry': '**{what}**, bei {holder}: {state}',
  'queue.claimed': '{who} sieht es sich an.',
  'queue.meant': 'Weitergegeben an {taker}.',
  'queue.look': 'Ansehen',
  'queue.choose': 'Was aufgelistet wird',
  'queue.filter.all': 'Alles, was wartet',
  'queue.filter.help': 'Fragen, an denen jemand festsitzt',
  'queue.filter.free': 'Fragen, die sich noch niemand ansieht',
  'queue.filter.mine': 'Meine, und was mir oder meinen Rollen weitergegeben wurde',
  'queue.filter.taker': 'Prüfungen, die jemand übernehmen soll',
  'queue.to-message': 'Zur Nachricht',
  'queue.count': '{count, plural, one {# wartet} other {# warten}}{pages, plural, one {} other {, Seite {page} von #}}',
  'help-request.claim': 'Ich sehe es mir an',
  'help-request.let-go': 'Wieder freigeben',
  'help-request.pass-on': 'Weitergeben an …',
  'form.pass-on.to.hint': 'Eine Person oder Rolle. Leer: alle, die helfen dürfen.',
  'deed.claimed': '{when}: {who} sah es sich an',
  'deed.let-go': '{when}: {who} gab es wieder frei',
  'deed.passed-on': '{when}: {who} gab es weiter an {taker}',
  'refusal.claimed-already':
    'Jemand sieht sich diese Frage schon an und kann sie freigeben oder an dich weitergeben; beantworten kannst du sie trotzdem.',
  'refusal.not-claimed': 'Du siehst dir diese Frage nicht an, also gibt es nichts freizugeben.',
  'setup.open.helpers': 'Helfende',
  'setup.part.helpers': 'Helfende',
  'setup.short.helpers': 'Rollen, die für Leute antworten dürfen, die festsitzen, und sonst nichts.',
  'setup.long.helpers':
    'Mitglieder dieser Rollen sehen mit /prüfung wartend, an welchen Fragen jemand festsitzt, und dürfen sie beantworten oder an jemanden weitergeben. Sie sehen keine Berichte, entscheiden über keine Funde und können keine Prüfung übernehmen. Ihre eigenen Prüfungen werden gezählt wie alle. Nenn bis zu {roles, number} Rollen; nicht die, die alle haben, und keine, die einem Bot gehört.',
  'setup.now.no-helpers': 'keine: nur die Moderation antwortet',
  'setup.problem.everyone-as-helper':
    'Das ist die Rolle, die alle haben: Mit ihr könnten alle für alle antworten. Es wurde nichts geändert: Wähl eine andere Rolle.',
  'counting.now.moderator':
    'Du moderierst diesen Server, deshalb werden deine Prüfungen hier nicht gezählt, was immer du wählst. Anderswo:',
}
