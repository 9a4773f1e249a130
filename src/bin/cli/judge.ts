// cellwary judge FILE: reads a case and prints the verdict with its reasons, for people or as JSON.
import { Command } from 'commander'
import type { Answers } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import { dayOf } from '../../engine/day-of.ts'
import { explain } from '../../engine/explain.ts'
import { answersRead, judge } from '../../engine/judge.ts'
import { findFamily, openPrograms } from '../../engine/programs.ts'
import { installedPacks } from '../../packs/installed-packs.ts'
import { nameWhat, sayChange, sayFinding } from '../../words/describe.ts'
import { type Say, sayIn } from '../../words/say.ts'
import { fail } from './fail.ts'
import { openCase } from './open-case.ts'

export function judgeCommand(): Command {
  return new Command('judge')
    .description('Judge a case: a YAML or JSON file with a family (if known) and answers; - reads standard input.')
    .argument('<file>', 'the case, or -')
    .option('--json', 'print one JSON object')
    .option('--rules <dir>', 'more rule packs, beside the shipped ones')
    .action(async (file: string, options: { json?: true; rules?: string }) => {
      const say = sayIn('en')
      const now = Date.now()
      const programs = openPrograms((await installedPacks(options.rules)).packs)
      const read = await openCase(file, programs, dayOf(now), say)
      if (!read.ok) return fail(read.sentences)
      const { program, answers, family } = read.value
      const report = reportOf(program, answers, say)
      console.log(
        options.json
          ? JSON.stringify(report, null, 2)
          : wordsOf(say, program, report, findFamily(programs, family)?.id),
      )
    })
}

/** The verdict as data; the names of its keys are part of the command line's contract. */
export function reportOf(program: Program, answers: Answers, say: Say) {
  const judgement = judge(program, answers)
  const explanation = explain(program, answers, judgement)
  const [next] = program.outlook({ ...program.given, ...answers }).prospects
  const packs = program.packs
  return {
    verdict: judgement.verdict,
    family: program.family?.id ?? null,
    findings: judgement.findings.map(finding => ({
      rule: finding.rule.id,
      kind: finding.rule.kind,
      ...('strength' in finding.rule && { strength: finding.rule.strength }),
      ...('means' in finding.rule && { means: finding.rule.means }),
      ...('act' in finding.rule && { act: finding.rule.act }),
      carries: finding.carries,
      outOfDate: finding.outOfDate,
      reason: finding.rule.says,
      source: finding.rule.source.map(id => ({ id, ...program.sources[finding.rule.pack]?.[id] })),
      answers: answersRead(program, { ...program.given, ...answers }, finding),
      sentence: sayFinding(say, program, finding),
    })),
    enough: explanation.enough,
    unchecked: explanation.unchecked,
    changes: explanation.changes(),
    next: next ? { question: next.question, ask: program.questions.get(next.question)?.ask ?? '' } : null,
    pack: packs.at(-1) ?? null,
    packs,
    caution: say('caution.full'),
  }
}
type Report = ReturnType<typeof reportOf>

function wordsOf(say: Say, program: Program, report: Report, family: string | undefined): string {
  const ask = (id: string) => program.questions.get(id)?.ask ?? id
  const part = (title: string, lines: readonly string[]) =>
    lines.length > 0 ? ['', title, ...lines.map(line => `  - ${line}`)] : []
  const changes = report.changes.slice(0, 6).map(change => sayChange(say, program, change))
  return [
    say(`verdict.${report.verdict}`),
    say('check.title', { what: nameWhat(say, family === undefined ? undefined : program.family) }),
    say(`verdict.${report.verdict}.means`),
    ...part(
      say('part.why'),
      report.findings.filter(one => one.carries).map(one => one.sentence),
    ),
    ...part(
      say('part.also'),
      report.findings.filter(one => !one.carries && one.kind !== 'no-bearing').map(one => one.sentence),
    ),
    ...part(
      say('part.no-bearing'),
      report.findings.filter(one => one.kind === 'no-bearing').map(one => one.sentence),
    ),
    ...part(say('part.enough'), report.enough.map(ask)),
    ...part(
      say('part.unchecked'),
      report.unchecked.map(one => say(`unchecked.${one.why}`, { question: ask(one.question) })),
    ),
    ...part(say('part.changes'), changes),
    ...part(say('part.asked-next'), report.next ? [report.next.ask] : []),
    '',
    report.caution,
    say('part.judged', { packs: report.packs.map(one => `${one.id} ${one.version} (${one.digest})`).join(', ') }),
  ].join('\n')
}
