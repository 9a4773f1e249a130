// Presses everything there is: every button and menu of a message, and of what comes back, so far as one wants to go.
import type { Person } from '../../src/practice/people/person.ts'
import type { Reply } from '../../src/practice/people/reply.ts'
import { buttons, menus, type SeenMessage } from '../../src/practice/seen.ts'

/** What is typed into every field of a form: right nowhere, so that what is refused is read, too. */
export const typed = 'Zz zz'

/**
 * Opens a message as often as there are ways through it, `deep` presses each, and goes every way; gives how many presses there were.
 * What is forbidden, or stands where this person may not press, is passed over: a test looks at what was sent.
 */
export async function crawl(person: Person, open: () => Promise<SeenMessage>, deep: number): Promise<number> {
  let presses = 0
  const seen = new Set<string>()
  async function go(path: readonly number[]): Promise<void> {
    let now: SeenMessage | undefined = await open()
    for (const step of path) now = now && (await act(person, now, step))
    if (!now || path.length >= deep) return
    for (let i = 0; i < waysOf(now).length; i++) {
      const what = `${path.length} ${waysOf(now)[i]?.what}`
      if (seen.has(what)) continue
      seen.add(what)
      presses++
      await go([...path, i])
    }
  }
  await go([])
  return presses
}

type Way = { readonly what: string; go(person: Person): Promise<Reply> }

function waysOf(message: SeenMessage): Way[] {
  const pressed = buttons(message).flatMap(({ customId, disabled }): Way[] =>
    customId === null || disabled ? [] : [{ what: bare(customId), go: person => person.click(message, customId) }],
  )
  const chosen = menus(message).flatMap(({ customId, kind, options }): Way[] => {
    const value = options.at(-1)?.value
    return kind !== 'text' || value === undefined
      ? []
      : [{ what: bare(customId), go: person => person.choose(message, customId, [value]) }]
  })
  return [...pressed, ...chosen]
}

/** Ids of checks, findings and drafts differ each time; what they do does not. */
const bare = (id: string): string => id.replaceAll(/[0-9a-f]{20}/g, '*')

async function act(person: Person, message: SeenMessage, step: number): Promise<SeenMessage | undefined> {
  const reply = await waysOf(message)[step]?.go(person)
  if (reply?.kind !== 'modal') return messageIn(reply)
  const fields = Object.fromEntries(
    reply.modal.fields.map(({ customId, kind, options }) => {
      if (kind === 'text') return [customId, typed]
      return [customId, options[0] && kind !== 'files' ? [options[0].value] : []]
    }),
  )
  return messageIn(await person.submit(reply.modal, fields).catch(() => undefined))
}

async function messageIn(reply: Reply | undefined): Promise<SeenMessage | undefined> {
  if (reply?.kind === 'message' || reply?.kind === 'updated') return reply.message
  return reply?.kind === 'deferred' ? ((await reply.final) ?? undefined) : undefined
}
