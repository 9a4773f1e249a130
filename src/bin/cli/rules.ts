// cellwary rules: checks packs and answers with their cases and coverage (an empty run fails), begins, lists, compares and tries them.
import { Command } from 'commander'
import { type Entry, languages } from '../../answers/entry.ts'
import { dayOf } from '../../engine/day-of.ts'
import { ageingSoon } from '../../packs/ageing.ts'
import { checkRules } from '../../packs/check-rules.ts'
import { answersIn, loadAnswers } from '../../packs/load-answers.ts'
import { loadPacks } from '../../packs/load-packs.ts'
import { shippedRules } from '../../packs/shipped-rules.ts'
import { sayProblem } from '../../words/problem-words.ts'
import { sayIn } from '../../words/say.ts'
import { diffCommand } from './rules-diff.ts'
import { listCommand } from './rules-list.ts'
import { newCommand } from './rules-new.ts'
import { tryCommand } from './rules-try.ts'

export function rulesCommand(): Command {
  const check = new Command('check')
    .description('Validate rule packs, run their cases, and check the answers beside them.')
    .argument('<dir>', 'a folder with a pack.yaml, or a folder of such folders')
    .option('--beside <dir>', 'packs that the checked ones may use', shippedRules)
    .option('--json', 'problems and counts as JSON')
    .action(async (dir: string, options: { beside: string; json?: boolean }) => {
      const say = sayIn('en')
      const beside = (await loadPacks(options.beside)).packs.map(loaded => loaded.pack)
      const loaded = (await loadPacks(dir)).packs.map(one => one.pack)
      const here = loaded.map(pack => pack.id)
      const today = dayOf(Date.now())
      const report = await checkRules(
        dir,
        today,
        beside.filter(pack => !here.includes(pack.id) && pack.families.length === 0),
      )
      const shippedAnswers = (await loadAnswers(answersIn(options.beside))).entries
      const answers = await loadAnswers(answersIn(dir), shippedAnswers)
      const problems = [...report.problems, ...answers.problems]
      if (options.json) {
        const told = problems.map(({ file, problem }) => ({ file, problem, says: sayProblem(say, problem) }))
        console.log(JSON.stringify({ packs: report.packs, missing: report.missing, problems: told }, null, 2))
        const nothing = report.packs.length === 0 && answers.entries.length === 0
        process.exitCode = nothing || problems.length > 0 ? 1 : 0
        return
      }
      for (const { file, problem } of problems) console.error(`${file}: ${sayProblem(say, problem)}`)
      for (const one of report.packs)
        console.log(
          `${one.pack}: ${one.questions} questions, ${one.rules} rules, ${one.families} families, ${one.cases} cases, ` +
            `${one.shown} of ${one.wanted} firings shown`,
        )
      for (const { pack, language, texts } of report.missing)
        console.log(
          `${pack}: ${texts.length} of its texts are missing in words/${language}.yaml and are shown as the pack has them: ` +
            `${texts.slice(0, 5).join(', ')}${texts.length > 5 ? ', …' : ''}`,
        )
      for (const { pack, day, rules } of ageingSoon(loaded, today))
        console.log(
          `${pack}: after ${day} ${rules.length} of its signs no longer count; look up their figures anew: ` +
            `${rules.slice(0, 5).join(', ')}${rules.length > 5 ? ', …' : ''}`,
        )
      if (answers.entries.length > 0) console.log(`answers: ${countAnswers(answers.entries)}`)
      const empty = report.packs.length === 0 && answers.entries.length === 0 && problems.length === 0
      if (empty) console.error(`${dir}: no rule pack here. Name a folder that holds a pack.yaml.`)
      process.exitCode = empty || problems.length > 0 ? 1 : 0
    })
  return new Command('rules')
    .description('Work on rule packs.')
    .addCommand(check)
    .addCommand(newCommand())
    .addCommand(listCommand())
    .addCommand(diffCommand())
    .addCommand(tryCommand())
}

/** How many entries there are, and how many of them in each language. */
const countAnswers = (entries: readonly Entry[]): string =>
  [
    `${entries.length} entries`,
    ...languages.map(language => `${entries.filter(one => one.texts[language]).length} ${language}`),
  ].join(', ')
