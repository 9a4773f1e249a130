// The pictures of a verdict: what does not fit is marked where it is on the cell, the family stands beside it, and both are told.
import { ComponentType } from 'discord.js'
import fc from 'fast-check'
import Keyv from 'keyv'
import { describe, expect, test } from 'vitest'
import { screenOf } from '../../src/check/screen.ts'
import { start } from '../../src/check/step.ts'
import { showScreen } from '../../src/discord/check/show/screen.ts'
import { textBudget } from '../../src/discord/message/parts.ts'
import { type Answers, option, reading } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { judge } from '../../src/engine/judge.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { isFailing } from '../../src/ground/verdicts.ts'
import { drawDischargeCurve } from '../../src/pictures/charts/draw-discharge-curve.ts'
import { drawVerdict, drawVerdictAlone } from '../../src/pictures/from-checks/draw-verdict.ts'
import { drawFamily } from '../../src/pictures/from-packs/draw-family.ts'
import { pictureKey } from '../../src/pictures/png.ts'
import { openPictures } from '../../src/services/pictures/open-pictures.ts'
import { sayIn } from '../../src/words/say.ts'
import { curve } from '../pictures/gallery.ts'
import { parseSvg, partsNamed, shapesIn, walk } from '../pictures/svg-tree.ts'
import { shippedPacks, shippedProgram, shippedPrograms } from '../rules/shipped-programs.ts'
import { noFamilies } from './no-families.ts'

const say = sayIn('en')
const pictures = openPictures(new Keyv())

async function verdictMessage(program: Program, answers: Answers) {
  const family = program.family?.id ?? null
  const begun = start(
    program,
    { id: 'abcdefgh', holder: 'p', server: null, mode: 'full', cells: 1, family },
    Date.UTC(2026, 10, 25),
  )
  if (!begun.ok) throw new Error(begun.refusal.code)
  const check = {
    ...begun.check,
    answers: { ...begun.check.answers, ...answers },
    trail: Object.keys(answers),
    phase: { is: 'done' },
  } as const
  return showScreen(say, program, screenOf(program, check), {
    pictures,
    families: { ...noFamilies, programsFor: async () => openPrograms([]) },
  })
}

const cardOf = (program: Program, answers: Answers) => {
  const card = drawVerdict(say, program, judge(program, answers), answers)
  return card && parseSvg(card.svg)
}
const words = (node: ReturnType<typeof parseSvg>): string =>
  walk(node)
    .filter(one => one.name === 'text')
    .map(one => one.text)
    .join(' ')

describe('the card', () => {
  const heron = shippedProgram('brindlewick-heron')

  test('marks each contradiction on the part that was answered, drawn as it was answered', () => {
    const root = cardOf(heron, { legs: option('three'), 'lettering-place': option('wrap') })
    expect(partsNamed(root!, 'mark')).toHaveLength(2)
    expect(partsNamed(root!, 'legs').flatMap(node => node.children)).toHaveLength(3)
    // The message says why; the card is told in full to those who cannot see it.
    expect(partsNamed(root!, 'reason')).toHaveLength(0)
  })

  test('marks what was measured or read where it stands on the cell', () => {
    const root = cardOf(shippedProgram(), { format: option('18650'), 'claimed-capacity': reading(9900) })
    expect(partsNamed(root!, 'mark')).toHaveLength(1)
    expect(words(partsNamed(root!, 'lettering')[0]!).replace(/ /g, '')).toBe('????mAh')
  })

  test('two findings about one answer are one mark: two numbers on one place would hide each other', () => {
    const answers = { 'claimed-capacity': reading(9900) }
    const carried = judge(heron, answers).findings.filter(one => one.carries)
    expect(carried.length).toBeGreaterThan(1)
    expect(partsNamed(cardOf(heron, answers)!, 'mark')).toHaveLength(1)
    const alone = parseSvg(drawVerdictAlone(say, heron, judge(heron, answers), answers).svg)
    expect(partsNamed(alone, 'reason')).toHaveLength(carried.length)
  })

  test('is drawn in the size that was answered', () => {
    const answers = { format: option('26650'), swollen: option('swollen') }
    const small = drawVerdict(say, shippedProgram(), judge(shippedProgram(), answers), answers)
    const other = { ...answers, format: option('14500') }
    expect(small?.svg).not.toBe(drawVerdict(say, shippedProgram(), judge(shippedProgram(), other), other)?.svg)
  })

  test('shows the cell without a mark where nothing of the reasons is on it, and where nothing was found', () => {
    for (const answers of [{ smell: option('smells') }, {}])
      expect(partsNamed(cardOf(shippedProgram(), answers)!, 'mark')).toHaveLength(0)
  })

  test('has the figure the verdict rests on, as it was typed', () => {
    const root = cardOf(shippedProgram(), { format: option('18650'), 'claimed-capacity': reading(9900) })
    expect(words(partsNamed(root!, 'figures')[0]!)).toMatch(/^9,900\smAh$/)
    expect(partsNamed(cardOf(shippedProgram(), {})!, 'figures')).toHaveLength(0)
  })
})

describe('the family', () => {
  test('every shipped family is drawn, with a view of each tell its pack names and of no other', () => {
    const families = shippedPacks.flatMap(pack => pack.families)
    expect(families.length).toBeGreaterThanOrEqual(5)
    for (const family of families) {
      const root = parseSvg(drawFamily(say, family)!.svg)
      expect(/dimples/i.test(words(root)), family.id).toBe('dimples' in family.show)
      expect(words(root)).toContain('From the side')
    }
  })

  test.each([2, 0])('one positive end is drawn, with %i dimples where that many are said', dimples => {
    const [family] = shippedPacks.flatMap(pack => pack.families)
    const drawn = (row: boolean) => parseSvg(drawFamily(say, { ...family!, show: { legs: 3, dimples } }, row)!.svg)
    for (const root of [drawn(false), drawn(true)]) {
      expect(words(root)).toContain(dimples > 0 ? 'dimples: 2' : 'dimples: none')
      expect(words(root).match(/positive|dimples/gi)).toHaveLength(2)
    }
    expect(shapesIn(drawn(true), 'dimples')).toBe(dimples)
  })

  test('nothing is made up where a pack shows nothing, or shows what cannot be drawn', () => {
    const [family] = shippedPacks.flatMap(pack => pack.families)
    expect(drawFamily(say, { ...family!, show: {} })).toBeUndefined()
    expect(drawFamily(say, { ...family!, show: { legs: 99 } })).toBeUndefined()
  })
})

describe('what is kept of pictures', () => {
  async function keptOf(show: (shown: ReturnType<typeof openPictures>, program: Program) => Promise<unknown>) {
    const kept = new Map<string, unknown>()
    const memory = {
      get: async (key: string) => kept.get(key),
      set: async (key: string, png: unknown) => kept.set(key, png),
    }
    const [program, shown] = [shippedProgram('brindlewick-heron'), openPictures(memory)]
    await show(shown, program)
    return { program, keys: [...kept.keys()] }
  }
  const answers = { legs: option('three'), 'lettering-place': option('wrap') }

  test('a verdict card leaves nothing behind, the picture of its family stays', async () => {
    const { program, keys } = await keptOf(async (shown, program) => {
      const judgement = judge(program, answers)
      expect(await shown.forVerdict(program, judgement, answers, say)).toHaveLength(1)
      expect(await shown.forDetails(program, judgement, say)).toHaveLength(1)
    })
    expect(keys).toEqual([pictureKey(drawFamily(say, program.family!)!)])
  })

  test('a chart of somebody’s log leaves nothing behind', async () => {
    const points = [4.1, 3.6, 2.8].map((voltage, i) => ({ capacity: i * 900, voltage }))
    const chart = drawDischargeCurve({ ...curve, points })
    const { keys } = await keptOf(async shown => expect(await shown.ofDrawing('log.png', chart, say)).toBeDefined())
    expect(keys).toEqual([])
  })

  test('the picture of a question stays, and is not rendered again', async () => {
    const { keys } = await keptOf(async (shown, program) => {
      const legs = program.questions.get('legs')!
      const [first, again] = [await shown.forQuestion(legs, say), await shown.forQuestion(legs, say)]
      expect(again!.bytes).toBe(first!.bytes)
    })
    expect(keys).toHaveLength(1)
  })
})

describe('the verdict message', () => {
  const gallery = async (program: Program, answers: Answers) => {
    const message = await verdictMessage(program, answers)
    const items = message.components.flatMap(part => (part.type === ComponentType.MediaGallery ? part.items : []))
    expect(items.map(item => item.media.url)).toEqual(message.pictures.map(one => `attachment://${one.name}`))
    return items.map(item => item.description ?? '')
  }

  test('shows the card, its details the family, each told in words, the caution among them', async () => {
    const program = shippedProgram('brindlewick-heron')
    const [card = '', ...others] = await gallery(program, { legs: option('three') })
    expect(others).toEqual([])
    const [family] = await pictures.forDetails(program, judge(program, { legs: option('three') }), say)
    expect(card).toMatch(/^Result: Ruled out/)
    expect(card).toMatch(/Mark 1: The positive contact of a Heron stands on four legs/)
    expect(card).toContain(say('caution.line'))
    expect(family?.alt).toMatch(/of a cell as it should look/)
    expect(family?.alt).toMatch(/4 legs/)
  })

  test('in danger nobody is sent back to compare', async () => {
    const program = shippedProgram('brindlewick-heron')
    expect(await pictures.forDetails(program, judge(program, { swollen: option('swollen') }), say)).toEqual([])
    const told = await gallery(shippedProgram('brindlewick-heron'), { swollen: option('swollen') })
    expect(told).toHaveLength(1)
    expect(told[0]).toMatch(/^Result: Danger/)
  })

  test('on random answers holds to Discord’s limits and keeps its caution', async () => {
    const programs = shippedPrograms()
    const picks = fc.array(fc.nat({ max: 1000 }), { minLength: 61, maxLength: 61 })
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...programs), picks, async (program, chosen) => {
        const answers = Object.fromEntries(
          [...program.questions.keys()].map((id, i) => {
            const states = program.states.get(id) ?? []
            return [id, states[(chosen[i] ?? 0) % states.length]?.answers[0] ?? option('none')]
          }),
        )
        const message = await verdictMessage(program, answers)
        const texts = message.components.flatMap(part =>
          part.type === ComponentType.TextDisplay ? [part.content] : [],
        )
        expect(texts.join('').length).toBeLessThanOrEqual(textBudget)
        const caution = isFailing(judge(program, answers).verdict) ? 'caution.failed' : 'caution.full'
        expect(texts.join('\n')).toContain(say(caution))
        for (const { alt } of message.pictures) expect(alt.length).toBeLessThanOrEqual(1024)
        expect(message.pictures[0]?.alt ?? say('caution.line')).toMatch(
          /do not use or charge the cell|as it should look/,
        )
      }),
      { numRuns: 25 },
    )
  }, 120_000)
})
