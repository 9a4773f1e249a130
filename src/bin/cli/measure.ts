// cellwary measure FILE: what a discharge log shows, with every figure's uncertainty, for people or as JSON.
import { createReadStream } from 'node:fs'
import { Command, Option } from 'commander'
import { readTest } from '../../discord/logs/log-request.ts'
import { drawRun } from '../../pictures/from-checks/draw-run.ts'
import { evidenceOf } from '../../readings/discharge/evidence.ts'
import type { RunReading } from '../../readings/discharge/measure-run.ts'
import type { LogQuestion } from '../../readings/log/answers.ts'
import { type LogOptions, type LogReading, openLog } from '../../readings/open-log.ts'
import { type DischargeClaim, weighDischarge } from '../../readings/weigh-discharge.ts'
import { sayDischargeFinding, sayFigures, sayLogRefusal, sayTrap } from '../../words/log-words.ts'
import { unmarked } from '../../words/plain.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { answersFrom, type FileAnswers, sayQuestion } from './log-answers.ts'
import { isPictureFile, writeDrawing } from './write-drawing.ts'

type Options = FileAnswers & {
  readonly json?: true
  readonly picture?: string
  readonly locale: string
  readonly claimedCapacity?: string
  readonly current?: string
  readonly cutoff?: string
  readonly room?: string
  readonly instrument: string
  readonly wires: string
  readonly chemistry: string
}

export function measureCommand(): Command {
  const choice = (flags: string, about: string, choices: string[]) =>
    new Option(flags, about).choices(choices).default(choices[0])
  return new Command('measure')
    .description('Read a discharge log (CSV or TSV) and say what it shows; every figure with its uncertainty.')
    .argument('<file>', 'the log')
    .option('--json', 'print one JSON object')
    .option('--picture <file>', 'draw the longest discharge as .png or .svg')
    .option('--claimed-capacity <capacity>', 'capacity on the label, such as 3000mAh')
    .option('--current <current>', 'continuous current claimed, such as 20A')
    .option('--cutoff <voltage>', 'the cut-off of the claim, such as 2.5V')
    .option('--room <temperature>', 'room temperature, such as 21°C')
    .addOption(choice('--instrument <kind>', 'what took the log', ['hobby-load', 'lab-load']))
    .addOption(choice('--wires <kind>', 'how the cell was connected', ['two-wire', 'four-wire']))
    .addOption(choice('--chemistry <kind>', 'which kind of cell it is', ['usual', 'iron-phosphate']))
    .option('--column <role=number...>', 'which column is time, voltage, current or temperature, counted from 1')
    .option('--unit <role=unit...>', 'the unit of time, voltage or current')
    .option('--clock <kind>', 'what 3:20 means: h:mm or m:ss')
    .option('--as-they-stand', 'the columns are right, however odd they look')
    .option('--locale <locale>', 'whose numbers the options are written in', 'en')
    .action(measure)
}

async function measure(file: string, options: Options): Promise<void> {
  const say = sayIn('en')
  const { picture } = options
  if (picture !== undefined && !isPictureFile(picture, '--picture')) return
  const given = answersFrom(options)
  if (!given.ok) return end([given.sentence], 2)
  const { claimedCapacity: label = null, current = null, cutoff = null, room = null } = options
  const read = readTest(say, { ...options, label, current, cutoff, room }, options.locale)
  if (!read.ok) return end(read.sentences, 1)
  const { claim } = read.test
  const reading = await readFrom(file, { ...read.test.options, answers: given.answers })
  if (options.json) console.log(JSON.stringify(reportOf(say, reading, claim), null, 2))
  if ('question' in reading) return end(sayQuestion(say, reading.question), 1)
  if (!reading.ok) return end([sayLogRefusal(say, reading.refusal)], 1)
  if (!options.json) console.log(unmarked(wordsOf(say, reading, claim)))
  if (picture !== undefined)
    await writeDrawing(picture, drawRun(say, reading.runs[reading.largest] as RunReading, claim), say)
}

async function readFrom(file: string, options: LogOptions): Promise<LogReading> {
  const log = openLog(options)
  for await (const chunk of createReadStream(file)) if (log.push(chunk as Buffer) === 'enough') break
  return log.end()
}

function end(sentences: readonly string[], code: number): void {
  for (const sentence of sentences) console.error(unmarked(sentence))
  process.exitCode = code
}

/** The reading as data; the names of its keys are part of the command line's contract. */
function reportOf(say: Say, reading: LogReading, claim: DischargeClaim) {
  const caution = say('caution.full')
  if ('question' in reading) return { ok: false, question: reading.question satisfies LogQuestion, caution }
  if (!reading.ok) return { ...reading, sentence: sayLogRefusal(say, reading.refusal), caution }
  const runs = reading.runs.map(run => ({
    ...run,
    traps: run.traps.map(trap => ({ ...trap, sentence: sayTrap(say, trap) })),
    findings: weighDischarge(evidenceOf(run), claim).map(one => ({ ...one, sentence: sayDischargeFinding(say, one) })),
  }))
  return { ...reading, runs, caution }
}

function wordsOf(say: Say, reading: Extract<LogReading, { ok: true }>, claim: DischargeClaim): string {
  const part = (title: string, lines: readonly string[]) =>
    lines.length > 0 ? ['', title, ...lines.map(line => `  - ${line}`)] : []
  const blocks = reading.runs.flatMap((run, i) => {
    const findings = weighDischarge(evidenceOf(run), claim).map(one => sayDischargeFinding(say, one))
    return [
      ...(reading.runs.length > 1 ? ['', `${i + 1}/${reading.runs.length}`] : []),
      ...part(say('log.findings'), findings),
      ...part(say('log.figures'), sayFigures(say, run)),
      ...part(
        say('log.traps'),
        run.traps.map(trap => sayTrap(say, trap)),
      ),
    ]
  })
  return [say('log.title'), ...blocks, '', say('log.caution'), '', say('caution.full')].join('\n')
}
