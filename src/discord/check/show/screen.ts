// Turns a screen of a check into a message.
import { type APIMessageTopLevelComponent, ButtonStyle } from 'discord.js'
import type { Check, Consent } from '../../../check/check.ts'
import type { Screen, VerdictScreen } from '../../../check/screen.ts'
import { beginAnew } from '../../../custom-ids/facts-codec.ts'
import type { Program } from '../../../engine/compile.ts'
import type { Family } from '../../../engine/pack/pack.ts'
import { sayExpiry, sayWhat } from '../../../words/describe.ts'
import type { Say } from '../../../words/say.ts'
import { type PhotoDesk, photosBesideQuestion, photosOfFakes } from '../../families/family-photos.ts'
import { type BesideDesk, fakesMatched, sayBeside } from '../../families/say-beside.ts'
import { gallery, message, pressButton, rows, type ShownMessage, small, text } from '../../message/parts.ts'
import type { Services } from '../../services.ts'
import { handButton, showOffered } from '../hand-over/show/holder-menu.ts'
import { showBeginning } from './beginning.ts'
import { button } from './check-buttons.ts'
import { showQuestion } from './question.ts'
import { showVerdict } from './verdict.ts'

/** What screens are shown with: pictures, and the families that can be chosen from. */
type ShowsWith = Pick<Services, 'pictures'> & {
  readonly families: BesideDesk & PhotoDesk & Pick<Services['families'], 'programsFor' | 'heads'>
}

/** The message for a screen; `note` stands above it (a refusal, or that the button was an old one). */
export async function showScreen(
  say: Say,
  program: Program,
  screen: Screen,
  { pictures, families }: ShowsWith,
  note?: string,
): Promise<ShownMessage> {
  const { check } = screen
  const above = note ? [text(note)] : []
  const hands = check.server === null ? [] : [handButton(check, 'hands', say('button.hands'))]
  switch (screen.kind) {
    case 'beginning':
      return showBeginning(say, program, check, await toChooseFrom(families, check.server), note)
    case 'question':
      return showQuestion(
        say,
        program,
        screen,
        await pictures.forQuestion(screen.question, say),
        note,
        await photosBesideQuestion(families, say, check, screen.question.id),
      )
    case 'verdict':
      return showVerdict(
        say,
        program,
        screen,
        await pictures.forVerdict(program, screen.judgement, check.answers, say),
        reopened(say, screen, note),
        await sayBeside(families, say, program, check),
        await photosOfFakes(families, say, check, await fakesMatched(families, program, check)),
      )
    case 'offered':
      return showOffered(say, check, screen.offer, note)
    case 'consent': {
      const { to } = screen
      const bench = to === 'bench' ? await pictures.forBench(say) : undefined
      const shown = bench ? [bench] : []
      return message(
        [
          ...above,
          text(`### ${say(`consent.${to}.title`)}\n${say(`consent.${to}.text`)}`),
          ...gallery(shown),
          ...consents(say, check, to),
          ...rows([
            ...(check.trail.length > 0 ? [button(check, { is: 'back' }, say('check.back'))] : []),
            button(check, { is: 'pause' }, say('check.pause')),
            button(check, { is: 'finish' }, say('check.finish')),
            ...hands,
          ]),
          small(say('caution.line')),
        ],
        shown,
      )
    }
    case 'paused':
      return message([
        ...above,
        text(
          `### ${say('check.title', { what: sayWhat(say, program.family) })}\n${say('paused.text', { date: sayExpiry(check) })}`,
        ),
        ...rows([
          button(check, { is: 'resume' }, say('paused.resume'), ButtonStyle.Primary),
          button(check, { is: 'close' }, say('button.close')),
          ...hands,
        ]),
        small(say('caution.line')),
      ])
    case 'closed':
      return message([
        ...above,
        text(`${say('closed.text')}\n${say('closed.again')}`),
        ...rows([pressButton(beginAnew(check), say('closed.begin'))]),
        small(say('caution.line')),
      ])
  }
}

/** What is risky is not what a hasty finger finds first; whether the cell may be touched is asked like any other question. */
function consents(say: Say, check: Check, to: Consent): APIMessageTopLevelComponent[] {
  const answer = (given: boolean, style?: ButtonStyle.Primary) =>
    button(check, { is: 'consent', to, given }, say(`consent.${to}.${given ? 'yes' : 'no'}`), style)
  return to === 'touch'
    ? rows([answer(true, ButtonStyle.Primary), answer(false, ButtonStyle.Primary)], 1)
    : rows([answer(false, ButtonStyle.Primary), answer(true)], 1)
}

/** Above a result that can still change: somebody looks again at an answer. Danger stands whoever looks. */
function reopened(say: Say, { check, judgement }: VerdictScreen, note?: string): string | undefined {
  if (!check.custody?.helpRequest || judgement.verdict === 'danger') return note
  return [...(note ? [note] : []), say('hands.reopened')].join('\n')
}

/** The families a check can begin with: a retired one is known from older checks only. */
async function toChooseFrom(desk: ShowsWith['families'], server: string | null): Promise<readonly Family[]> {
  const [{ families }, heads] = await Promise.all([desk.programsFor(server), server === null ? [] : desk.heads(server)])
  const retired = new Set(heads.filter(one => one.state === 'retired').map(one => one.id))
  return families.filter(one => !retired.has(one.id))
}
