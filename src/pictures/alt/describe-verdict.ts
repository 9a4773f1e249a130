// What a verdict card tells: the word, each mark's sentence, the caution.
import { type AltFact, ranks } from './alt-fact.ts'

/** The caution is never dropped before anything else. */
export const describeVerdict = (card: {
  word: string
  views: readonly { marks: readonly { text: string }[] }[]
  reasons?: readonly string[]
  figures?: readonly string[]
  caution: string
}): AltFact[] => [
  { code: 'verdict', values: { word: card.word }, rank: ranks.asked },
  ...(card.figures ?? []).map(text => ({ code: 'verdict-reason', values: { text }, rank: ranks.against })),
  ...card.views
    .flatMap(view => view.marks)
    .map((mark, i) => ({ code: 'verdict-mark', values: { n: i + 1, text: mark.text }, rank: ranks.against })),
  ...(card.reasons ?? []).map(text => ({ code: 'verdict-reason', values: { text }, rank: ranks.tell })),
  { code: 'verdict-caution', values: { text: card.caution }, rank: ranks.kept },
]
