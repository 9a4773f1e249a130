// Every answer in every language fits Discord's limits at its longest, and carries its caution in private and in public.
import { describe, expect, test } from 'vitest'
import { openBook } from '../../src/answers/book.ts'
import { relatedTo } from '../../src/discord/answers/find-answer.ts'
import { showAnswer, showNoAnswer, showPublicAnswer } from '../../src/discord/answers/show-answer.ts'
import { type ShownMessage, textBudget } from '../../src/discord/message/parts.ts'
import { buttons, text } from '../../src/practice/seen.ts'
import type { RawComponent } from '../../src/practice/wire.ts'
import { sayIn } from '../../src/words/say.ts'
import { shippedAnswers } from '../answers/questions.ts'

const book = openBook(await shippedAnswers())
const someone = '900000000000000402'
const message = '900000000000000777'
const read = ({ components }: ShownMessage) => ({
  content: '',
  embeds: [],
  components: components as unknown as RawComponent[],
})

describe.each(['en-GB', 'de', 'es-ES'])('in %s', locale => {
  const say = sayIn(locale)

  test.each(book.entries.map(entry => [entry.id, entry] as const))('%s', (_, entry) => {
    const near = [...relatedTo(book, entry), ...book.entries]
    const question = '*'.repeat(400)
    const note = say('ask.posting.no-message')
    const mine = showAnswer(say, { entry, near, question, note, to: message, mayPost: true })
    for (const shown of [mine, showPublicAnswer(say, entry, near, someone)]) {
      const seen = text(read(shown))
      expect(seen.length).toBeLessThanOrEqual(textBudget)
      expect(seen).toContain(say('caution.line'))
      expect(seen.includes(say('caution.full'))).toBe(entry.caution !== 'line')
      if (entry.caution === 'emergency') expect(seen).toContain(say('safety.now.ask'))
      // Nobody is sent to look closer at a cell that may burn.
      expect(buttons(read(shown)).some(one => one.label === say('ask.check'))).toBe(entry.caution !== 'emergency')
    }
  })

  test('where there is no answer, titles stand on the buttons whole', () => {
    const shown = showNoAnswer(say, { question: 'x', to: null }, book.entries.slice(0, 5))
    const labels = buttons(read(shown)).map(one => one.label)
    expect(labels.slice(0, 5).filter(label => label.endsWith('…'))).toEqual([])
  })
})
