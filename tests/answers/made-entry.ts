// Invented entries in English, for tests of what is told by words alone.
import type { CautionKind, Entry } from '../../src/answers/entry.ts'

export const madeEntry = (
  id: string,
  title: string,
  keywords: readonly string[],
  body = '',
  caution: CautionKind = 'line',
  more: Partial<Entry> = {},
): Entry => ({
  ...{ id, caution, inHand: false, forHurt: false, related: [], sources: [] },
  texts: { en: { title, keywords, body } },
  ...more,
})
