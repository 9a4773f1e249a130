// Settings as a file: nothing of a person leaves, what leaves comes back the same, and whatever a stranger sends is refused or fits.
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { exported, readSettingsFile, settingsFileBytes } from '../../src/server/exchange.ts'
import { mostLinks, type ServerSettings, unsettled } from '../../src/server/settings.ts'
import { takeIn } from '../../src/server/take-in.ts'

const now = Date.UTC(2026, 10, 30)
const asked = { by: 'i', discordLanguage: 'en-GB' }
const id = (n: number) => String(900000000000000000n + BigInt(n))
const link = (n: number) => ({
  ...{ id: `l${n}`, url: `https://s${n}.example/`, title: `Shop ${n}` },
  ...{ addedAt: 1, reviewedAt: 2 },
})
const settings: ServerSettings = {
  ...unsettled(id(1)),
  ...{ revision: 4, changedBy: id(99), discordLanguage: 'de', language: 'es' },
  ...{ moderatorRoles: [id(2)], reportsChannel: id(3), outcomes: true, pooling: true, keepWeeks: 52 },
  links: [link(1), link(2)],
}
const takenBy = (before: ServerSettings, text: string) => {
  const read = readSettingsFile(text)
  if (!read.ok) throw new Error(read.problem.code)
  return takeIn(before, read.file, asked, now, number => `n-${number}`)
}

test('what leaves holds no id of a person or of a change, and taken in elsewhere makes the same settings', () => {
  const text = exported(settings)
  expect(text).not.toContain(id(99))
  const { settings: there, left } = takenBy(unsettled(id(1)), text)
  expect(left).toEqual([])
  expect({ ...there, links: there.links.map(({ url, title }) => ({ url, title })) }).toEqual({
    ...settings,
    ...{ revision: 1, changedBy: 'i', discordLanguage: 'en-GB' },
    links: settings.links.map(({ url, title }) => ({ url, title })),
  })
  // Looked at nowhere but where somebody has looked.
  expect(there.links.map(one => [one.addedAt, one.reviewedAt])).toEqual([
    [now, now],
    [now, now],
  ])
  // Where it is all there already, nothing changes, dates included.
  expect(takenBy(settings, text).settings).toEqual({
    ...settings,
    ...{ revision: 5, changedBy: 'i', discordLanguage: 'en-GB' },
  })
})

test('what the file does not name stays, and so do links that are not in it', () => {
  const file = { 'cellwary-settings': 1, settings: { language: 'de' }, links: [{ url: link(2).url, title: 'Renamed' }] }
  const { settings: after } = takenBy(settings, JSON.stringify(file))
  expect(after).toMatchObject({ language: 'de', reportsChannel: id(3), keepWeeks: 52 })
  expect(after.links.map(one => one.title)).toEqual(['Shop 1', 'Renamed'])
})

test('reminders come with the role they ping, and stop where the file says so', () => {
  const file = (reminders: unknown) => JSON.stringify({ 'cellwary-settings': 1, settings: { reminders }, links: [] })
  const pinging = takenBy(settings, file({ hours: 6, role: id(7) })).settings
  expect(pinging.reminders).toEqual({ hours: 6, role: id(7) })
  expect(takenBy(pinging, file({ hours: 6, role: null })).settings.reminders).toEqual({ hours: 6, role: null })
  expect(takenBy(pinging, file(null)).settings.reminders).toBeNull()
  // The role that everybody has is refused, and the reminders are taken.
  const { settings: after, left } = takenBy(settings, file({ hours: 6, role: id(1) }))
  expect(after.reminders).toEqual({ hours: 6, role: null })
  expect(left).toHaveLength(1)
})

test('what does not fit is left out with its reason, and the rest is taken', () => {
  const file = {
    'cellwary-settings': 1,
    settings: { keepWeeks: 9999, moderatorRoles: [id(1)], pooling: true, outcomes: false, language: 'de' },
    links: [
      { url: 'http://s3.example/', title: 'Shop' },
      { url: 'https://s4.example/', title: 'other.example' },
      { url: 'https://s5.example/', title: '@everyone <@900000000000000099>' },
      ...Array.from({ length: mostLinks }, (_, i) => ({ url: `https://t${i}.example/`, title: `T${i}` })),
    ],
  }
  const { settings: after, left } = takenBy(settings, JSON.stringify(file))
  expect(after).toMatchObject({
    language: 'de',
    keepWeeks: 52,
    moderatorRoles: [id(2)],
    outcomes: false,
    pooling: false,
  })
  expect(after.links.length).toBeLessThanOrEqual(mostLinks)
  expect(left.map(one => one.refusal.code)).toEqual(
    expect.arrayContaining([
      ...['weeks-out-of-range', 'everyone-as-moderator', 'nothing-to-pool'],
      ...['link-not-https', 'title-names-host', 'too-many-links'],
    ]),
  )
})

const good = JSON.parse(exported(settings)) as Record<string, unknown>
const within = (change: object) => JSON.stringify({ ...good, ...change })
test.each([
  ['', 'not-json'],
  ['\u0000\u0001', 'not-json'],
  ['['.repeat(settingsFileBytes), 'not-json'],
  [`${'['.repeat(9000)}${']'.repeat(9000)}`, 'not-settings'],
  ['null', 'not-settings'],
  ['[]', 'not-settings'],
  ['{}', 'not-settings'],
  ['cellwary-settings: 1', 'not-json'],
  ['{"cellwary-settings":"1"}', 'not-settings'],
  [within({ 'cellwary-settings': 3 }), 'newer-format'],
  [within({ 'cellwary-settings': 0 }), 'shape cellwary-settings'],
  [within({ settings: { forumOffers: [{ forum: id(2), tags: id(3) }] } }), 'shape forumOffers'],
  [within({ settings: { forumOffers: { forum: id(2), tag: '@here' } } }), 'shape forumOffers'],
  [within({ by: id(5) }), 'shape by'],
  [within({ server: '<@900000000000000099>' }), 'shape server'],
  [within({ settings: [] }), 'shape settings'],
  [within({ settings: { secret: 1 } }), 'shape secret'],
  ['{"cellwary-settings":1,"settings":{"__proto__":{"outcomes":true}}}', 'shape __proto__'],
  ['{"cellwary-settings":1,"__proto__":{"settings":{}}}', 'shape __proto__'],
  [within({ settings: { reportsChannel: '12' } }), 'shape reportsChannel'],
  [within({ settings: { reportsChannel: '@everyone' } }), 'shape reportsChannel'],
  [within({ settings: { moderatorRoles: Array(51).fill(id(2)) } }), 'shape moderatorRoles'],
  [within({ settings: { moderatorRoles: id(2) } }), 'shape moderatorRoles'],
  ['{"cellwary-settings":1,"settings":{"keepWeeks":1e400}}', 'shape keepWeeks'],
  [within({ settings: { keepWeeks: 52.5 } }), 'shape keepWeeks'],
  [within({ settings: { language: '../de' } }), 'shape language'],
  [within({ settings: { outcomes: 'yes' } }), 'shape outcomes'],
  [within({ links: [{ url: 'https://s.example/', title: 'x', addedAt: 0 }] }), 'shape links'],
  [within({ links: [{ url: 'https://s.example/', title: 'x', toString: 'x' }] }), 'shape links'],
  [within({ links: [{ url: 'https://s.example/' }] }), 'shape links'],
  [within({ links: [{ url: `https://s.example/${'a'.repeat(500)}`, title: 'x' }] }), 'shape links'],
  [within({ links: Array(51).fill({ url: 'https://s.example/', title: 'x' }) }), 'shape links'],
])('%#: a file that is none is refused: %.60s', (text, wanted) => {
  const read = readSettingsFile(text)
  if (read.ok) throw new Error('it was read')
  const { problem } = read
  expect(`${problem.code}${'at' in problem ? ` ${problem.at}` : ''}`).toBe(wanted)
})

test('whatever JSON a file holds: it is refused, or makes settings that may be', () => {
  const value = fc.oneof(fc.jsonValue({ maxDepth: 3 }), fc.constantFrom(id(1), id(2), null, true, false, 52, 30))
  const fields = fc.dictionary(fc.constantFrom(...Object.keys(good['settings'] as object), 'x', '__proto__'), value)
  const links = fc.array(fc.record({ url: fc.webUrl(), title: fc.string() }), { maxLength: 5 })
  const data = fc.record({
    'cellwary-settings': fc.constantFrom(1, 2),
    settings: fields,
    links: fc.oneof(links, value),
  })
  fc.assert(
    fc.property(fc.oneof(data, fc.jsonValue()), file => {
      const read = readSettingsFile(JSON.stringify(file))
      if (!read.ok) return
      const { settings: after } = takeIn(settings, read.file, asked, now, number => `n-${number}`)
      expect(after.pooling && !after.outcomes).toBe(false)
      expect(after.moderatorRoles).not.toContain(after.server)
      expect(after.keepWeeks).toBeGreaterThanOrEqual(26)
      expect(after.links.length).toBeLessThanOrEqual(mostLinks)
      expect(new Set(after.links.map(one => one.url)).size).toBe(after.links.length)
      expect(after.revision).toBe(5)
    }),
    { numRuns: 2000 },
  )
})
