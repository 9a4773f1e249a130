// The verdict message: whatever a pack says at whatever length, the headline, the steps and the whole caution are there.
import { type APIButtonComponent, ComponentType } from 'discord.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { screenOf, type VerdictScreen } from '../../src/check/screen.ts'
import { start, step } from '../../src/check/step.ts'
import { showDetails } from '../../src/discord/check/show/details.ts'
import { showScreen } from '../../src/discord/check/show/screen.ts'
import { fitLists } from '../../src/discord/message/fit-text.ts'
import { type ShownMessage, textBudget } from '../../src/discord/message/parts.ts'
import { type Answer, cantTell } from '../../src/engine/answers.ts'
import { compile, type Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { readPack } from '../../src/engine/pack/read-pack.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { drawVerdict } from '../../src/pictures/from-checks/draw-verdict.ts'
import { markedFindings } from '../../src/pictures/from-checks/marked-views.ts'
import { verdicts as verdictWords } from '../../src/words/en/verdicts.ts'
import { languages, sayIn } from '../../src/words/say.ts'
import { shippedProgram, shippedPrograms } from '../rules/shipped-programs.ts'
import { noFamilies } from './no-families.ts'

const say = sayIn('en')
const now = Date.UTC(2026, 10, 25)
const [none, nothing] = [async () => [], async () => undefined]
const noPictures = { forQuestion: nothing, forVerdict: none, forDetails: none, forBench: nothing, ofDrawing: nothing }
const withoutPictures = { pictures: noPictures, families: { ...noFamilies, programsFor: async () => openPrograms([]) } }

const textsOf = (message: ShownMessage): string[] =>
  message.components.flatMap(part => (part.type === ComponentType.TextDisplay ? [part.content] : []))
const countOf = (parts: readonly object[]): number =>
  parts.reduce((sum, part) => sum + 1 + ('components' in part ? countOf(part.components as object[]) : 0), 0)
function holdsToLimits(message: ShownMessage): void {
  expect(textsOf(message).join('').length).toBeLessThanOrEqual(textBudget)
  expect(countOf(message.components)).toBeLessThanOrEqual(40)
}

/** A pack in which everything is as long as the schema allows and every rule fires at once. */
function longest(kind: 'hazard' | 'must' | 'sign' | 'no-bearing', count: number): Program {
  const long = (size: number) => 'word '.repeat(size / 5).trim()
  const extra = {
    hazard: { act: 'get-away' },
    must: { means: 'salvaged' },
    sign: { strength: 'strong' },
    'no-bearing': {},
  }[kind]
  const names = Array.from({ length: count }, (_, i) => i)
  const options = [
    { id: 'good', label: long(80) },
    { id: 'bad', label: long(80) },
  ]
  const rule = (i: number, more: object) => ({
    id: `r${i}`,
    when: { [`q${i}`]: 'bad' },
    says: long(400),
    source: ['s'],
    ...more,
  })
  const read = readPack({
    pack: 'longest',
    version: '1.0.0',
    written: '2026-11-25',
    title: 'x',
    about: 'x',
    sources: { s: { kind: 'published', text: long(300), seen: 'text' } },
    questions: names.map(i => ({ id: `q${i}`, ask: long(300), look: long(600), care: 'look', effort: 1, options })),
    rules: [
      ...names.map(i => rule(i, { kind, ...extra })),
      { ...rule(0, { kind: 'sign', strength: 'weak' }), id: 'last' },
    ],
    families: [{ id: 'f', name: long(60), maker: long(60), given: {}, enough: ['last'] }],
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const compiled = compile([read.pack], '2026-11-25', 'f')
  if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems))
  return compiled.program
}

function finished(program: Program, answers: Record<string, Answer>): Check {
  const begun = start(
    program,
    { id: 'check1', holder: 'p', server: null, mode: 'full', cells: 1, family: program.family?.id ?? null },
    now,
  )
  if (!begun.ok) throw new Error(begun.refusal.code)
  return { ...begun.check, answers, trail: Object.keys(answers), phase: { is: 'done' } }
}

describe('the caution is never cut off', () => {
  test.each(
    (['hazard', 'must', 'sign', 'no-bearing'] as const).flatMap(kind =>
      [1, 8, 40].map(count => [kind, count] as const),
    ),
  )('with %s rules, %d of them, all at their longest', async (kind, count) => {
    const program = longest(kind, count)
    const all = Object.fromEntries(
      [...program.questions.keys()].map(id => [id, { kind: 'option', option: 'bad' } as Answer]),
    )
    const message = await showScreen(
      say,
      program,
      screenOf(program, finished(program, all)),
      withoutPictures,
      'A note above. '.repeat(10),
    )
    holdsToLimits(message)
    const texts = textsOf(message).join('\n')
    expect(texts).toContain(say(kind === 'no-bearing' ? 'caution.full' : 'caution.failed'))
    expect(texts).toContain(kind === 'hazard' ? say('safety.now') : say('part.next'))
    expect(texts).toMatch(/^## /m)
    const screen = screenOf(program, finished(program, all)) as VerdictScreen
    const pages = [1, 2, 3].map(page => showDetails(say, program, screen, page))
    for (const page of pages) {
      holdsToLimits(page)
      expect(textsOf(page).join('\n')).toContain(say('caution.line'))
    }
    expect(textsOf(pages[2] as ShownMessage).join('\n')).toContain(say('part.judged', { packs: 'longest 1.0.0 ()' }))
  })

  test('on random answers to the shipped packs, with every screen on the way', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.constantFrom(...shippedPrograms()),
        fc.array(fc.nat({ max: 1000 }), { minLength: 60, maxLength: 60 }),
        async (program, picks) => {
          const begun = start(
            program,
            { id: 'abcdefgh', holder: 'p', server: null, mode: 'full', cells: 4, family: program.family?.id ?? null },
            now,
          )
          if (!begun.ok) throw new Error(begun.refusal.code)
          let { check } = begun
          for (const pick of picks) {
            const message = await showScreen(say, program, screenOf(program, check), withoutPictures)
            holdsToLimits(message)
            expect(textsOf(message).join('\n')).toMatch(/do not use or charge the cell/i)
            if (!('question' in check.phase)) break
            const states = program.states.get(check.phase.question) ?? []
            const given = (
              check.phase.is === 'second-look' ? check.phase.answer : states[pick % states.length]?.answers[0]
            ) as Answer
            const next = step(program, check, { is: 'answer', question: check.phase.question, answer: given }, now)
            if (!next.ok) throw new Error(JSON.stringify(next.refusal))
            check = next.check
          }
          const over = { ...check, phase: { is: 'done' } } as const
          const message = await showScreen(say, program, screenOf(program, over), withoutPictures)
          holdsToLimits(message)
          expect(textsOf(message).join('\n')).toContain(say('caution.line'))
        },
      ),
      { numRuns: 60 },
    )
  }, 120_000)
})

describe('no verdict says more than it may', () => {
  test('nowhere genuine, authentic, safe to use or a percentage', () => {
    for (const [key, sentence] of Object.entries(verdictWords)) {
      if (key === 'caution.full' || key === 'caution.failed') continue
      expect(sentence, key).not.toMatch(/\bgenuine\b|\bauthentic\b|\bsafe to\b|\bfine to\b|\bok to\b|%/i)
    }
  })
})

describe('lists that give way', () => {
  test('never exceed the budget and never lose the count of what they left out', () => {
    const lists = fc.array(fc.array(fc.string({ minLength: 1, maxLength: 200 }), { maxLength: 30 }), { maxLength: 6 })
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 3000 }), (all, fixed) => {
        const shown = fitLists(
          all.map((items, i) => ({ title: `t${i}`, items, rest: count => `rest ${count}` })),
          fixed,
          4000,
        )
        expect(shown.join('').length + fixed).toBeLessThanOrEqual(4000)
      }),
      { numRuns: 500 },
    )
  })
})

test('a cell to get away from: nothing asks for hands on it', async () => {
  const program = longest('hazard', 1)
  const all = Object.fromEntries(
    [...program.questions.keys()].map(id => [id, { kind: 'option', option: 'bad' } as Answer]),
  )
  const screen = screenOf(program, finished(program, all)) as VerdictScreen
  const first = textsOf(await showScreen(say, program, screen, withoutPictures)).join('\n')
  expect(first).toMatch(/^## 🛑 Drop the cell if you are holding it/)
  // The order to act is the only thing in bold.
  expect(first).not.toContain('**')
  const words = [first, ...[1, 2, 3].flatMap(page => textsOf(showDetails(say, program, screen, page)))].join('\n')
  expect(words).toContain(say('safety.now'))
  expect(words).not.toMatch(/cover both ends|container|ends covered|not asked/i)
  expect(words).toContain(say('unchecked.danger'))
})

test('buttons carry the revision they were shown on', async () => {
  const program = longest('must', 1)
  const check = { ...finished(program, {}), revision: 7, id: 'abcdefgh' }
  const message = await showScreen(say, program, screenOf(program, check), withoutPictures)
  const buttons = message.components.flatMap(part =>
    part.type === ComponentType.ActionRow ? part.components : [],
  ) as APIButtonComponent[]
  const ids = buttons.map(one => ('custom_id' in one ? one.custom_id : ''))
  // The ways on from a verdict change nothing about the check.
  const acts = ids.filter(id => !/^(cb1|clt1)\./.test(id))
  expect(acts.length).toBeGreaterThan(0)
  for (const id of acts) expect(id).toMatch(/^cw1\.abcdefgh\.7\./)
})

test('a cell that has vented and is cold: nobody is told to touch, tape or pack it, and the most urgent of several dangers is what counts', async () => {
  const program = shippedProgram()
  const shownFor = async (said: Readonly<Record<string, string>>) => {
    const answers = Object.fromEntries(
      Object.entries(said).map(([id, one]) => [id, { kind: 'option', option: one } as Answer]),
    )
    return textsOf(await showScreen(say, program, screenOf(program, finished(program, answers)), withoutPictures)).join(
      '\n',
    )
  }
  const vented = await shownFor({ 'top-damage': 'vented', dent: 'dented' })
  expect(vented).toMatch(
    /^## 🛑 If you are holding the cell, put it down; if it is on you, .*\. Leave it where it is, do not touch it/,
  )
  expect(vented).toContain(say('safety.cold.call'))
  expect(vented).not.toContain(say('safety.quiet.keep'))
  expect(vented).not.toMatch(/electrical tape|hand it in/)
  const dented = await shownFor({ dent: 'dented' })
  expect(dented).toContain(say('safety.quiet.keep'))
  expect(await shownFor({ 'top-damage': 'vented', 'hot-now': 'happening' })).toMatch(/^## 🛑 Drop the cell if/)
})

describe.each(languages)('in %s', language => {
  const told = sayIn(language)
  const program = inLanguage(shippedProgram(), language)
  const shownFor = async (said: Readonly<Record<string, Answer>>, server: string | null = null) => {
    const check = { ...finished(program, said), server }
    return textsOf(await showScreen(told, program, screenOf(program, check), withoutPictures)).join('\n')
  }
  const is = (option: string): Answer => ({ kind: 'option', option })

  test('whoever holds or wears what may burn is told to let go of it before any number, and to call before all else', async () => {
    const lines = (await shownFor({ 'hot-now': is('happening') })).split('\n')
    const at = (['now', 'now.worn', 'now.far', 'now.call', 'now.carry', 'now.gone-quiet'] as const).map(key =>
      lines.findIndex(line => line.endsWith(told(`safety.${key}`))),
    )
    expect(at).toEqual([0, 1, 2, 3, 4, 5])
    expect(lines.slice(0, 2).join()).not.toMatch(/\d/)
  })

  test('where nothing is decided, up to two signs one was unsure of are named, and whom to call and to ask', async () => {
    const unsure = (ids: readonly string[]) => Object.fromEntries(ids.map(id => [id, cantTell]))
    const asked = (id: string) => program.questions.get(id)?.ask ?? id
    const touched = await shownFor(unsure(['ring', 'rust']), '900000000000000100')
    for (const id of ['ring', 'rust']) expect(touched).toContain(asked(id))
    expect(touched).toContain(told('safety.turns'))
    expect(touched).toContain(told('button.hands'))
    const many = await shownFor(unsure(['hot-now', 'swollen', 'leaking', 'smell', 'rust']))
    expect(['hot-now', 'swollen', 'leaking', 'smell', 'rust'].filter(id => many.includes(asked(id)))).toHaveLength(2)
    expect(many).toContain(told('list.rest', { count: 3 }))
    expect(many).toContain(told('safety.cold.leave'))
    expect(many).toContain(told('safety.turns'))
    // In a conversation with the bot alone there is no helper to press for.
    expect(many).not.toContain(told('button.hands'))
    expect(many).toContain(told('next.ask.untouched'))
  })

  test('the numbers on the card stand before the reasons they are about', async () => {
    const answers = {
      format: is('18650'),
      'claimed-capacity': { kind: 'reading', value: 9900, u: 0 },
      mass: { kind: 'reading', value: 33, u: 0.3 },
      'energy-by-weight': { kind: 'reading', value: 1080, u: 5 },
    } as const
    const check = finished(program, answers)
    const { judgement } = screenOf(program, check) as VerdictScreen
    const marked = markedFindings(program, judgement, check.answers)
    expect(marked.length).toBeGreaterThan(0)
    const shown = await shownFor(answers)
    for (const [i, { rule }] of marked.entries()) expect(shown).toContain(`- ${['①', '②'][i]} ${rule.says}`)
    const { about } = drawVerdict(told, program, judgement, check.answers)
    const marks = about.filter(one => one.code === 'verdict-mark')
    expect(marks.map(one => one.values)).toEqual(marked.map(({ rule }, i) => ({ n: i + 1, text: rule.says })))
  })

  test('the first screen begins with what to do in danger, in the one place’s own words', async () => {
    const begun = start(program, { id: 'abcdefgh', holder: 'p', server: null, cells: 1, family: null }, now)
    if (!begun.ok) throw new Error(begun.refusal.code)
    const [first] = textsOf(await showScreen(told, program, begun.screen, withoutPictures))
    expect(first?.startsWith(told('safety.turns'))).toBe(true)
  })
})
