// The names of what is counted, in words: families, failed checks, answers and places, also where their pack is gone.
import type { FamilyId, RuleId } from '../engine/answers.ts'
import type { Program } from '../engine/compile.ts'
import { inLanguage } from '../engine/in-language.ts'
import type { Programs } from '../engine/programs.ts'
import { findFamily } from '../engine/programs.ts'
import { type Item, unknownFamily } from '../trends/outcome.ts'
import { sayWhat } from './describe.ts'
import type { Say } from './say.ts'

export type TrendNames = {
  family(id: FamilyId): string
  /** What the failed check says when it fires, in quotation marks. */
  rule(family: FamilyId, rule: RuleId): string
  item(family: FamilyId, item: Item): string
  place(option: string): string
}

/** Names as the packs installed on `day` (YYYY-MM-DD) give them. */
export function openTrendNames(say: Say, programs: Programs, day: string): TrendNames {
  const programOf = (family: FamilyId): Program | undefined => {
    const program = programs.programFor(family === unknownFamily ? null : family, day)
    return program && inLanguage(program, say.locale)
  }
  const labelOf = (program: Program | undefined, question: string, option: string): string | undefined => {
    const answer = program?.questions.get(question)?.answer
    return answer?.kind === 'options' ? answer.options.find(one => one.id === option)?.label : undefined
  }
  const names: TrendNames = {
    family(id) {
      if (id === unknownFamily) return say('trends.unknown-family')
      const family = findFamily(programs, id)
      return family ? sayWhat(say, family) : say('trends.gone-family', { id })
    },
    rule(family, id) {
      const rule = programOf(family)?.rules.find(one => one.id === id)
      return rule ? say('quoted', { text: rule.says }) : say('trends.gone-rule', { id })
    },
    item(family, item) {
      const [kind, rest = ''] = [item.slice(0, item.indexOf(':')), item.slice(item.indexOf(':') + 1)]
      if (kind === 'rule') return names.rule(family, rest)
      if (kind === 'bought') return say('trends.from', { place: names.place(rest) })
      const [question = '', option = ''] = rest.split('=')
      const program = programOf(family)
      const label = labelOf(program, question, option)
      if (label === undefined) return say('trends.gone-answer', { question, option })
      return say('trends.answer', {
        question: program?.questions.get(question)?.ask ?? question,
        option: say('quoted', { text: label }),
      })
    },
    place: option =>
      option === 'not-said'
        ? say('trends.place-not-said')
        : (labelOf(programOf(unknownFamily), 'where-bought', option) ?? option),
  }
  return names
}
