// The invented cells of the practice room's sixty weeks: families of Paper Harbour, their usual faults, and one new counterfeit.

import { option } from '../../engine/answers.ts'
import { judge } from '../../engine/judge.ts'
import type { Programs } from '../../engine/programs.ts'
import { findingsCounted } from '../../services/finished-check.ts'
import type { DemoCast, DemoCourse, DemoFamily } from '../../trends/demo.ts'

type Options = Readonly<Record<string, string>>

const salvaged: Options = { 'weld-marks': 'spots', 'sold-as': 'new-bare' }
const secondWrap: Options = { 'second-wrap': 'second', 'sold-as': 'new-bare' }
const heron: Options = { 'lettering-place': 'can', 'code-place': 'wrap', legs: 'four', 'vent-disc': 'raised-button' }
const rook: Options = { 'lettering-place': 'can', 'code-place': 'wrap', legs: 'three', 'vent-disc': 'four-lines' }
const slate: Options = { 'lettering-place': 'wrap', 'code-place': 'can', legs: 'four', 'vent-disc': 'four-lines' }
const unlisted: Options = { 'weld-marks': 'none', 'wrap-torn': 'whole' }

/** Verdicts and failed checks are what the installed packs say of the answers on `day`: judging them again changes nothing. */
export function demoCastOf(server: string, programs: Programs, day: string): DemoCast {
  const course = (id: string | null, options: Options): DemoCourse => {
    const program = programs.programFor(id, day)
    if (!program) throw new RangeError(`the demo needs the family ${id}`)
    const judgement = judge(program, Object.fromEntries(Object.entries(options).map(([id, one]) => [id, option(one)])))
    return { verdict: judgement.verdict, fired: findingsCounted(judgement), options }
  }
  const family = (
    id: string | null,
    part: number,
    failing: number,
    usual: Options,
    faults: readonly Options[],
  ): DemoFamily => ({
    family: id,
    part,
    failing,
    sound: course(id, usual),
    faults: faults.map(fault => course(id, { ...usual, ...fault })),
  })
  return {
    server,
    packs: programs.packs,
    bought: ['known-shop', 'marketplace', 'no-name', 'second-hand'],
    families: [
      // The one that only grows with the server.
      family('brindlewick-heron', 4, 0.2, heron, [salvaged, secondWrap]),
      // Each sign of the new counterfeit is seen alone now and then: it is the two together that are new.
      family('brindlewick-rook', 3, 0.12, rook, [salvaged, { 'code-place': 'can' }, { legs: 'four' }]),
      family('tarnhollow-slate', 2, 0.15, slate, [salvaged, secondWrap]),
      family(null, 2, 0.3, unlisted, [{ 'wrap-torn': 'torn' }, salvaged]),
    ],
    planted: {
      family: 'brindlewick-rook',
      course: course('brindlewick-rook', { ...rook, 'code-place': 'can', legs: 'four' }),
      share: 0.6,
      bought: 'marketplace',
    },
  }
}
