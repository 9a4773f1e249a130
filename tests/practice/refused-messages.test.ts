// Bad message bodies are refused with 50035 and change nothing; good ones are taken. Real HTTP through discord.js' REST.
// Limits from Discord's documentation (Component Reference, Message Resource) and, for what it does not say, platform practice.
import { DiscordAPIError, REST } from 'discord.js'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openStandIn, type StandIn } from '../../src/practice/stand-in.ts'
import { hobbyServer, ids } from './hobby-server.ts'

const v2Flag = 1 << 15
const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index))
const row = (...components: object[]) => ({ type: 1, components })
const button = (id: string, more: object = {}) => ({ type: 2, style: 1, label: 'Go', custom_id: id, ...more })
const says = (content: string) => ({ type: 10, content })
const select = (more: object = {}) => ({
  type: 3,
  custom_id: 'menu',
  options: [
    { label: 'a', value: 'a' },
    { label: 'b', value: 'b' },
  ],
  ...more,
})
const v2 = (...components: object[]) => ({ flags: v2Flag, components })
const old = (...components: object[]) => ({ content: 'x', components })
const gallery = (url: string, more: object = {}) => ({ type: 12, items: [{ media: { url }, ...more }] })
const nested = (count: number) => ({ type: 17, components: times(count - 1, index => says(`line ${index}`)) })

/** What is wrong, the body, and a part of where the refusal must point. */
const badMessages: readonly [string, object, string][] = [
  ['41 components, most of them nested', v2(nested(30), nested(11)), 'components'],
  ['41 components on the top level', v2(...times(41, () => says('x'))), 'components'],
  ['4001 characters over two text displays', v2(says('x'.repeat(2000)), says('y'.repeat(2001))), 'components'],
  ['an empty text display', v2(says('')), 'content'],
  ['a text display of blanks', v2(says('   ')), 'content'],
  ['V2 with content', { ...v2(says('x')), content: 'y' }, 'content'],
  ['V2 with embeds', { ...v2(says('x')), embeds: [{ title: 'y' }] }, 'embeds'],
  [
    'V2 with a poll',
    { ...v2(says('x')), poll: { question: { text: 'q' }, answers: [{ poll_media: { text: 'a' } }] } },
    'poll',
  ],
  ['a text display without the V2 flag', { components: [says('x')] }, 'type'],
  ['six rows', old(...times(6, index => row(button(`b${index}`)))), 'components'],
  ['six buttons in a row', old(row(...times(6, index => button(`b${index}`)))), 'components'],
  ['a menu beside a button', old(row(select(), button('b'))), 'components'],
  ['an empty row', old(row()), 'components'],
  ['the same custom id twice', old(row(button('same'), button('same'))), 'custom_id'],
  [
    'the same custom id in two containers',
    v2({ type: 17, components: [row(button('same'))] }, row(button('same'))),
    'custom_id',
  ],
  ['a custom id of 101 characters', old(row(button('x'.repeat(101)))), 'custom_id'],
  ['an empty custom id', old(row(button(''))), 'custom_id'],
  ['a button without a custom id', old(row({ type: 2, style: 1, label: 'Go' })), 'custom_id'],
  ['a link button without a url', old(row({ type: 2, style: 5, label: 'Go' })), 'url'],
  [
    'a link button with a custom id',
    old(row({ type: 2, style: 5, label: 'Go', url: 'https://example.org', custom_id: 'x' })),
    'custom_id',
  ],
  ['a link button to a file path', old(row({ type: 2, style: 5, label: 'Go', url: 'file:///tmp/x' })), 'url'],
  ['an action button with a url', old(row(button('x', { url: 'https://example.org' }))), 'url'],
  ['a button without label and emoji', old(row({ type: 2, style: 1, custom_id: 'x' })), 'label'],
  ['a button label of 81 characters', old(row(button('x', { label: 'x'.repeat(81) }))), 'label'],
  ['an emoji that is a word', old(row(button('x', { emoji: { name: 'battery' } }))), 'emoji'],
  ['a button style that does not exist', old(row(button('x', { style: 9 }))), 'style'],
  [
    'a menu with 26 options',
    old(row(select({ options: times(26, index => ({ label: `${index}`, value: `${index}` })) }))),
    'options',
  ],
  ['a menu without options', old(row(select({ options: [] }))), 'options'],
  [
    'a menu with two equal values',
    old(row(select({ options: times(2, () => ({ label: 'a', value: 'a' })) }))),
    'value',
  ],
  ['a menu option with an empty label', old(row(select({ options: [{ label: '', value: 'a' }] }))), 'label'],
  [
    'a menu option with a label of 101 characters',
    old(row(select({ options: [{ label: 'x'.repeat(101), value: 'a' }] }))),
    'label',
  ],
  ['a menu with min above max', old(row(select({ min_values: 2, max_values: 1 }))), 'min_values'],
  ['a menu with max above its options', old(row(select({ max_values: 3 }))), 'options'],
  [
    'a menu with more defaults than choices',
    old(row(select({ options: ['a', 'b'].map(value => ({ label: value, value, default: true })) }))),
    'options',
  ],
  ['a placeholder of 151 characters', old(row(select({ placeholder: 'x'.repeat(151) }))), 'placeholder'],
  ['a section without an accessory', v2({ type: 9, components: [says('x')] }), 'accessory'],
  [
    'a section with four texts',
    v2({ type: 9, components: times(4, () => says('x')), accessory: button('b') }),
    'components',
  ],
  ['a container in a container', v2({ type: 17, components: [{ type: 17, components: [says('x')] }] }), 'components'],
  ['an empty container', v2({ type: 17, components: [] }), 'components'],
  ['an accent colour too large', v2({ type: 17, accent_color: 0x1000000, components: [says('x')] }), 'accent_color'],
  [
    'a gallery of 11 pictures',
    v2({ type: 12, items: times(11, () => ({ media: { url: 'https://example.org/a.png' } })) }),
    'items',
  ],
  [
    'alt text of 1025 characters',
    v2(gallery('https://example.org/a.png', { description: 'x'.repeat(1025) })),
    'description',
  ],
  ['a gallery of a file that was not sent', v2(gallery('attachment://gone.png')), 'media_gallery'],
  ['a gallery of a local path', v2(gallery('file:///tmp/a.png')), 'media_gallery'],
  ['a file component with a web address', v2({ type: 13, file: { url: 'https://example.org/a.csv' } }), 'file'],
  ['content of 2001 characters', { content: 'x'.repeat(2001) }, 'content'],
  ['eleven embeds', { embeds: times(11, () => ({ title: 'x' })) }, 'embeds'],
  ['6001 characters over embeds', { embeds: times(2, () => ({ description: 'x'.repeat(3001) })) }, 'embeds'],
  ['an embed field without a value', { embeds: [{ fields: [{ name: 'x', value: '' }] }] }, 'value'],
  [
    'users both parsed and listed',
    { content: 'x', allowed_mentions: { parse: ['users'], users: [ids.wren] } },
    'allowed_mentions',
  ],
  [
    'an attachment id that is neither sent nor kept',
    { content: 'x', attachments: [{ id: '7', filename: 'a.png' }] },
    'attachments',
  ],
  ['a nonce of 26 characters', { content: 'x', nonce: 'x'.repeat(26) }, 'nonce'],
  ['a key that Discord does not have', { content: 'x', contents: 'y' }, 'contents'],
]

const goodMessages: readonly [string, object][] = [
  ['plain text', { content: 'x'.repeat(2000) }],
  ['40 components, nested ones counted', v2(nested(30), nested(10))],
  ['4000 characters over two text displays', v2(says('x'.repeat(2000)), says('y'.repeat(2000)))],
  ['five rows of five buttons', old(...times(5, r => row(...times(5, b => button(`${r}-${b}`)))))],
  ['an emoji button', old(row({ type: 2, style: 1, custom_id: 'x', emoji: { name: '🔋' } }))],
  ['a link button', old(row({ type: 2, style: 5, label: 'Read', url: 'https://example.org' }))],
  [
    'a menu of 25',
    old(row(select({ max_values: 25, options: times(25, index => ({ label: `${index}`, value: `${index}` })) }))),
  ],
  ['all menus of people and places', old(...[5, 6, 7, 8].map(type => row({ type, custom_id: `m${type}` })))],
  [
    'a section with a thumbnail',
    v2({
      type: 9,
      components: [says('x')],
      accessory: { type: 11, media: { url: 'https://example.org/a.png' }, description: 'alt' },
    }),
  ],
  [
    'separators, a coloured container and a spoiler',
    v2({ type: 17, accent_color: 0, spoiler: true, components: [says('x'), { type: 14, divider: true, spacing: 2 }] }),
  ],
  ['an embed', { embeds: [{ title: 't', description: 'd', fields: [{ name: 'n', value: 'v', inline: true }] }] }],
]

let standIn: StandIn
let rest: REST
beforeAll(async () => {
  standIn = await openStandIn({ scenario: hobbyServer })
  rest = new REST({ api: standIn.apiUrl, globalRequestsPerSecond: 1000 }).setToken(standIn.botToken)
})
afterAll(() => standIn.close())

const path = `/channels/${ids.bench}/messages` as const

async function refusal(send: Promise<unknown>): Promise<DiscordAPIError> {
  const error = await send.then(
    () => null,
    thrown => thrown,
  )
  if (!(error instanceof DiscordAPIError)) throw new Error(`was not refused: ${error}`)
  return error
}

describe('refused', () => {
  test.each(badMessages)('%s', async (_, body, where) => {
    const before = standIn.messages(ids.bench).length
    const error = await refusal(rest.post(path, { body }))
    expect([error.status, error.code]).toEqual([400, 50035])
    expect(JSON.stringify((error.rawError as { errors?: unknown }).errors)).toContain(`"${where}"`)
    expect(standIn.complaints.at(-1)?.issues.length).toBeGreaterThan(0)
    expect(standIn.messages(ids.bench)).toHaveLength(before)
  })

  test('a message with nothing in it has a code of its own', async () => {
    expect((await refusal(rest.post(path, { body: { content: '  ' } }))).code).toBe(50006)
  })

  test('a sent file that no component shows', async () => {
    const files = [{ name: 'a.png', data: Buffer.from('x'), key: 'files[0]' }]
    const error = await refusal(rest.post(path, { body: { ...v2(says('x')), attachments: [{ id: '0' }] }, files }))
    expect(error.code).toBe(50035)
  })

  test('a file above ten mebibytes', async () => {
    const files = [{ name: 'a.bin', data: Buffer.alloc(10 * 1024 * 1024 + 1), key: 'files[0]' }]
    expect(await refusal(rest.post(path, { body: { content: 'x' }, files }))).toMatchObject({
      status: 413,
      code: 40005,
    })
  })

  test('turning a message with text into V2 without emptying the text', async () => {
    const { id } = (await rest.post(path, { body: { content: 'old words', embeds: [{ title: 'old' }] } })) as {
      id: string
    }
    const edit = (body: object) => rest.patch(`${path}/${id}`, { body: { ...v2(says('new')), ...body } })
    expect((await refusal(edit({}))).code).toBe(50035)
    expect((await refusal(edit({ content: null, embeds: null }))).code).toBe(50035)
    await edit({ content: null, embeds: [] })
    expect(standIn.message(id)).toMatchObject({ content: '', embeds: [] })
    // V2 cannot be taken back.
    expect((await refusal(rest.patch(`${path}/${id}`, { body: { content: 'back again' } }))).code).toBe(50035)
  })
})

describe('accepted', () => {
  test.each(goodMessages)('%s', async (_, body) => {
    await rest.post(path, { body })
    expect(standIn.messages(ids.bench).at(-1)?.author.bot).toBe(true)
  })
})
