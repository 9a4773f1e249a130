// Checks a folder of rule packs as the command line and the tests do: names, cases, coverage, and that each program compiles.

import type { FamilyId } from '../engine/answers.ts'
import { openCoverage, runCase, uncovered } from '../engine/cases.ts'
import { compile, type Program } from '../engine/compile.ts'
import type { Pack } from '../engine/pack/pack.ts'
import { missingWords } from '../engine/pack/read-words.ts'
import { undrawable } from './drawable.ts'
import { type FileProblem, loadPacks } from './load-packs.ts'

export type PackCount = {
  readonly pack: string
  readonly questions: number
  readonly rules: number
  readonly families: number
  readonly cases: number
  /** Of three firings per rule (fires, quiet, unknown), how many some case shows. Whole numbers, never rounded. */
  readonly shown: number
  readonly wanted: number
}
/** Texts that a language of a pack lacks, by where they belong: readers get them in the pack's own language. */
export type MissingWords = { readonly pack: string; readonly language: string; readonly texts: readonly string[] }
export type RulesReport = {
  readonly packs: readonly PackCount[]
  readonly problems: readonly FileProblem[]
  readonly missing: readonly MissingWords[]
}

/** Validates every pack below `folder` and runs its cases on the day `today` (YYYY-MM-DD). */
export async function checkRules(folder: string, today: string, base: readonly Pack[] = []): Promise<RulesReport> {
  const loading = await loadPacks(folder, { base })
  const problems: FileProblem[] = [...loading.problems]
  const all = [...base, ...loading.packs.map(loaded => loaded.pack)]
  const packs = loading.packs.map(({ pack, folder: home, cases }): PackCount => {
    const coverage = openCoverage(pack.rules)
    const programs = new Map<FamilyId | undefined, Program>()
    for (const family of [undefined, ...pack.families.map(one => one.id)]) {
      // Cases hold as of the day the pack was written; that it compiles must hold today.
      const then = compile(all, pack.written, family)
      if (then.ok) programs.set(family, then.program)
      const result = compile(all, today, family)
      if (!result.ok) problems.push(...result.problems.map(problem => ({ file: home, problem })))
    }
    problems.push(...undrawable(pack).map(problem => ({ file: home, problem })))
    if (cases.length === 0) problems.push({ file: home, problem: { code: 'no-cases', at: pack.id } })
    for (const { file, index, case: one } of cases) {
      const at = `[${index}] "${one.case}"`
      const program = programs.get(one.family)
      const known = pack.families.map(family => family.id)
      const found = program
        ? runCase(program, one, at, coverage)
        : one.family && !known.includes(one.family)
          ? [{ code: 'unknown-name' as const, at, what: 'family', name: one.family, known }]
          : []
      problems.push(...found.map(problem => ({ file, problem })))
    }
    problems.push(...uncovered(coverage, pack.id).map(problem => ({ file: home, problem })))
    return {
      pack: `${pack.id} ${pack.version}`,
      questions: pack.questions.length,
      rules: pack.rules.length,
      families: pack.families.length,
      cases: cases.length,
      shown: [...coverage.values()].reduce((sum, seen) => sum + seen.size, 0),
      wanted: pack.rules.length * 3,
    }
  })
  const missing = loading.packs.flatMap(({ pack }) =>
    Object.entries(pack.words).flatMap(([language, words]) => {
      const texts = missingWords(pack, words)
      return texts.length > 0 ? [{ pack: pack.id, language, texts }] : []
    }),
  )
  return { packs, problems, missing }
}
