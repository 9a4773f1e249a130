// Shows a verdict on one phone screen: the card, the word, why, what to do now, the caution, and the ways on.
import { type APIButtonComponent, ButtonStyle } from 'discord.js'
import { mustKeepOff } from '../../../check/next.ts'
import type { VerdictScreen } from '../../../check/screen.ts'
import { toolsMissing } from '../../../check/tools.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Meaning } from '../../../engine/pack/pack.ts'
import { isFailing } from '../../../ground/verdicts.ts'
import { markedFindings } from '../../../pictures/from-checks/marked-views.ts'
import type { ShownPicture } from '../../../services/pictures/shown-picture.ts'
import type { Say } from '../../../words/say.ts'
import { sayReason } from '../../../words/say-reason.ts'
import { nothingPictured, type Pictured } from '../../families/family-photos.ts'
import { gallery, message, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import { handButton } from '../hand-over/show/holder-menu.ts'
import { buyingButton, isDanger, whatCanWait } from './after-verdict.ts'
import { button } from './check-buttons.ts'
import { aidFor, sayQuestions, shownSteps, stepsFor } from './steps.ts'

/** More reasons and steps than these are not read on a phone; the details have all of them. */
const mostReasons = 2
const mostSteps = 5

export function showVerdict(
  say: Say,
  program: Program,
  screen: VerdictScreen,
  pictures: readonly ShownPicture[] = [],
  note?: string,
  /** What is said beside the verdict, and changes nothing of it. */
  beside: readonly string[] = [],
  fakes: Pictured = nothingPictured,
): ShownMessage {
  const { check, judgement } = screen
  const counts = check.leaves === 'outcome' || check.leaves === 'declined' ? say(`counts.${check.leaves}`) : ''
  const danger = judgement.verdict === 'danger'
  const body = danger ? dangerText(say, program, screen) : verdictText(say, program, screen)
  return message(
    [
      ...(note ? [text(note)] : []),
      // In danger the words come first: nothing is looked at before one has got away.
      ...(danger ? [] : gallery(pictures)),
      text(body),
      ...(beside.length > 0 && !danger ? [text(beside.join('\n'))] : []),
      ...(danger ? [] : fakes.parts),
      text(danger ? say('caution.line') : `**${say('caution.line')}**`),
      ...rows(mainButtons(say, program, screen)),
      ...rows(otherButtons(say, screen)),
      ...(danger ? gallery(pictures) : []),
      small(
        [
          ...(counts && !danger ? [counts] : []),
          say(isFailing(judgement.verdict) ? 'caution.failed' : 'caution.full'),
        ].join('\n'),
      ),
    ],
    danger ? pictures : [...pictures, ...fakes.pictures],
  )
}

/** What to do is the headline and the only thing in bold; why it was said comes after it. */
function dangerText(say: Say, program: Program, screen: VerdictScreen): string {
  const [first = '', ...others] = stepsFor(program, screen, say)
  const steps = [...others, ...aidFor(screen, say)].map(step => `- ${step}`)
  // Nothing red stands above it: the picture comes after the words.
  return [`## 🛑 ${first}`, ...steps, '', ...reasonsOf(say, program, screen)].join('\n')
}

function verdictText(say: Say, program: Program, screen: VerdictScreen): string {
  const { judgement } = screen
  const reasons = reasonsOf(say, program, screen)
  return [
    `## ${say(`verdict.${judgement.verdict}`)}`,
    ...(reasons.length > 0 ? reasons.map(reason => `- ${reason}`) : meansOf(say, program, screen)),
    ...kindsOf(say, screen),
    `**${say('part.next')}**`,
    ...shownSteps(program, screen, say)
      .slice(0, mostSteps)
      .map((step, i) => `${i + 1}. ${step}`),
    ...wouldTell(say, program, screen),
  ].join('\n')
}

/** Where danger could not be ruled out, the first step says so, and nothing reassuring stands before it. */
function meansOf(say: Say, program: Program, screen: VerdictScreen): string[] {
  const { judgement, explanation, more } = screen
  const hazards = explanation.unchecked.filter(one => program.hazards.has(one.question))
  if (hazards.some(one => one.why !== 'not-asked')) return []
  const means = say(`verdict.${judgement.verdict}.means`)
  const unasked = hazards.map(one => one.question)
  if (!more || unasked.length === 0) return [means]
  const signs = sayQuestions(say, program, unasked)
  return [means, say('verdict.hazards-unasked', { signs, button: say('button.go-on') })]
}

/** Reasons that the card marks on the cell come first and bear its numbers, so that both speak of the same. */
function reasonsOf(say: Say, program: Program, { check, judgement }: VerdictScreen): string[] {
  const marks = markedFindings(program, judgement, check.answers)
  const others = judgement.findings.filter(finding => finding.carries && !marks.includes(finding))
  const reasons = [...marks, ...others].slice(0, mostReasons)
  return reasons.map(finding => {
    const said = sayReason(say, program, check, finding, finding.rule.says)
    const number = numbered[marks.indexOf(finding)]
    return number === undefined ? said : `${number} ${said}`
  })
}

/** As they stand in circles on the card. */
const numbered = ['①', '②', '③', '④']

/** What it points to: counterfeit, another cell under the wrap, …; nothing where no must was contradicted. */
function kindsOf(say: Say, { judgement }: VerdictScreen): string[] {
  const kinds = judgement.findings.flatMap(({ rule, carries }): Meaning[] =>
    carries && rule.kind === 'must' ? [rule.means] : [],
  )
  if (kinds.length === 0) return []
  const list = new Intl.ListFormat(say.locale, { type: 'disjunction' })
  return [say('verdict.which', { kinds: list.format([...new Set(kinds)].map(kind => say(`kind.${kind}`))) })]
}

/** Where nothing was decided: the tools that would tell more, each once. */
function wouldTell(say: Say, program: Program, { check, judgement }: VerdictScreen): string[] {
  if (judgement.verdict !== 'open' && judgement.verdict !== 'nothing-found') return []
  // They all need hands.
  const missing = mustKeepOff(program, check) ? [] : toolsMissing(program, check)
  if (missing.length === 0) return []
  const list = new Intl.ListFormat(say.locale, { type: 'conjunction' })
  return [say('verdict.would-tell', { tools: list.format(missing.map(tool => say(`tool.${tool}.with`))) })]
}

function mainButtons(say: Say, program: Program, screen: VerdictScreen): APIButtonComponent[] {
  const { check, judgement, more } = screen
  const hands = check.server === null ? [] : [handButton(check, 'hands', say('button.hands'))]
  const goOn = more && judgement.verdict !== 'danger' ? [goOnButton(say, program, screen)] : []
  return [
    ...goOn,
    button(check, { is: 'details', page: 1 }, say('button.details')),
    ...hands,
    ...(check.trail.length > 0 ? [button(check, { is: 'answers' }, say('button.change'))] : []),
  ]
}

/** Where the cell is ruled out already, or is to be left alone, nobody is drawn to go on with it. */
function goOnButton(say: Say, program: Program, { check, judgement }: VerdictScreen): APIButtonComponent {
  const plain = isFailing(judgement.verdict) || mustKeepOff(program, check)
  return button(check, { is: 'go-on' }, say('button.go-on'), plain ? undefined : ButtonStyle.Primary)
}

const otherButtons = (say: Say, screen: VerdictScreen): APIButtonComponent[] => [
  buyingButton(say, screen),
  ...(isDanger(screen) ? [] : whatCanWait(say, screen)),
  button(screen.check, { is: 'close' }, say('button.close')),
]
