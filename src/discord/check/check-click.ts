// One click on a check, end to end: load, is it theirs, is it the current step, take the step, store, answer once.
import { act } from '../../check/act.ts'
import { chooseFamily } from '../../check/beginning.ts'
import type { Check } from '../../check/check.ts'
import { custodyOf } from '../../check/custody-of.ts'
import { knownFigures } from '../../check/known/known-figures.ts'
import { screenOf } from '../../check/screen.ts'
import { type ClickId, checkIds } from '../../custom-ids/check-id.ts'
import { newOpening } from '../../custom-ids/id-parts.ts'
import { sameAnswer } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { inLanguage } from '../../engine/in-language.ts'
import { decideInOrder, type Later, saidInTurn } from '../../services/keyed-queue.ts'
import { sayAnswer } from '../../words/describe.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { onClick } from '../interaction/click-handler.ts'
import { sayRefusal } from '../interaction/refusal.ts'
import { type Clicked, redraw, refuse } from '../interaction/reply.ts'
import { sayInPublic } from '../posts/say-in-public.ts'
import type { Services } from '../services.ts'
import { chosenIn, eventOf } from './event-of.ts'
import { afterHelp, mayHelpWith, showHelping } from './hand-over/helping.ts'
import { showHands } from './hand-over/show/holder-menu.ts'
import { tellDanger } from './hand-over/tell-danger.ts'
import { tellOthers } from './hand-over/tell-others.ts'
import { actorOf, holderOf } from './hand-over/turn.ts'
import { type LoadedCheck, loadCheck, loadStillHeld } from './load-check.ts'
import { saveStep } from './save-step.ts'
import { showAnswers } from './show/answers.ts'
import { notListed } from './show/beginning.ts'
import { showDetails } from './show/details.ts'
import { showReadingForm } from './show/reading-form.ts'
import { showScreen } from './show/screen.ts'

export const checkClick = onClick(checkIds, (services, interaction, id) =>
  decideInOrder(services.queue, id.check, () => click(services, interaction, id)),
)

async function click(services: Services, interaction: Clicked, id: ClickId): Promise<Later> {
  const say = sayIn(interaction.locale)
  // Whoever only wants to see the check sees it as it stands; every other act is compared again when it is saved.
  const found = await loadCheck(services, say, id.check, id.act.is === 'show' ? undefined : id.revision)
  if (!found) return () => refuse(interaction, say, { code: 'gone' })
  // Duplicate delivery: the process that saved it replies.
  if (found.changedBy === interaction.id) return undefined
  const { check, program } = found
  const helps = check.holder !== interaction.user.id
  const actor = helps ? await actorOf(services, interaction, check) : holderOf(check)
  if (helps && !mayHelpWith(check, actor)) return () => refuse(interaction, say, { code: 'not-yours' })
  const show = (note?: string, now: LoadedCheck = found) =>
    helps
      ? showHelping(services, say, now.program, now.check, note)
      : showScreen(say, now.program, screenOf(now.program, now.check), services, note)
  const asked = helps
    ? custodyOf(check).helpRequest?.question
    : 'question' in check.phase
      ? check.phase.question
      : undefined
  if (id.act.is === 'show') return saidInTurn(redraw(interaction, await show()))
  if (id.revision !== check.revision) return saidInTurn(redraw(interaction, await show(say('stale.note'))))
  if (id.act.is === 'measure') return saidInTurn(openForm(services, interaction, say, program, check, asked))

  const { act: does } = id
  if (does.is === 'answers') return saidInTurn(redraw(interaction, showAnswers(say, program, check)))
  if (does.is === 'details') {
    const screen = screenOf(program, check)
    if (screen.kind !== 'verdict') return saidInTurn(redraw(interaction, await show()))
    const pictures = does.page === 1 ? await services.pictures.forDetails(program, screen.judgement, say) : []
    return saidInTurn(redraw(interaction, showDetails(say, program, screen, does.page, pictures)))
  }
  if (does.is === 'family') return saidInTurn(family(services, interaction, say, program, check))

  const read = eventOf(say, interaction, does, asked ?? '', program, check)
  if (!read.ok) return saidInTurn(redraw(interaction, await show(read.note)))
  const stepped = act(program, check, actor, read.event, services.now())
  if (!stepped.ok) {
    const { code } = stepped.refusal
    if (code === 'expired' || code === 'closed') return () => refuse(interaction, say, stepped.refusal)
    return saidInTurn(redraw(interaction, await show(sayRefusal(say, stepped.refusal))))
  }
  const { saving, screen, check: saved } = await saveStep(services, interaction, program, check, stepped)
  if (saving === 'seen') return undefined
  if (saving === 'saved' && helps)
    return saidInTurn(afterHelp({ services, interaction, say, program, check, actor }, saved))
  if (saving === 'saved') {
    const note = read.note ?? sayChanged(say, program, check, saved)
    const asking = id.act.is === 'ask-about' && 'question' in saved.phase
    const shown = asking ? showHands(say, program, saved) : await showScreen(say, program, screen, services, note)
    await redraw(interaction, shown)
    if (!concernsOthers(check, saved)) return undefined
    const inPublic = await sayInPublic(services, saved.server, interaction.guildLocale)
    await tellDanger(services, inPublic, program, saved, interaction.channelId)
    return saidInTurn(tellOthers(services, inPublic, saved))
  }
  const latest = await loadCheck(services, say, check.id)
  if (!latest) return () => refuse(interaction, say, { code: 'gone' })
  // It may have gone into other hands meanwhile, and help may not be wanted any more.
  const still = helps ? mayHelpWith(latest.check, actor) : latest.check.holder === check.holder
  if (!still) return () => refuse(interaction, say, { code: 'not-yours' })
  return saidInTurn(redraw(interaction, await show(say('stale.note'), latest)))
}

/** The one line that tells what was changed, where an answer was given anew. */
function sayChanged(say: Say, program: Program, before: Check, after: Check): string | undefined {
  const { phase } = before
  if (phase.is !== 'asking' || !phase.changing || after.phase.is === 'second-look') return undefined
  const question = program.questions.get(phase.question)
  const [was, is] = [before.answers[phase.question], after.answers[phase.question]]
  if (!question || !was || !is || sameAnswer(was, is)) return undefined
  const said = (answer: typeof is) => sayAnswer(say, question, answer)
  return say('changed.note', { question: question.ask, before: said(was), after: said(is) })
}

/** The family chosen on the first screen: the check goes on under its program. */
async function family(services: Services, interaction: Clicked, say: Say, from: Program, check: Check): Promise<void> {
  const [chosen = notListed] = chosenIn(interaction)
  const wanted = chosen === notListed ? null : chosen
  const judging = await services.families.programToStart(check.server, wanted, check.day)
  if (!judging) return refuse(interaction, say, { code: 'unknown-family', name: chosen })
  const program = inLanguage(judging, say.locale)
  const stepped = chooseFamily(from, program, check)
  if (!stepped.ok) return refuse(interaction, say, stepped.refusal)
  const { saving, screen } = await saveStep(services, interaction, program, check, stepped)
  if (saving === 'seen') return undefined
  if (saving === 'saved') return saidInTurn(redraw(interaction, await showScreen(say, program, screen, services)))
  const latest = await loadStillHeld(services, say, check)
  if (typeof latest === 'string') return refuse(interaction, say, { code: latest })
  const now = screenOf(latest.program, latest.check)
  await redraw(interaction, await showScreen(say, latest.program, now, services, say('stale.note')))
}

/** Whether what channels show of it has changed: its custody, or that it came to a verdict or was closed. */
const concernsOthers = (before: Check, after: Check): boolean =>
  after.custody !== undefined &&
  (after.custody !== before.custody ||
    [before, after].some(({ phase }) => phase.is === 'done' || phase.is === 'closed'))

async function openForm(
  services: Services,
  interaction: Clicked,
  say: Say,
  program: Program,
  check: Check,
  asked: string | undefined,
): Promise<void> {
  const question = asked === undefined ? undefined : program.questions.get(asked)
  if (!question || interaction.isModalSubmit())
    return refuse(interaction, say, { code: 'not-now', event: 'measure', phase: check.phase.is })
  const known = knownFigures(program, check, question.id)
  await interaction.showModal(showReadingForm(say, check, question, newOpening(services.newId), known))
}
