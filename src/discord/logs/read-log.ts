// From a request to the message that answers it: read in the background, then figures, a question or a refusal.

import { logQuestionIds } from '../../custom-ids/log-question-id.ts'
import type { LogAnswers, LogQuestion } from '../../readings/log/answers.ts'
import { sayLogRefusal } from '../../words/log-words.ts'
import type { Say } from '../../words/say.ts'
import { latestOpen } from '../check/commands/which-check.ts'
import { message, type ShownMessage, small, text } from '../message/parts.ts'
import type { Services } from '../services.ts'
import type { LogRequest } from './log-request.ts'
import { showLog } from './show-log.ts'
import { showLogQuestion } from './show-log-question.ts'

/** A question about a file that waits for its answer; Discord's link to the file outlives it. */
export type AskedLog = {
  readonly is: 'log'
  readonly person: string
  readonly request: LogRequest
  readonly question: LogQuestion
}

/** A log that was read without a label, which can be given while Discord's link to the file lives. */
export type UnlabelledLog = { readonly is: 'unlabelled'; readonly person: string; readonly request: LogRequest }

const keptFor = 6 * 3600_000

export async function answerLog(
  services: Services,
  say: Say,
  person: string,
  request: LogRequest,
): Promise<ShownMessage> {
  const outcome = await services.queue.inBackground({ is: 'file', bytes: request.file.size }, () =>
    services.logs.read(request.file, request.options),
  )
  if ('question' in outcome) {
    const asked: AskedLog = { is: 'log', person, request, question: outcome.question }
    return showLogQuestion(
      say,
      outcome.question,
      logQuestionIds.write({ draft: await services.drafts.keep(asked, keptFor) }),
    )
  }
  if (outcome.ok) {
    const open = await latestOpen(services, say, person)
    return showLog(say, outcome, request, open, services.pictures, await keepUnlabelled(services, person, request))
  }
  const refusal = 'file' in outcome ? outcome.file : outcome.refusal
  return message([text(sayLogRefusal(say, refusal)), small(say('caution.line'))])
}

/** Under which it is kept, so that a label can be given afterwards; undefined where it has one. */
async function keepUnlabelled(services: Services, person: string, request: LogRequest): Promise<string | undefined> {
  if (request.claim.label_mAh !== undefined) return undefined
  const kept: UnlabelledLog = { is: 'unlabelled', person, request }
  return services.drafts.keep(kept, keptFor)
}

/** The request with what a choice has added to what is known about its file. */
export function withAnswer(request: LogRequest, answer: LogAnswers): LogRequest {
  const { answers = {} } = request.options
  const merged: LogAnswers = {
    ...answers,
    ...answer,
    ...((answers.columns || answer.columns) && { columns: { ...answers.columns, ...answer.columns } }),
    ...((answers.units || answer.units) && { units: { ...answers.units, ...answer.units } }),
  }
  return { ...request, options: { ...request.options, answers: merged } }
}
