// What to do now: one source for each act, the same for every sign on a quiet cell, and nothing for the hands where a danger could not be told.
import { describe, expect, test } from 'vitest'
import type { Check } from '../../src/check/check.ts'
import { screenOf, type VerdictScreen } from '../../src/check/screen.ts'
import { start } from '../../src/check/step.ts'
import { aidFor, shownSteps, stepsFor } from '../../src/discord/check/show/steps.ts'
import { showVerdict } from '../../src/discord/check/show/verdict.ts'
import { type Answers, cantTell, option, reading } from '../../src/engine/answers.ts'
import { compile } from '../../src/engine/compile.ts'
import { loadPacks } from '../../src/packs/load-packs.ts'
import { shippedRules } from '../../src/packs/shipped-rules.ts'
import type { Key } from '../../src/words/catalogue.ts'
import { sayIn } from '../../src/words/say.ts'

const now = Date.UTC(2026, 10, 29)
const packs = (await loadPacks(shippedRules, { cases: false })).packs.map(loaded => loaded.pack)
const compiled = compile(packs, '2026-11-29')
if (!compiled.ok) throw new Error('the shipped packs do not compile')
const { program } = compiled

function verdictOn(answers: Answers, consents: Check['consents'] = {}): VerdictScreen {
  const begun = start(
    program,
    { id: 'c'.repeat(20), holder: 'p', server: null, mode: 'quick', cells: 1, family: null },
    now,
  )
  if (!begun.ok) throw new Error(begun.refusal.code)
  const check: Check = { ...begun.check, answers, trail: Object.keys(answers), consents, phase: { is: 'done' } }
  const screen = screenOf(program, check)
  if (screen.kind !== 'verdict') throw new Error(screen.kind)
  return screen
}

const claim = { format: option('18650'), 'claimed-capacity': reading(9900) }
const failed = {
  'ruled-out': { ...claim, chemistry: option('nickel-or-cobalt') },
  doubtful: { format: option('18650'), mass: reading(30, 0.3) },
  danger: { dent: option('dented') },
} as const
/** What fell or was crushed may burn within the day: nobody is told to tape it before that. */
const afterTheWait: readonly Key[] = ['safety.quiet', 'safety.quiet.wait', 'safety.quiet.keep']
const forHands: readonly Key[] = ['safety.quiet.keep', 'safety.cold.carry', 'next.handle']

describe.each(['en', 'de', 'es'])('in %s', language => {
  const say = sayIn(language)
  const steps = (answers: Answers) => stepsFor(program, verdictOn(answers), say)

  test.each(Object.entries(failed))('%s of a quiet cell begins with the same acts', (verdict, answers) => {
    expect(verdictOn(answers).judgement.verdict).toBe(verdict)
    expect(steps(answers).slice(0, afterTheWait.length)).toEqual(afterTheWait.map(key => say(key)))
  })

  test('on the result itself the conditions of keeping it are a press away, and until then it is left where it is', () => {
    for (const answers of [failed['ruled-out'], failed.doubtful]) {
      const said = shownSteps(program, verdictOn(answers), say)
      expect(said[1]).toBe(say('next.leave', { button: say('button.details') }))
      for (const key of ['safety.turns', 'safety.quiet.hand-in', 'next.seller'] as const)
        expect(said.slice(0, 5)).toContain(say(key))
      for (const key of forHands) expect(said).not.toContain(say(key))
      expect(steps(answers)).toContain(say('safety.quiet.keep'))
    }
    // Danger has no other page to wait for.
    expect(shownSteps(program, verdictOn(failed.danger), say)).toContain(say('safety.quiet.keep'))
  })

  const shown = (answers: Answers) => JSON.stringify(showVerdict(say, program, verdictOn(answers)).components)
  const means = JSON.stringify(say('verdict.open.means')).slice(1, -1)

  test('undecided: what was not asked and may be danger is named, with the button that asks', () => {
    const text = shown({})
    const [unasked = ''] = say('verdict.hazards-unasked', { signs: '#', button: say('button.go-on') }).split('#')
    expect(text).toContain(unasked)
    expect(text.indexOf(unasked)).toBeGreaterThan(text.indexOf(means))
    expect(text.slice(text.indexOf(unasked)).split(say('button.go-on')).length).toBeGreaterThan(2)
  })

  test('two cautions do not push what to do once the cell gets hot off the result', () => {
    const answers = { ...failed['ruled-out'], 'past-damage': cantTell, voltage: reading(2.5, 0.05) }
    const whys = verdictOn(answers).explanation.unchecked.map(({ why }) => why)
    expect(whys).toEqual(expect.arrayContaining(['undecided', 'cant-tell']))
    expect(shown(answers)).toContain(say('safety.turns'))
  })

  test('undecided for a danger that could not be told: nothing reassuring stands before that', () => {
    expect(shown({ 'hot-now': cantTell })).not.toContain(means)
  })

  test.each(['hot-now', 'swollen', 'leaking'])(
    'where %s could not be told, nothing needs hands, whatever came out',
    untold => {
      for (const answers of [failed['ruled-out'], failed.doubtful, {}]) {
        const said = steps({ ...answers, [untold]: cantTell })
        expect(said).toContain(say('safety.cold.leave'))
        for (const key of forHands) expect(said).not.toContain(say(key))
      }
    },
  )

  test('a cell that may not be touched is left alone, and why is said first; one that may be is kept without the whole condition again', () => {
    for (const answers of [failed['ruled-out'], failed.doubtful, {}]) {
      const said = stepsFor(program, verdictOn(answers, { touch: false }), say)
      expect(said.slice(0, 3)).toEqual(
        (['next.untouched', 'safety.cold.leave', 'safety.turns'] as const).map(key => say(key)),
      )
      for (const key of forHands) expect(said).not.toContain(say(key))
    }
    const held = stepsFor(program, verdictOn({}, { touch: true }), say)
    expect(held).toContain(say('next.handle.held'))
    expect(held).toContain(say('safety.turns'))
    expect(held.join(' ')).not.toContain(say('safety.quiet.only'))
    // One that something speaks against has the whole of it all the same: it may have got hot.
    expect(stepsFor(program, verdictOn({ 'in-device': option('hot') }, { touch: true }), say)).toContain(
      say('next.handle'),
    )
    expect(stepsFor(program, verdictOn(failed.doubtful, { touch: true }), say)).toContain(say('safety.quiet.keep'))
    const unsure = stepsFor(program, verdictOn({ dent: cantTell }, { touch: true }), say)
    expect(unsure.filter(step => step === say('safety.turns')).length).toBe(1)
  })

  test('a danger that could not be told asks for no less than one on a quiet cell', () => {
    for (const untold of ['dent', 'hot-now']) expect(steps({ [untold]: cantTell })[0]).toContain(say('safety.quiet'))
  })

  test('first aid is there where somebody may have been hurt, and nowhere else', () => {
    const aid = (answers: Answers) => aidFor(verdictOn(answers), say)
    for (const hurt of [{ 'hot-now': option('happening') }, { 'top-damage': option('vented') }])
      expect(aid(hurt)).toEqual([say('safety.aid'), say('safety.aid.burn')])
    expect(aid(failed.danger)).toEqual([])
    expect(aid(failed['ruled-out'])).toEqual([])
  })

  test('what was hot, or was pierced, is left alone like all that happened and is cold now', () => {
    for (const answers of [
      { 'got-hot': option('too-hot') },
      { 'load-test': option('too-hot'), 'claimed-current': reading(10) },
      { 'past-damage': option('pierced') },
      { 'hot-now': option('earlier') },
      { wet: option('salt') },
    ]) {
      const [first] = steps(answers)
      expect(first).toBe(say('safety.cold.leave'))
      for (const key of forHands) expect(steps(answers)).not.toContain(say(key))
    }
  })
})
