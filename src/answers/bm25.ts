// Ranks texts that are already terms by BM25+ over weighted fields.
import MiniSearch from 'minisearch'

export type Bm25 = { readonly k: number; readonly b: number; readonly d: number }
/** One text: the terms of each field. */
export type Fields = Readonly<Record<string, readonly string[]>>
/** A term of the question and how much it counts. */
export type WeighedTerm = { readonly term: string; readonly counts: number }
/** A text by its place in the list, the best first. */
export type Ranked = { readonly place: number; readonly score: number }

const usual: Bm25 = { k: 1.2, b: 0.7, d: 0.5 }

/** `boosts` names the fields and how much each counts. */
export function openRanking(
  texts: readonly Fields[],
  boosts: Readonly<Record<string, number>>,
  bm25: Bm25 = usual,
): (asked: readonly WeighedTerm[]) => Ranked[] {
  const index = new MiniSearch<{ id: number } & Record<string, unknown>>({
    fields: Object.keys(boosts),
    tokenize: text => text.split(' ').filter(Boolean),
    processTerm: term => term,
    searchOptions: { boost: { ...boosts }, bm25, combineWith: 'OR' },
  })
  for (const [id, fields] of texts.entries())
    index.add({ id, ...Object.fromEntries(Object.entries(fields).map(([name, terms]) => [name, terms.join(' ')])) })
  return asked => {
    const counts = new Map(asked.map(one => [one.term, one.counts]))
    const results = index.search([...counts.keys()].join(' '), { boostTerm: term => counts.get(term) ?? 1 })
    return (
      results
        // The library multiplies by the number of terms that were found, which is no part of BM25.
        .map(({ id, score, queryTerms }) => ({ place: id as number, score: score / Math.max(1, queryTerms.length) }))
        .toSorted((a, b) => b.score - a.score || a.place - b.place)
    )
  }
}
