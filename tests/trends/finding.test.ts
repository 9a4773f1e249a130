// What can be decided about a finding in which state, and that nothing that does not go changes anything.
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Deciding, decide, type Finding } from '../../src/trends/finding.ts'

const now = 1
const fresh: Finding = {
  id: 'f',
  server: 's',
  key: 'k',
  week: '2026-W40',
  found: { is: 'rise', rise: { family: 'heron', rule: null, week: '2026-W40', standsOut: false } },
  revision: 0,
  state: 'new',
  again: null,
  warning: null,
  decisions: [],
}
const events: readonly Deciding[] = [
  { is: 'told' },
  { is: 'warn', by: 'p', channel: 'c', text: 'look twice' },
  { is: 'warning-posted' },
  { is: 'warning-failed' },
  { is: 'dismiss', by: 'q', why: 'one seller’s lot' },
  { is: 'put-off', by: 'r', until: '2026-W41' },
]
const reached = (...names: Deciding['is'][]): Finding =>
  names.reduce((finding, name) => {
    const next = decide(finding, events.find(one => one.is === name) as Deciding, now)
    if (!next) throw new Error(`${name} does not go`)
    return next
  }, fresh)

describe('which event goes in which state', () => {
  test.each([
    ['new', fresh, ['told']],
    ['told', reached('told'), ['told', 'warn', 'dismiss', 'put-off']],
    ['put off', reached('told', 'put-off'), ['told', 'warn', 'dismiss', 'put-off']],
    ['warned, not posted', reached('told', 'warn'), ['warning-posted', 'warning-failed']],
    ['warned', reached('told', 'warn', 'warning-posted'), []],
    ['dismissed', reached('told', 'dismiss'), []],
  ])('%s', (_name, finding, possible) => {
    expect(events.filter(event => decide(finding, event, now)).map(event => event.is)).toEqual(possible)
  })
})

test('a warning that could not be posted leaves the finding to be decided again, and no trace of a decision', () => {
  expect(reached('told', 'warn', 'warning-failed')).toMatchObject({ state: 'told', warning: null, decisions: [] })
})

test('decisions are only added, but for a warning that failed; the revision grows by one', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...events), { maxLength: 20 }), walk => {
      let finding = fresh
      for (const event of walk) {
        const next = decide(finding, event, now)
        if (!next) continue
        expect(next.revision).toBe(finding.revision + 1)
        const kept = event.is === 'warning-failed' ? finding.decisions.slice(0, -1) : finding.decisions
        expect(next.decisions.slice(0, kept.length)).toEqual(kept)
        if (finding.state === 'settled' && event.is !== 'warning-failed') expect(next.state).toBe('settled')
        finding = next
      }
    }),
  )
})
