// Every drawing of the shipped packs as people see it: questions, families, verdict cards, in a language.

import type { Answers } from '../../src/engine/answers.ts'
import type { Program } from '../../src/engine/compile.ts'
import { inLanguage } from '../../src/engine/in-language.ts'
import { judge } from '../../src/engine/judge.ts'
import { openPrograms } from '../../src/engine/programs.ts'
import { installedPacks } from '../../src/packs/installed-packs.ts'
import { drawVerdictAlone } from '../../src/pictures/from-checks/draw-verdict.ts'
import { drawFamily } from '../../src/pictures/from-packs/draw-family.ts'
import { drawQuestion } from '../../src/pictures/from-packs/draw-question.ts'
import { sayIn } from '../../src/words/say.ts'
import type { SheetEntry } from './contact-sheet.ts'

const programs = openPrograms((await installedPacks(undefined)).packs)
const all = [null, ...programs.families.map(family => family.id)].map(
  family => programs.programFor(family, '2026-11-27')!,
)

const badness = (program: Program, answers: Answers): number =>
  judge(program, answers).findings.filter(one => one.carries).length

/** To each question the answer that finds most on its own, so that the card is as long as a card gets. */
const worst = (program: Program): Answers =>
  Object.fromEntries(
    [...program.questions.keys()].flatMap(id => {
      const tries = (program.states.get(id) ?? []).flatMap(state => state.answers.slice(0, 1))
      const [bad] = tries
        .map(answer => ({ answer, bad: badness(program, { [id]: answer }) }))
        .sort((a, b) => b.bad - a.bad)
      return bad && bad.bad > 0 ? [[id, bad.answer] as const] : []
    }),
  )

/** Each question once, and what a family adds. */
export function shipped(locale: string): SheetEntry[] {
  const say = sayIn(locale)
  const drawn = new Map<string, SheetEntry['drawing'] | undefined>()
  for (const program of all.map(one => inLanguage(one, locale))) {
    const family = program.family?.id ?? 'no family'
    for (const question of program.questions.values())
      if (!drawn.has(question.id)) drawn.set(question.id, drawQuestion(question))
    if (program.family) drawn.set(family, drawFamily(say, program.family))
    const answers = worst(program)
    drawn.set(`verdict of ${family}`, drawVerdictAlone(say, program, judge(program, answers), answers))
  }
  return [...drawn].flatMap(([name, drawing]) => (drawing ? [{ name, drawing }] : []))
}
