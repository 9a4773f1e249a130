// What can be decided about a finding in which state, that nothing else changes anything, and that every undo puts back what was.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Deciding, decide, lastUndoable, standingOf } from '../../../src/trends/findings/decide.ts'
import { begin, type Finding, isPending, withoutPerson } from '../../../src/trends/findings/finding.ts'

const now = 1
const week = '2026-W40'
const fresh: Finding = begin(
  {
    key: 'k',
    family: 'heron',
    week,
    parts: [{ is: 'rise', rise: { family: 'heron', rule: null, week, standsOut: false } }],
  },
  'f',
  's',
)
const post = { channel: 'c0', message: 'm0' }
const fake = { family: 'heron', fake: 'seen-2026-w40' }
const events: readonly Deciding[] = [
  { is: 'told', post },
  { is: 'warn', by: 'p', channel: 'c', text: 'look twice' },
  { is: 'warning-posted', message: 'm1' },
  { is: 'warning-failed' },
  { is: 'edit-warning', by: 'o', text: 'look three times' },
  { is: 'withdrawal-posted' },
  { is: 'dismiss', by: 'q', why: 'one seller’s lot' },
  { is: 'put-off', by: 'r', until: '2026-W41' },
  { is: 'watch-over' },
  { is: 'known-fake', by: 's', fake },
  { is: 'shown', post: null },
  { is: 'post-gone' },
]
const undo = (finding: Finding, by = 'u'): Deciding => ({ is: 'undo', by, of: finding.decisions.length, why: 'sorry' })
const reached = (...names: (Deciding['is'] | 'undo')[]): Finding =>
  names.reduce((finding, name) => {
    const event = name === 'undo' ? undo(finding) : (events.find(one => one.is === name) as Deciding)
    const next = decide(finding, event, now)
    if (!next) throw new Error(`${name} does not go`)
    return next
  }, fresh)

const decisions: readonly Deciding['is'][] = ['warn', 'edit-warning', 'dismiss', 'put-off', 'known-fake']
const goes = (finding: Finding) =>
  [...events.filter(one => decisions.includes(one.is)), undo(finding)]
    .filter(event => decide(finding, event, now))
    .map(event => event.is)

describe('which decision goes in which state', () => {
  test.each([
    ['told', reached('told'), ['warn', 'dismiss', 'put-off', 'known-fake']],
    ['watched', reached('told', 'put-off'), ['warn', 'dismiss', 'put-off', 'known-fake', 'undo']],
    ['watched to the end', reached('told', 'put-off', 'watch-over'), ['warn', 'dismiss', 'put-off', 'known-fake']],
    ['warned, on its way', reached('told', 'warn'), []],
    ['warned', reached('told', 'warn', 'warning-posted'), ['edit-warning', 'known-fake', 'undo']],
    [
      'edited',
      reached('told', 'warn', 'warning-posted', 'edit-warning', 'warning-posted'),
      ['edit-warning', 'known-fake', 'undo'],
    ],
    ['withdrawn, on its way', reached('told', 'warn', 'warning-posted', 'undo'), ['dismiss', 'put-off']],
    [
      'withdrawn',
      reached('told', 'warn', 'warning-posted', 'undo', 'withdrawal-posted'),
      ['warn', 'dismiss', 'put-off', 'known-fake'],
    ],
    ['dismissed', reached('told', 'dismiss'), ['undo']],
    ['a known fake', reached('told', 'known-fake'), ['undo']],
    [
      'a known fake that was warned of',
      reached('told', 'warn', 'warning-posted', 'known-fake'),
      ['edit-warning', 'undo'],
    ],
  ])('%s', (_name, finding, possible) => {
    expect(goes(finding)).toEqual(possible)
  })
})

test('a warning that could not be posted leaves the finding as it was, and no trace of a decision', () => {
  expect(reached('told', 'put-off', 'warn', 'warning-failed')).toMatchObject({
    state: 'watching',
    until: '2026-W41',
    warning: null,
    decisions: [{ did: 'put-off' }],
  })
  const edited = reached('told', 'warn', 'warning-posted', 'edit-warning', 'warning-failed')
  expect(edited.warning).toEqual({ channel: 'c', text: 'look twice', posted: true, message: 'm1' })
})

test('a warning is withdrawn with a word, where it stands, and an edit is undone in the same message', () => {
  expect(reached('told', 'warn', 'warning-posted', 'undo').withdrawal).toEqual({
    channel: 'c',
    text: 'look twice',
    message: 'm1',
    posted: false,
    why: 'sorry',
  })
  expect(reached('told', 'warn', 'warning-posted', 'edit-warning', 'warning-posted', 'undo').warning).toEqual({
    channel: 'c',
    text: 'look twice',
    message: 'm1',
    posted: false,
  })
})

test.each([
  ['nothing-decided', reached('told'), 0],
  ['watch-over', reached('told', 'put-off', 'watch-over'), 1],
  ['found-again', { ...reached('told', 'dismiss'), state: 'open' as const }, 1],
  ['on-its-way', reached('told', 'warn'), 1],
  ['decided-since', reached('told', 'dismiss'), 0],
] as const)('an undo that does not go says why: %s', (why, finding, of) => {
  expect(lastUndoable(finding, of)).toBe(why)
  expect(decide(finding, { is: 'undo', by: 'u', of, why: '' }, now)).toBeUndefined()
})

/** The walk that everything is held against; `undo` stands for an undo of what is then the last decision. */
const walks = fc.array(fc.constantFrom<Deciding['is']>(...events.map(one => one.is), 'undo', 'undo'), { maxLength: 40 })

test('nothing is lost: a decision stays as it was written, but that it says who took it back; one that failed never was', () => {
  fc.assert(
    fc.property(walks, walk => {
      let finding = fresh
      for (const name of walk) {
        const event = name === 'undo' ? undo(finding) : (events.find(one => one.is === name) as Deciding)
        const next = decide(finding, event, now)
        if (!next) continue
        expect(next.revision).toBe(finding.revision + 1)
        const failed = name === 'warning-failed' && next.decisions.length < finding.decisions.length
        const before = failed ? finding.decisions.slice(0, -1) : finding.decisions
        for (const [i, one] of before.entries())
          expect({ ...next.decisions[i], undone: null }).toEqual({ ...one, undone: null })
        finding = next
      }
    }),
  )
})

test('every undo restores the state before that decision, exactly, or says why not', () => {
  let undone = 0
  fc.assert(
    fc.property(walks, walk => {
      let finding = fresh
      /** How it stood before each decision that holds. */
      const stood: Finding[] = []
      for (const name of walk) {
        if (name === 'undo') {
          const last = lastUndoable(finding)
          const next = decide(finding, undo(finding), now)
          expect(next === undefined).toBe(typeof last === 'string')
          if (!next) continue
          undone++
          const before = stood.pop() as Finding
          const exact = standingOf(before)
          // An edit that is undone is on its way to the same message again.
          const [now_, then] = [next.warning, exact.warning].map(one => one && { ...one, posted: true })
          expect({ ...standingOf(next), warning: now_ }).toEqual({ ...exact, warning: then })
          finding = next
          continue
        }
        const event = events.find(one => one.is === name) as Deciding
        const next = decide(finding, event, now)
        if (!next) continue
        if (decisions.includes(name)) stood.push(finding)
        if (name === 'warning-failed' && next.decisions.length < finding.decisions.length) stood.pop()
        finding = next
      }
    }),
    { numRuns: 1000 },
  )
  expect(undone).toBeGreaterThan(100)
})

test('while something is on its way to Discord nothing else is put on the way', () => {
  fc.assert(
    fc.property(walks, walk => {
      let finding = fresh
      for (const name of walk) {
        const event = name === 'undo' ? undo(finding) : (events.find(one => one.is === name) as Deciding)
        const next = decide(finding, event, now)
        if (!next) continue
        if (isPending(finding)) expect(['warn', 'edit-warning', 'undo']).not.toContain(name)
        finding = next
      }
    }),
  )
})

test('a person who has their name deleted stands nowhere, also where they took something back', () => {
  const finding = reached('told', 'dismiss', 'undo', 'put-off')
  for (const person of ['q', 'u', 'r'])
    expect(JSON.stringify(withoutPerson(finding, person, ''))).not.toContain(`"${person}"`)
  expect(withoutPerson(finding, 'q', '').decisions).toHaveLength(2)
})

test('told, it has a post that shows it as it stands; where the post is not known, the one before stays', () => {
  const stale = { ...fresh, stale: true, post }
  expect(decide(stale, { is: 'told', post: null }, now)).toMatchObject({ told: true, post, stale: false })
  const other = { channel: 'c9', message: 'm9' }
  expect(decide(stale, { is: 'told', post: other }, now)).toMatchObject({ post: other })
})

test('shown: it is no longer behind, and a post that was met is kept, but in place of none that is known', () => {
  const told = reached('told')
  expect(decide(told, { is: 'shown', post: null }, now)).toBeUndefined()
  expect(decide(told, { is: 'shown', post: { channel: 'c9', message: 'm9' } }, now)).toBeUndefined()
  const other = { channel: 'c9', message: 'm9' }
  expect(decide({ ...told, stale: true }, { is: 'shown', post: other }, now)).toMatchObject({ stale: false, post })
  expect(decide({ ...told, post: null }, { is: 'shown', post: other }, now)).toMatchObject({
    stale: false,
    post: other,
  })
})

test('where the post is gone there is none, and nothing that shows an earlier state', () => {
  const told = reached('told')
  expect(decide({ ...told, stale: true }, { is: 'post-gone' }, now)).toMatchObject({ post: null, stale: false })
  expect(decide({ ...told, post: null, stale: true }, { is: 'post-gone' }, now)).toMatchObject({ stale: false })
  expect(decide({ ...told, post: null }, { is: 'post-gone' }, now)).toBeUndefined()
})

test('watched to the end, it waits again and moderators are told anew', () => {
  expect(decide(reached('told', 'put-off'), { is: 'watch-over' }, now)).toMatchObject({
    ...{ state: 'open', until: null, told: false },
  })
  expect(decide(reached('told'), { is: 'watch-over' }, now)).toBeUndefined()
})

test('what Discord says of a warning counts once; without a message of its own the one that is known stays', () => {
  const edited = reached('told', 'warn', 'warning-posted', 'edit-warning')
  const posted = decide(edited, { is: 'warning-posted', message: null }, now)
  expect(posted?.warning).toEqual({ channel: 'c', text: 'look three times', posted: true, message: 'm1' })
  expect(posted && decide(posted, { is: 'warning-posted', message: 'm2' }, now)).toBeUndefined()
  expect(posted && decide(posted, { is: 'warning-failed' }, now)).toBeUndefined()
  expect(decide(fresh, { is: 'warning-posted', message: 'm' }, now)).toBeUndefined()
  expect(decide(fresh, { is: 'withdrawal-posted' }, now)).toBeUndefined()
})

test('an undo that could not change the message stands all the same, and its post is behind', () => {
  const undone = reached('told', 'warn', 'warning-posted', 'edit-warning', 'warning-posted', 'undo')
  const shown = { ...undone, stale: false }
  expect(decide(shown, { is: 'warning-failed' }, now)).toMatchObject({
    stale: true,
    warning: { text: 'look twice', posted: true },
    decisions: [{ did: 'warned' }, { did: 'edited', undone: { by: 'u' } }],
  })
})

test('each decision says who made it, when and why, how it stood before, and leaves the post behind', () => {
  const told = { ...reached('told'), stale: false }
  expect(decide(told, { is: 'put-off', by: 'r', until: '2026-W41' }, 7)).toEqual({
    ...told,
    ...{ state: 'watching', until: '2026-W41', stale: true, revision: told.revision + 1 },
    decisions: [{ by: 'r', at: 7, did: 'put-off', why: '2026-W41', before: standingOf(told), undone: null }],
  })
  const warned = decide(told, { is: 'warn', by: 'p', channel: 'c', text: 't' }, 7)
  expect(warned?.warning).toEqual({ channel: 'c', text: 't', posted: false, message: null })
  expect(warned?.decisions[0]).toMatchObject({ did: 'warned', why: 't' })
  const known = decide(told, { is: 'known-fake', by: 's', fake }, 7)
  expect(known).toMatchObject({ state: 'known-fake', knownFake: fake, until: null, decisions: [{ why: fake.fake }] })
  const undone = known && decide(known, undo(known), 8)
  expect(undone?.decisions[0]?.undone).toEqual({ by: 'u', at: 8, why: 'sorry' })
  expect(undone?.stale).toBe(true)
})
