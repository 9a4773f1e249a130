// What the command line says about how a log is written, and how it asks what the log does not say.
import { choicesOf } from '../../discord/logs/show-log-question.ts'
import type { CurrentUnit, LogAnswers, LogQuestion, Role, TimeUnit, VoltageUnit } from '../../readings/log/answers.ts'
import type { Say } from '../../words/say.ts'

export type FileAnswers = {
  readonly column?: readonly string[]
  readonly unit?: readonly string[]
  readonly clock?: string
  readonly asTheyStand?: true
}

export type AnswersGiven =
  | { readonly ok: true; readonly answers: LogAnswers }
  | { readonly ok: false; readonly sentence: string }

const roles = ['time', 'voltage', 'current', 'temperature', 'mode'] as const satisfies readonly Role[]
const units = {
  time: ['ms', 's', 'min', 'h', 'd'] satisfies TimeUnit[],
  voltage: ['V', 'mV'] satisfies VoltageUnit[],
  current: ['A', 'mA', '10mA', '100mA'] satisfies CurrentUnit[],
}

export function answersFrom({ column = [], unit = [], clock, asTheyStand }: FileAnswers): AnswersGiven {
  const columns: Record<string, number> = {}
  for (const given of column) {
    const [, role, number] = /^([a-z]+)=([1-9]\d{0,3})$/.exec(given) ?? []
    if (!role || !roles.includes(role as Role))
      return wrong(
        `--column: “${given}” is not understood. Write one of ${roles.join(', ')} and a number, such as time=1.`,
      )
    columns[role] = Number(number) - 1
  }
  const known: Record<string, string> = {}
  for (const given of unit) {
    const [role = '', name = ''] = given.split('=')
    const possible: readonly string[] = role in units ? units[role as keyof typeof units] : []
    if (!possible.includes(name)) {
      const all = Object.entries(units).map(([key, names]) => `${key}=${names.join('|')}`)
      return wrong(`--unit: “${given}” is not understood. Write ${all.join(', ')}.`)
    }
    known[role] = name
  }
  if (clock !== undefined && clock !== 'h:mm' && clock !== 'm:ss')
    return wrong(`--clock: “${clock}” is not understood. Write h:mm or m:ss.`)
  return {
    ok: true,
    answers: {
      ...(column.length > 0 && { columns }),
      ...(unit.length > 0 && { units: known }),
      ...(clock !== undefined && { clock }),
      ...(asTheyStand && { columnsAreRight: true }),
    },
  }
}

const wrong = (sentence: string): AnswersGiven => ({ ok: false, sentence })

/** The question with the first rows, its possible answers, and the option that gives one. */
export function sayQuestion(say: Say, question: LogQuestion): string[] {
  return [
    say('log.asks'),
    ...question.rows.map(row => `  ${row.join(' | ')}`),
    ...choicesOf(say, question).map(({ label, means }) => `  ${optionFor(means)}: ${label}`),
  ]
}

function optionFor({ columns = {}, units: named = {}, clock, columnsAreRight }: LogAnswers): string {
  return [
    ...Object.entries(columns).map(([role, column]) => `--column ${role}=${column + 1}`),
    ...Object.entries(named).map(([role, unit]) => `--unit ${role}=${unit}`),
    ...(clock === undefined ? [] : [`--clock ${clock}`]),
    ...(columnsAreRight ? ['--as-they-stand'] : []),
  ].join(' ')
}
