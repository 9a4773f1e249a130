// Which entry a question is meant for, told by how often an entry's phrasings use its words and pairs of words, small ones included.
//
// A multi-variate Bernoulli naive Bayes classifier (McCallum and Nigam, A Comparison of Event Models for Naive Bayes Text
// Classification, 1998; from memory), each phrasing one document, without the words that a question lacks: questions are short.

/** What one entry says: how people put the question, and the text that answers it, as words in order. */
export type Sayings = { readonly phrasings: readonly (readonly string[])[]; readonly body: readonly string[] }

/** A word of the body counts as if it stood in this share of one phrasing. */
const bodyCounts = 0.3
/** What a word counts that an entry never uses, as a share of its phrasings. */
const unseen = 0.001
/** So many phrasings are added to each entry's own, so that a word in one of few tells no more than one in one of many. */
const fewest = 80

/** Words, and neighbours as pairs, each once. */
const marksOf = (words: readonly string[]): Set<string> =>
  new Set([...words, ...words.slice(1).map((word, i) => `${words[i]} ${word}`)])

/** For the words of a question, how well each entry fits, in their order: 1 for the best of them, 0 for the worst or if nothing tells. */
export function openBayes(entries: readonly Sayings[]): (words: readonly string[]) => readonly number[] {
  const counted = entries.map(({ phrasings, body }) => {
    const counts = new Map<string, number>()
    const add = (words: readonly string[], by: number) => {
      for (const mark of marksOf(words)) counts.set(mark, (counts.get(mark) ?? 0) + by)
    }
    for (const phrasing of phrasings) add(phrasing, 1)
    add(body, bodyCounts)
    return { counts, size: phrasings.length + fewest }
  })
  const known = new Set(counted.flatMap(({ counts }) => [...counts.keys()]))
  return words => {
    const marks = [...marksOf(words)].filter(mark => known.has(mark))
    const fits = counted.map(({ counts, size }) =>
      marks.reduce((sum, mark) => sum + Math.log((counts.get(mark) ?? 0) / size + unseen), 0),
    )
    const [most, least] = [Math.max(...fits), Math.min(...fits)]
    return fits.map(fit => (most > least ? (fit - least) / (most - least) : 0))
  }
}
