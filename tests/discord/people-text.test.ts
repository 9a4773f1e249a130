// Every place that shows what people write: whatever they write, the message has the same shape as with harmless words, in every language.
import { type APIMessageTopLevelComponent, ComponentType } from 'discord.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { showNoAnswer } from '../../src/discord/answers/show-answer.ts'
import { sayLinks } from '../../src/discord/buying/show-links.ts'
import { showClaim } from '../../src/discord/check/claims/show-claim.ts'
import { showHelpRequest } from '../../src/discord/check/hand-over/show/help-request.ts'
import { sentBack, showHands } from '../../src/discord/check/hand-over/show/holder-menu.ts'
import { showPanel } from '../../src/discord/check/hand-over/show/panel.ts'
import { sayRefusal } from '../../src/discord/interaction/refusal.ts'
import { showLogQuestion } from '../../src/discord/logs/show-log-question.ts'
import { message, text as part, type ShownMessage } from '../../src/discord/message/parts.ts'
import { showFinding, showWarning, showWithdrawn } from '../../src/discord/trends/show/finding.ts'
import type { Family, Question } from '../../src/engine/pack/pack.ts'
import { type Block, readBlocks, type Span } from '../../src/practice/page/markdown.ts'
import { unsettled } from '../../src/server/settings.ts'
import { begin, type Finding, untouched } from '../../src/trends/findings/finding.ts'
import { sayWhat } from '../../src/words/describe.ts'
import { sayDifference } from '../../src/words/history-words.ts'
import { sayLogRefusal } from '../../src/words/log-words.ts'
import { sayPhotoRefusal } from '../../src/words/photo-words.ts'
import { languages, type Say, sayIn } from '../../src/words/say.ts'
import { sayNow } from '../../src/words/setup-words.ts'
import { sayTypedRefusal } from '../../src/words/typed-words.ts'
import { shippedProgram } from '../rules/shipped-programs.ts'
import { hostileText } from './hostile-text.ts'

/** A check that was offered, asked about and sent back for reasons that people have written. */
const checkWith = (why: string): Check => ({
  id: 'check1',
  revision: 3,
  server: '1',
  holder: '11',
  mode: 'full',
  cells: 1,
  family: null,
  packs: [],
  day: '2026-11-27',
  answers: {},
  trail: [],
  consents: {},
  phase: { is: 'asking', question: 'q' },
  custody: {
    starter: '12',
    shares: false,
    offer: { to: { to: 'anyone' }, until: 2e12 },
    helpRequest: { question: 'q', words: why, where: null },
    history: [
      { by: '12', did: 'offered', at: 1e12, to: { to: 'anyone' }, why },
      { by: '13', did: 'sent-back', at: 1e12, why },
    ],
  },
  startedAt: 1e12,
  expiresAt: 2e12,
})
const question = { id: 'q', ask: 'Is it round?', answer: { kind: 'options', options: [] } } as unknown as Question
const familyNamed = (name: string) => ({ name, maker: name }) as Family
const findingWith = (why: string): Finding => {
  const rise = { family: 'f', rule: null, week: '2026-W40', standsOut: true }
  const fresh = begin({ key: 'k', family: 'f', week: rise.week, parts: [{ is: 'rise', rise }] }, 'finding1', '1')
  const undone = { by: '12', at: 1e12, why }
  const decisions = [{ by: '11', at: 1e12, did: 'dismissed', why, before: untouched, undone }] as const
  return { ...fresh, told: true, decisions }
}
const names = { family: () => 'F', rule: () => 'R', item: () => 'I', place: () => 'P' }
const link = (title: string) => ({ id: 'l', url: 'https://shop.example/', title, addedAt: 1e12, reviewedAt: 1e12 })

const settings = unsettled('1')
const around = { places: {}, goneRoles: [], tag: undefined } as never

const said = (sentence: string): ShownMessage => message([part(sentence)])
const surfaces: Readonly<Record<string, (say: Say, people: string) => ShownMessage>> = {
  'a claim that is quoted': (say, text) => showClaim(say, { text, facts: [], findings: [], compared: [] }, undefined),
  'an unclear claim': (say, text) =>
    showClaim(
      say,
      {
        text,
        facts: [{ kind: 'unclear', of: 'capacity', span: { from: 0, to: text.length }, readings: [] } as never],
        findings: [],
        compared: [],
      },
      undefined,
    ),
  'a question that is quoted': (say, text) => showNoAnswer(say, { question: text, to: null }, []),
  'a warning': (say, text) => showWarning(say, text),
  'a reason in a finding’s history': (say, text) => showFinding(say, names, findingWith(text), { week: '2026-W41' }),
  'why a warning is withdrawn': (say, text) => showWithdrawn(say, 'look', text),
  'what a withdrawn warning said': (say, text) => showWithdrawn(say, text, 'sorry'),
  'a reason in a check’s history': (say, text) => showHands(say, shippedProgram(), checkWith(text)),
  'what a moderator wrote back': (say, text) => said(sentBack(say, checkWith(text), 'q') ?? ''),
  'a reason on a panel': (say, text) => showPanel(say, 'x', checkWith(text)),
  'the words of a help request': (say, text) => showHelpRequest(say, 'x', checkWith(text), question, []),
  'the name of a family and its maker': (say, text) => said(`### ${sayWhat(say, familyNamed(text))}`),
  'a family that is not there': (say, text) => said(sayRefusal(say, { code: 'unknown-family', name: text })),
  'the title of a link': (say, text) => said(sayLinks(say, [link(text)], 1, 1e12)),
  'the title of a link in the history': (say, text) =>
    said(
      [link(text), { ...link('x'), url: 'https://other.example/' }]
        .flatMap(is =>
          sayDifference(say, { was: {}, is: {}, links: [{ at: 0, was: link(text), is }] }, settings, around),
        )
        .join('\n'),
    ),
  'a link that is there already': (say, text) => said(sayRefusal(say, { code: 'link-there', title: text })),
  'the name of a photo': (say, text) => said(sayPhotoRefusal(say, { code: 'broken', name: text.slice(0, 40) })),
  'the first line of a log': (say, text) => said(sayLogRefusal(say, { code: 'no-table', firstLine: text })),
  'a formula in a log': (say, text) => said(sayLogRefusal(say, { code: 'formula', row: 1, column: 2, text } as never)),
  'a broken row of a log': (say, text) =>
    said(
      sayLogRefusal(say, { code: 'broken-rows', broken: 1, rows: 9, first: { row: 1, label: text, text } } as never),
    ),
  'a column of a log': (say, text) =>
    showLogQuestion(say, { code: 'which-unit', role: 'time', label: text, options: ['s'], rows: [[text, text]] }, 'id'),
  'a unit that was typed': (say, text) =>
    said(
      sayTypedRefusal(say, {
        field: 'value',
        refusal: { code: 'unknown-unit', unit: text, typed: text, accepted: ['g'] } as never,
      }),
    ),
  'a tag of a forum': (say, text) =>
    said(
      sayNow(
        say,
        { ...unsettled('1'), forumOffers: [{ forum: '21', tags: ['22', '23'] }] },
        { places: { reports: undefined, review: undefined }, forums: [], goneRoles: [], tags: { 22: text, 23: text } },
        'offers',
      ),
    ),
}

/** What a reader sees besides letters: headings, lists, bold, links, mentions, in their order. */
function shapeOf(shown: ShownMessage): unknown {
  const contents = textsOf(shown.components)
  return contents.map(content => readBlocks(content).map(shapeOfBlock))
}
const textsOf = (components: readonly APIMessageTopLevelComponent[]): string[] =>
  components.flatMap(one => (one.type === ComponentType.TextDisplay ? [one.content] : []))
function shapeOfBlock(block: Block): unknown {
  if (block.kind === 'code') return { kind: 'code' }
  if (block.kind === 'list')
    return { kind: 'list', items: block.items.map(({ depth, inside }) => [depth, shapeOfSpans(inside)]) }
  return { ...block, inside: shapeOfSpans(block.inside) }
}
function shapeOfSpans(spans: readonly Span[]): unknown[] {
  const shapes = spans.map(span =>
    span.kind === 'text' || span.kind === 'code'
      ? span.kind
      : 'inside' in span
        ? { ...span, inside: shapeOfSpans(span.inside) }
        : span,
  )
  return shapes.filter((one, at) => one !== 'text' || shapes[at - 1] !== 'text')
}

const alone = new Set(['a warning', 'why a warning is withdrawn', 'what a withdrawn warning said'])

describe.each(Object.entries(surfaces))('%s', (name, show) => {
  test.each(languages)('is text in %s', language => {
    const say = sayIn(language)
    const harmless = shapeOf(show(say, 'harmless words'))
    fc.assert(
      fc.property(hostileText, people => {
        // A text that stands alone keeps its lines, and each is text (plain.test.ts).
        const text = alone.has(name) ? people.replace(/[\n\v\f\r\u0085\u2028\u2029]/g, ' ') : people
        expect(shapeOf(show(say, text))).toEqual(harmless)
      }),
      { numRuns: 150 },
    )
  })

  test('shows nothing that turns around what stands behind it', () => {
    fc.assert(
      fc.property(hostileText, people => {
        const shown = JSON.stringify(show(sayIn('en'), people).components)
        expect(shown).not.toMatch(/[\u200b\u200e\u200f\u202a-\u202e\u2060\u2066\u2067\ufeff\u00ad\u3164]/)
        expect(shown.split('\u2068').length).toBe(shown.split('\u2069').length)
      }),
      { numRuns: 150 },
    )
  })
})
