// The shipped answers and a server's own, read and checked when the first is asked for; one that cannot be used is left out and logged.
import type { Logger } from 'pino'
import type { AnswerBook } from '../answers/book.ts'
import type { LoadedAnswers } from './load-answers.ts'
import { shippedRules } from './shipped-rules.ts'

/** `folder`: rules of one's own, with answers beside them; an own answer takes the place of a shipped one of the same id. */
export function openInstalledAnswers(folder: string | undefined, log: Logger): () => Promise<AnswerBook> {
  let opening: Promise<AnswerBook> | undefined
  const open = async (): Promise<AnswerBook> => {
    const [{ answersIn, loadAnswers }, { openBook }] = await Promise.all([
      import('./load-answers.ts'),
      import('../answers/book.ts'),
    ])
    const shipped = await loadAnswers(answersIn(shippedRules))
    const own = folder === undefined ? none : await loadAnswers(answersIn(folder), shipped.entries)
    for (const { file, problem } of [...shipped.problems, ...own.problems])
      log.warn({ file, problem }, 'an answer is left out')
    return openBook([...new Map([...shipped.entries, ...own.entries].map(entry => [entry.id, entry])).values()])
  }
  return () => {
    // What failed once is tried again by whoever asks next.
    opening ??= open().catch(error => {
      opening = undefined
      throw error
    })
    return opening
  }
}

const none: LoadedAnswers = { entries: [], problems: [] }
