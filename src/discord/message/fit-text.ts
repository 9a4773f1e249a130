// Fits a long message into Discord's limit: lists give way from their ends, what must be said never does.

/** A titled list; `rest` says how many of it were left out. Earlier lists give way last. */
export type FittingList = {
  readonly title: string
  readonly items: readonly string[]
  /** Never more than this many, whatever the room. */
  readonly most?: number
  /** How many more there are that were not even put into words. */
  readonly unsaid?: number
  rest(count: number): string
}

/**
 * The lists as text, each shortened so that all of them together with `fixed` characters stay within `budget`. An empty list
 * gives nothing. The caller keeps `fixed` (headline, steps, caution) well under the budget; tests hold it there.
 */
export function fitLists(lists: readonly FittingList[], fixed: number, budget: number): string[] {
  const kept = lists.map(list => Math.min(list.items.length, list.most ?? list.items.length))
  const render = () => lists.map((list, i) => block(list, kept[i] ?? 0))
  const length = () => render().reduce((sum, one) => sum + one.length, fixed)
  for (let i = lists.length - 1; i >= 0; i--)
    while ((kept[i] ?? 0) > 1 && length() > budget) kept[i] = (kept[i] ?? 0) - 1
  for (let i = lists.length - 1; i >= 0; i--) if (length() > budget) kept[i] = 0
  return render().filter(one => one !== '')
}

function block(list: FittingList, count: number): string {
  if (list.items.length === 0) return ''
  const left = list.items.length - count + (list.unsaid ?? 0)
  const lines = [`**${list.title}**`, ...list.items.slice(0, count).map(item => `- ${item}`)]
  return [...lines, ...(left > 0 ? [`-# ${list.rest(left)}`] : [])].join('\n')
}
