// The details of a verdict, in pages: all reasons with their sources, what would change it and what was not checked, all steps and the packs.
import type { VerdictScreen } from '../../../check/screen.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Unchecked } from '../../../engine/explain.ts'
import type { Finding } from '../../../engine/judge.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import { sayAnswer, sayAnswered, sayChange, sayFinding, sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { sayReason } from '../../../words/say-reason.ts'
import { type FittingList, fitLists } from '../../message/fit-text.ts'
import { gallery, message, rows, type ShownMessage, small, text, textBudget } from '../../message/parts.ts'
import { isDanger, whatCanWait } from './after-verdict.ts'
import { button } from './check-buttons.ts'
import { aidFor, stepsFor } from './steps.ts'

/** The pages there are, from 1 on. */
export const detailPages = 3

/** More than this many ways to change a verdict help nobody. */
const mostChanges = 4
const mostUnchecked = 12

/** `pictures`: what the family looks like, on the first page. */
export function showDetails(
  say: Say,
  program: Program,
  screen: VerdictScreen,
  page: number,
  pictures: readonly ShownPicture[] = [],
): ShownMessage {
  const { check, judgement } = screen
  const head = [
    `### ${say(`verdict.${judgement.verdict}`)}`,
    `-# ${say('check.title', { what: sayWhat(say, program.family) })} · ${say('details.page', { page, pages: detailPages })}`,
  ].join('\n')
  const fixed = head.length + say('caution.full').length + 200
  const parts =
    page === 1
      ? reasons(say, program, screen)
      : page === 2
        ? whatElse(say, program, screen)
        : steps(say, program, screen)
  const shown = fitLists(parts, fixed, textBudget)
  const packs = program.packs.map(pack => `${pack.id} ${pack.version} (${pack.digest.slice(0, 15)})`).join(', ')
  const drawn = page === 1 ? pictures : []
  return message(
    [
      text(head),
      ...gallery(drawn),
      ...(shown.length > 0 ? shown : [say('details.nothing')]).map(text),
      ...(page === detailPages ? [text(`> ${say('caution.full')}`), small(say('part.judged', { packs }))] : []),
      ...rows([
        ...(page > 1 ? [button(check, { is: 'details', page: page - 1 }, say('details.back'))] : []),
        ...(page < detailPages ? [button(check, { is: 'details', page: page + 1 }, say('details.on'))] : []),
        button(check, { is: 'show' }, say('details.close')),
      ]),
      ...(isDanger(screen) ? rows(whatCanWait(say, screen)) : []),
      small(say('caution.line')),
    ],
    drawn,
  )
}

const listing =
  (say: Say) =>
  (title: string, items: readonly string[], most?: number): FittingList => ({
    title,
    items,
    ...(most !== undefined && { most }),
    rest: (count: number) => say('list.rest', { count }),
  })

function reasons(say: Say, program: Program, { judgement, explanation, check }: VerdictScreen): FittingList[] {
  const list = listing(say)
  const { findings } = judgement
  const carried = findings.filter(finding => finding.carries)
  const others = findings.filter(
    finding => !finding.carries && finding.rule.kind !== 'no-bearing' && !saidAlready(program, finding, carried),
  )
  const reason = (finding: Finding) => sayReason(say, program, check, finding, sayFinding(say, program, finding))
  const given = (id: string): string => sayGiven(say, program, check, id)
  const enough = explanation.enough.length < check.trail.length ? explanation.enough.map(given) : []
  const means = [say(`verdict.${judgement.verdict}.means`)]
  return [
    list(say('part.means'), means),
    list(say('part.why'), carried.map(reason)),
    list(say('part.also'), others.map(reason)),
    list(say('part.enough'), enough),
  ]
}

/** A question with what was answered to it. */
function sayGiven(say: Say, program: Program, check: VerdictScreen['check'], id: string): string {
  const question = program.questions.get(id)
  const answer = check.answers[id]
  return sayAnswered(say, check, id, question?.ask ?? id, question && answer ? sayAnswer(say, question, answer) : '')
}

function whatElse(say: Say, program: Program, { judgement, explanation, check }: VerdictScreen): FittingList[] {
  const list = listing(say)
  const said = (id: string): string => sayGiven(say, program, check, id)
  const ask = (id: string) => program.questions.get(id)?.ask ?? id
  // Nobody is sent back to a dangerous cell to find out more about it; a slip of the finger can still be corrected.
  const danger = judgement.verdict === 'danger'
  const changes = explanation
    .changes()
    .filter(change => !danger || change.correction)
    .map(change => sayChange(say, program, change))
  const unchecked = danger
    ? [say('unchecked.danger')]
    : hazardsFirst(program, explanation.unchecked).map(one =>
        one.why === 'undecided'
          ? say('unchecked.undecided', { said: said(one.question) })
          : say(`unchecked.${one.why}`, { question: ask(one.question) }),
      )
  const noBearing = judgement.findings.filter(finding => finding.rule.kind === 'no-bearing')
  return [
    list(say('part.changes'), (changes.length > 0 ? changes : [say('change.none')]).slice(0, mostChanges)),
    list(
      say('part.no-bearing'),
      noBearing.map(finding => sayFinding(say, program, finding)),
    ),
    list(say('part.unchecked'), unchecked, mostUnchecked),
  ]
}

const steps = (say: Say, program: Program, screen: VerdictScreen): FittingList[] => [
  listing(say)(say('part.next'), [...stepsFor(program, screen, say), ...aidFor(screen, say)]),
]

/** A sign that reads only what a carrying rule reads says the same thing more weakly. */
function saidAlready(program: Program, finding: Finding, carried: readonly Finding[]): boolean {
  const readBy = (one: Finding) => program.reads.get(one.rule.id) ?? []
  return carried.some(one => readBy(finding).every(question => readBy(one).includes(question)))
}

const hazardsFirst = (program: Program, unchecked: readonly Unchecked[]): Unchecked[] =>
  [true, false].flatMap(hazard => unchecked.filter(one => program.hazards.has(one.question) === hazard))
