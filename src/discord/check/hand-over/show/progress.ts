// How far a check is, for those who have to do with it: no answers, unless its holder shares them.
import { ButtonStyle } from 'discord.js'
import type { Check } from '../../../../check/check.ts'
import type { Actor } from '../../../../check/custody.ts'
import { custodyOf, isFor, seesAnswers } from '../../../../check/custody-of.ts'
import { nextOf } from '../../../../check/next.ts'
import type { Program } from '../../../../engine/compile.ts'
import { judge } from '../../../../engine/judge.ts'
import { sayAnswer, sayAnswered, sayWhat } from '../../../../words/describe.ts'
import type { Say } from '../../../../words/say.ts'
import { sayHandled, sayMoment, sayPerson, sayTaker } from '../../../../words/say-custody.ts'
import { fitLists } from '../../../message/fit-text.ts'
import { message, rows, type ShownMessage, small, text, textBudget } from '../../../message/parts.ts'
import { handButton } from './holder-menu.ts'

export function showProgress(say: Say, program: Program, check: Check, actor: Actor): ShownMessage {
  const { starter, history } = custodyOf(check)
  const head = [
    `### ${say('progress.title')}`,
    say('check.title', { what: sayWhat(say, program.family) }),
    say('progress.holder', { holder: sayPerson(check.holder), starter: sayPerson(starter) }),
    ...standing(say, program, check),
  ].join('\n')
  const shared = seesAnswers(check, actor)
  const foot = shared ? say('caution.line') : `${say('progress.private')}\n${say('caution.line')}`
  const rest = (count: number) => say('list.rest', { count })
  const lists = [
    ...(shared ? [{ title: say('progress.answers'), items: answers(say, program, check), rest }] : []),
    { title: say('progress.history'), items: history.slice(-8).map(one => sayHandled(say, one)), rest },
  ]
  const open = check.phase.is !== 'closed' && actor.person !== check.holder
  const { offer } = custodyOf(check)
  const redirects = open && actor.moderator && offer !== undefined
  const buttons = [
    ...(open && offer && isFor(offer.to, actor)
      ? [handButton(check, 'take', say('panel.take'), ButtonStyle.Primary)]
      : []),
    ...(open && actor.moderator ? [handButton(check, 'take-over', say('progress.take-over'))] : []),
    ...(redirects ? [handButton(check, 'redirect', say('desk.redirect'))] : []),
  ]
  return message([
    text(head),
    ...fitLists(lists, head.length + foot.length + 10, textBudget).map(text),
    ...rows(buttons),
    small(foot),
  ])
}

function standing(say: Say, program: Program, check: Check): string[] {
  const { offer, helpRequest, shares } = custodyOf(check)
  const answered = check.trail.length
  if (check.phase.is === 'closed') return [say('closed.text')]
  if (offer) return [say('progress.offered', { taker: sayTaker(say, offer.to), until: sayMoment(offer.until) })]
  if (check.phase.is === 'done') {
    const verdict = say(`verdict.${judge(program, check.answers).verdict}`)
    return [say('progress.done'), ...(shares ? [say('progress.verdict', { verdict })] : [])]
  }
  if (check.phase.is === 'paused') return [say('progress.paused', { answered })]
  const next = nextOf(program, check)
  return [
    say('progress.asking', { answered, left: next.is === 'done' ? 1 : next.left.all }),
    ...(helpRequest ? [say('progress.help-request')] : []),
  ]
}

const answers = (say: Say, program: Program, check: Check): string[] =>
  check.trail.flatMap(id => {
    const question = program.questions.get(id)
    const answer = check.answers[id]
    return question && answer ? [sayAnswered(say, check, id, question.ask, sayAnswer(say, question, answer))] : []
  })
