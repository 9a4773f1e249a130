// The shipped answers, read and checked when the first is asked for; an entry that cannot be used is left out and logged.
import type { Logger } from 'pino'
import type { AnswerBook } from '../answers/book.ts'
import { shippedRules } from './shipped-rules.ts'

export function openInstalledAnswers(log: Logger): () => Promise<AnswerBook> {
  let opening: Promise<AnswerBook> | undefined
  const open = async (): Promise<AnswerBook> => {
    const [{ answersIn, loadAnswers }, { openBook }] = await Promise.all([
      import('./load-answers.ts'),
      import('../answers/book.ts'),
    ])
    const { entries, problems } = await loadAnswers(answersIn(shippedRules))
    for (const { file, problem } of problems) log.warn({ file, problem }, 'an answer is left out')
    return openBook(entries)
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
