// Opens a case for the commands that judge or draw it: the file or standard input, its program, its answers.
import { readFile } from 'node:fs/promises'
import { text as readStream } from 'node:stream/consumers'
import type { Answers, FamilyId } from '../../engine/answers.ts'
import type { Program } from '../../engine/compile.ts'
import type { Programs } from '../../engine/programs.ts'
import { sayProblem } from '../../words/problem-words.ts'
import type { Say } from '../../words/say.ts'
import { parseCase, type Read, readWrittenAnswers } from './written-case.ts'

export type OpenedCase = { readonly program: Program; readonly answers: Answers; readonly family: FamilyId | null }

/** `file` may be - for standard input; `day` (YYYY-MM-DD) decides which figures still count. */
export async function openCase(file: string, programs: Programs, day: string, say: Say): Promise<Read<OpenedCase>> {
  const read = parseCase(file === '-' ? await readStream(process.stdin) : await readFile(file, 'utf8'), say)
  if (!read.ok) return read
  const { family = null } = read.value
  const compiled = programs.compileFor(family, day)
  if (!compiled.ok) return { ok: false, sentences: compiled.problems.map(problem => sayProblem(say, problem)) }
  const answers = readWrittenAnswers(compiled.program, read.value, say)
  return answers.ok ? { ok: true, value: { program: compiled.program, answers: answers.value, family } } : answers
}
