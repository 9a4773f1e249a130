// Says what a log shows: figures with their uncertainty, traps, and what it tells about a claim.

import type { FileRefusal } from '../readers/log/log-reader.ts'
import type { RunReading } from '../readings/discharge/measure-run.ts'
import type { Trap } from '../readings/discharge/traps.ts'
import type { Figure } from '../readings/figure.ts'
import type { LogRefusal } from '../readings/log/answers.ts'
import type { DischargeFinding } from '../readings/weigh-discharge.ts'
import type { Key } from './catalogue.ts'
import { listIn, numberIn } from './formatters.ts'
import { plain } from './plain.ts'
import type { Say, Values } from './say.ts'

/** A figure with its expanded uncertainty at two significant digits, and the value to the same place. */
export function sayFigure(say: Say, figure: Figure): string {
  const { value, interval, unit, u, k } = figure
  const expanded = k * u
  const places = expanded > 0 ? Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(expanded)))) : 2
  const number = numberIn(say.locale, { minimumFractionDigits: places, maximumFractionDigits: places })
  const said = { u: number.format(expanded), unit }
  if (interval === null) return say('figure.plain', { ...said, value: number.format(value ?? 0) })
  if (interval.to === null) return say('figure.at-least', { ...said, value: number.format(interval.from) })
  return say('figure.between', { ...said, from: number.format(interval.from), to: number.format(interval.to) })
}

/** The figures of a run that it has, one line each. */
export function sayFigures(say: Say, run: RunReading): string[] {
  const names = [
    'capacity',
    'energy',
    'meanVoltage',
    'meanCurrent',
    'duration',
    'startRestVoltage',
    'endVoltage',
    'resistance',
    'settledVoltage',
    'startTemperature',
    'temperatureRise',
  ] as const
  return names.flatMap(name => {
    const figure = run.figures[name]
    if (figure === null) return []
    const says = say(`figure.${name}`, { figure: sayFigure(say, figure) })
    return [name === 'capacity' ? withCutoff(say, run, says) : says]
  })
}

function withCutoff(say: Say, { cutoff, figures }: RunReading, says: string): string {
  if (cutoff.cutoff_V !== null) return say('figure.to-cutoff', { says, cutoff: cutoff.cutoff_V })
  return say('figure.no-cutoff', { says, end: round(figures.endVoltage.value ?? 0, 2) })
}

export function sayTrap(say: Say, trap: Trap): string {
  const values: Record<string, string | number> = {}
  for (const [key, value] of Object.entries(trap))
    if (typeof value === 'number')
      values[key] =
        key.endsWith('_s') || key === 'seconds' ? span(say, value) : key === 'factor' ? value : round(value, 2)
    else if (typeof value === 'boolean') values[key] = value ? 'yes' : 'no'
  if (trap.code === 'two-wire-resistance')
    [values['from'], values['to']] = trap.leads_mΩ.map(Math.round) as [number, number]
  return say(`trap.${trap.code}`, values)
}

export function sayDischargeFinding(say: Say, finding: DischargeFinding): string {
  const values: Record<string, string | number> = {}
  for (const [key, value] of Object.entries(finding)) if (typeof value === 'number') values[key] = round(value, 2)
  if ('share' in finding) values['share'] = finding.share === null ? '' : percent(say, finding.share)
  if ('because' in finding) {
    const list = listIn(say.locale, 'conjunction')
    values['because'] = list.format(finding.because.map(one => sayObstacle(say, one)))
  }
  return say(`told.${finding.code}`, values)
}

type Obstacle = Extract<DischargeFinding, { because: unknown }>['because'][number]
function sayObstacle(say: Say, obstacle: Obstacle): string {
  const values = Object.entries(obstacle).filter(([, value]) => typeof value === 'number')
  return say(
    `because.${obstacle.code}`,
    Object.fromEntries(values.map(([key, value]) => [key, round(value as number, 2)])),
  )
}

/** Why a log cannot be read, in one sentence that says what to change; text of the file is shown as text. */
export function sayLogRefusal(say: Say, refusal: LogRefusal | FileRefusal): string {
  const values: Record<string, string | number> = {}
  for (const [key, value] of Object.entries(refusal))
    if (typeof value === 'number') values[key] = round(value, 2)
    else if (typeof value === 'string') values[key] = key === 'looksLike' ? value : plain(value)
  if (refusal.code === 'mixed-decimal-marks')
    [values['first'], values['second']] = refusal.examples.map(plain) as [string, string]
  if (refusal.code === 'broken-rows') {
    values['example'] = refusal.first ? 'one' : 'none'
    if (refusal.first) {
      const { row, label, text } = refusal.first
      Object.assign(values, { row, label: plain(label), text: plain(text) })
    }
  }
  return say(`log-refusal.${refusal.code}` satisfies Key, values as Values)
}

const round = (value: number, places: number): number => Math.round(value * 10 ** places) / 10 ** places

const percent = (say: Say, share: number): string =>
  numberIn(say.locale, { style: 'percent', maximumFractionDigits: 0 }).format(share)

/** Seconds as a person says them: to the largest two units. */
function span(say: Say, seconds: number): string {
  const whole = Math.round(seconds)
  const parts = [
    { unit: 'hour', count: Math.floor(whole / 3600) },
    { unit: 'minute', count: Math.floor((whole % 3600) / 60) },
    { unit: 'second', count: whole % 60 },
  ]
    .filter(part => part.count > 0)
    .slice(0, 2)
  const said = (parts.length > 0 ? parts : [{ unit: 'second', count: whole }]).map(({ unit, count }) =>
    numberIn(say.locale, { style: 'unit', unit, unitDisplay: 'short' }).format(count),
  )
  return listIn(say.locale, 'unit', 'short').format(said)
}
