// Which of many tests of one week still stand out once their number is counted in.
import adjust from '@stdlib/stats-padjust'

/** Share of false finds among those that stand out. */
const falseShare = 0.05

/** Benjamini & Hochberg 1995, JRSS B 57:289–300: adjusted p-values in the order given. */
export const adjustBh = (p: readonly number[]): number[] => (p.length === 0 ? [] : [...adjust([...p], 'bh')])

/** For each p-value, whether it is rejected at the false discovery rate `q`. */
export const standOut = (p: readonly number[], q: number = falseShare): boolean[] => adjustBh(p).map(a => a <= q)
