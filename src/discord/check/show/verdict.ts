// Shows a verdict: the word, why, what was not checked, what would change it, what to do now, and always the whole caution.
import { ButtonStyle } from 'discord.js'
import type { VerdictScreen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Unchecked } from '../../../engine/explain.ts'
import type { Finding } from '../../../engine/judge.ts'
import type { Meaning } from '../../../engine/pack/pack.ts'
import type { Verdict } from '../../../ground/verdicts.ts'
import type { Key } from '../../../words/catalogue.ts'
import { sayAnswer, sayAnswered, sayChange, sayFinding, sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { fitLists } from '../../message/fit-text.ts'
import { gallery, message, rows, type ShownMessage, small, text, textBudget } from '../../message/parts.ts'
import type { ShownPicture } from '../../message/shown-picture.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { afterVerdict } from './after-verdict.ts'
import { button } from './check-buttons.ts'

export function showVerdict(
  say: Say,
  program: Program,
  screen: VerdictScreen,
  pictures: readonly ShownPicture[] = [],
  note?: string,
  /** What is said beside the verdict, and changes nothing of it. */
  beside: readonly string[] = [],
): ShownMessage {
  const { check, judgement, more } = screen
  const others = beside.join('\n')
  const head = [
    `## ${say(`verdict.${judgement.verdict}`)}`,
    `-# ${say('check.title', { what: sayWhat(say, program.family) })}`,
    say(`verdict.${judgement.verdict}.means`),
    ...which(say, screen),
    `**${say('caution.line')}**`,
  ].join('\n')
  const steps = `**${say('part.next')}**\n${stepsFor(program, screen, say)
    .map(step => `- ${step}`)
    .join('\n')}`
  const caution = `> ${say('caution.full')}`
  const packs = program.packs.map(pack => `${pack.id} ${pack.version} (${pack.digest.slice(0, 15)})`).join(', ')
  const judged = say('part.judged', { packs })
  const counts = check.leaves === 'outcome' || check.leaves === 'declined' ? say(`counts.${check.leaves}`) : ''
  const fixed = [note ?? '', others, head, steps, caution, judged, counts].reduce(
    (sum, part) => sum + part.length + 3,
    0,
  )
  const lists = fitLists(listsOf(say, program, screen), fixed, textBudget)
  // Whoever is in danger, or could not tell whether they are, reads first what to do.
  const [before, after] =
    judgement.verdict === 'danger' || couldNotTell(program, screen)
      ? [[steps], lists]
      : [lists.slice(0, 1), [steps, ...lists.slice(1)]]
  return message(
    [
      ...(note ? [text(note)] : []),
      text(head),
      ...before.map(text),
      ...gallery(pictures),
      ...(others ? [text(others)] : []),
      ...after.map(text),
      text(caution),
      ...rows(afterVerdict(say, screen)),
      ...rows([
        ...(more ? [button(check, { is: 'go-on' }, say('button.go-on'), ButtonStyle.Primary)] : []),
        ...(check.trail.length > 0 ? [button(check, { is: 'back' }, say('button.correct'))] : []),
        button(check, { is: 'close' }, say('button.close')),
        ...(check.leaves === 'outcome' ? [button(check, { is: 'leave-nothing' }, say('button.leave-nothing'))] : []),
        ...(check.server === null ? [] : [handButton(check, 'hands', say('button.hands'))]),
      ]),
      ...(counts ? [small(counts)] : []),
      small(judged),
    ],
    pictures,
  )
}

function which(say: Say, { judgement }: VerdictScreen): string[] {
  const kinds = judgement.findings.flatMap(({ rule, carries }): Meaning[] =>
    carries && rule.kind === 'must' ? [rule.means] : [],
  )
  if (kinds.length === 0) return []
  const list = new Intl.ListFormat(say.locale, { type: 'disjunction' })
  return [say('verdict.which', { kinds: list.format([...new Set(kinds)].map(kind => say(`kind.${kind}`))) })]
}

function listsOf(say: Say, program: Program, { judgement, explanation, check }: VerdictScreen) {
  const questionOf = (id: string) => program.questions.get(id)
  const ask = (id: string) => questionOf(id)?.ask ?? id
  const rest = (count: number) => say('list.rest', { count })
  const { findings } = judgement
  const carried = findings.filter(finding => finding.carries)
  const others = findings.filter(
    finding => !finding.carries && finding.rule.kind !== 'no-bearing' && !saidAlready(program, finding, carried),
  )
  const answered = (id: string): string => {
    const question = questionOf(id)
    const answer = check.answers[id]
    return sayAnswered(say, check, id, ask(id), question && answer ? sayAnswer(say, question, answer) : '')
  }
  const enough = explanation.enough.length < check.trail.length ? explanation.enough.map(answered) : []
  // Nobody is sent back to a dangerous cell to find out more about it; a slip of the finger can still be corrected.
  const danger = judgement.verdict === 'danger'
  const changes = explanation.changes
    .filter(change => !danger || change.correction)
    .map(change => sayChange(say, program, change))
  return [
    { title: say('part.why'), items: carried.map(finding => sayFinding(say, program, finding)), rest },
    { title: say('part.also'), items: others.map(finding => sayFinding(say, program, finding)), rest },
    { title: say('part.enough'), items: enough, rest },
    {
      title: say('part.no-bearing'),
      items: findings
        .filter(finding => finding.rule.kind === 'no-bearing')
        .map(finding => sayFinding(say, program, finding)),
      rest,
    },
    {
      title: say('part.changes'),
      items: (changes.length > 0 ? changes : [say('change.none')]).slice(0, mostChanges),
      rest,
    },
    {
      title: say('part.unchecked'),
      items: danger
        ? [say('unchecked.danger')]
        : hazardsFirst(program, explanation.unchecked).map(one =>
            say(`unchecked.${one.why}`, { question: ask(one.question) }),
          ),
      most: mostUnchecked,
      rest,
    },
  ]
}

/** Whether a sign of danger was asked about and could not be told. */
const couldNotTell = (program: Program, { explanation }: VerdictScreen): boolean =>
  explanation.unchecked.some(one => one.why === 'cant-tell' && program.hazards.has(one.question))

/** A sign that reads only what a carrying rule reads says the same thing more weakly. */
function saidAlready(program: Program, finding: Finding, carried: readonly Finding[]): boolean {
  const readBy = (one: Finding) => program.reads.get(one.rule.id) ?? []
  return carried.some(one => readBy(finding).every(question => readBy(one).includes(question)))
}

const hazardsFirst = (program: Program, unchecked: readonly Unchecked[]): Unchecked[] =>
  [true, false].flatMap(hazard => unchecked.filter(one => program.hazards.has(one.question) === hazard))

/** More than this many ways to change a verdict help nobody. */
const mostChanges = 4
const mostUnchecked = 8

export function stepsFor(program: Program, { judgement, explanation }: VerdictScreen, say: Say): string[] {
  const { findings, verdict } = judgement
  const leave = findings.some(({ rule, carries }) => carries && rule.kind === 'hazard' && rule.act === 'get-away')
  if (leave) return leaving.map(key => say(key))
  const open = explanation.unchecked.filter(one => program.hazards.has(one.question))
  const unsure = open.filter(one => one.why === 'cant-tell').length
  const unseen = open.length - unsure
  return [
    ...(unsure > 0 && verdict !== 'danger' ? [say('next.hazard-unsure', { count: unsure })] : []),
    ...(unseen > 0 && verdict !== 'danger' ? [say('next.hazard-unseen', { count: unseen })] : []),
    ...steps[verdict].map(key => say(key)),
  ]
}

/** From a cell that smokes, leaks or swells one goes away: nothing may ask for hands on it. */
const leaving: readonly Key[] = [
  'safety.now',
  'safety.now.far',
  'safety.now.carry',
  'safety.now.call',
  'safety.now.gone-quiet',
]

const steps: Record<Verdict, readonly Key[]> = {
  danger: ['safety.quiet', 'safety.quiet.keep', 'safety.quiet.hand-in', 'safety.turns', 'next.keep'],
  'ruled-out': ['next.not-use', 'next.keep', 'next.seller', 'next.no-post', 'next.dispose', 'next.buy'],
  doubtful: ['next.not-use', 'next.keep', 'next.seller', 'next.no-post', 'next.buy'],
  open: ['next.until-sure', 'next.ask', 'next.buy'],
  'nothing-found': ['next.until-sure', 'next.ask', 'next.buy'],
}
