// Shows what a discharge log amounts to: the curve, the figures with their uncertainty, the traps and what it tells.
import { type APIButtonComponent, ButtonStyle } from 'discord.js'
import type { CarriedFacts } from '../../check/known/carried-facts.ts'
import { factsOfLog } from '../../check/known/facts-of-log.ts'
import { startWithFacts } from '../../custom-ids/facts-codec.ts'
import { logLabelIds } from '../../custom-ids/log-label-id.ts'
import { drawRun } from '../../pictures/from-checks/draw-run.ts'
import { evidenceOf } from '../../readings/discharge/evidence.ts'
import type { RunReading } from '../../readings/discharge/measure-run.ts'
import type { FoundOut, LogReading } from '../../readings/open-log.ts'
import { type DischargeFinding, weighDischarge } from '../../readings/weigh-discharge.ts'
import type { Pictures } from '../../services/pictures/pictures.ts'
import { nameWhat } from '../../words/describe.ts'
import { sayDischargeFinding, sayFigure, sayFigures, sayTrap } from '../../words/log-words.ts'
import { plain } from '../../words/plain.ts'
import type { Say } from '../../words/say.ts'
import type { OpenCheck } from '../check/claims/show-claim.ts'
import { button } from '../check/show/check-buttons.ts'
import { fitLists } from '../message/fit-text.ts'
import { gallery, message, pressButton, rows, type ShownMessage, small, text, textBudget } from '../message/parts.ts'
import type { LogRequest } from './log-request.ts'

export type ReadLog = Extract<LogReading, { ok: true }>

export async function showLog(
  say: Say,
  read: ReadLog,
  { claim }: LogRequest,
  open: OpenCheck | undefined,
  pictures: Pictures,
  /** Under which it is kept, where a label can still be given. */
  unlabelled?: string,
): Promise<ShownMessage> {
  const run = read.runs[read.largest] as RunReading
  const findings = weighDischarge(evidenceOf(run), claim)
  const facts = factsOfLog(run, findings, claim.label_mAh)
  const picture = await pictures.ofDrawing('discharge.png', drawRun(say, run, claim), say)
  const rest = (count: number) => say('list.rest', { count })
  const told = findings.length > 0 ? findings.map(one => sayDischargeFinding(say, one)) : [say('log.no-claim')]
  const foot = small([sayFound(say, read.found), say('caution.line')].join('\n'))
  const head = [`### ${say('log.title')}`, `> ${say('log.caution')}`].join('\n')
  const isDanger = (trap: (typeof run.traps)[number]) => trap.code === 'too-hot'
  const dangers = run.traps.filter(isDanger)
  const lists = [
    { title: say('log.danger'), items: dangers.map(trap => sayTrap(say, trap)), rest },
    { title: say('log.findings'), items: told, rest },
    { title: say('log.figures'), items: sayFigures(say, run), rest },
    { title: say('log.traps'), items: run.traps.filter(trap => !isDanger(trap)).map(trap => sayTrap(say, trap)), rest },
    {
      title: sayRuns(say, read),
      items: read.runs.length > 1 ? read.runs.map((one, i) => sayRun(say, one, i)) : [],
      rest,
    },
  ]
  return message(
    [
      text(head),
      ...gallery(picture ? [picture] : []),
      ...fitLists(lists, head.length + foot.content.length, textBudget).map(one => text(one)),
      ...rows(unlabelled === undefined ? [] : [labelButton(say, unlabelled)], 1),
      // Nobody is sent to look closer at a cell that is to be left where it is.
      ...(dangers.length > 0 ? [] : rows(buttonsOf(say, facts, findings, open), 1)),
      foot,
    ],
    picture ? [picture] : [],
  )
}

const sayRuns = (say: Say, { runs, largest }: ReadLog): string =>
  say('log.runs', { count: runs.length, number: largest + 1 })

const sayRun = (say: Say, run: RunReading, i: number): string =>
  say('log.run', { number: i + 1, capacity: sayFigure(say, run.figures.capacity) })

function sayFound(say: Say, found: FoundOut): string {
  const columns = Object.values(found.columns).map(({ column, label }) =>
    label === ''
      ? say('log.column', { number: column + 1 })
      : say('log.column.named', { number: column + 1, label: plain(label) }),
  )
  return say('log.found', {
    rows: found.rows,
    broken: found.brokenRows,
    columns: columns.join('; '),
    time: found.units.time,
    voltage: found.units.voltage,
    current: found.units.current,
  })
}

const labelButton = (say: Say, draft: string): APIButtonComponent =>
  pressButton(logLabelIds.write({ is: 'label', draft }), say('log.give-label'), ButtonStyle.Primary)

/** Only a result that can be put into a check has a button. */
function buttonsOf(
  say: Say,
  facts: CarriedFacts,
  findings: readonly DischargeFinding[],
  open: OpenCheck | undefined,
): APIButtonComponent[] {
  if (findings.length === 0 || !('measured-capacity' in facts)) return []
  const begin = pressButton(startWithFacts(facts), say('log.start'), ButtonStyle.Primary)
  if (!open) return [begin]
  const what = nameWhat(say, open.program.family)
  return [begin, button(open.check, { is: 'know', facts }, say('log.add', { what }))]
}
