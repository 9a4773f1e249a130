// Reads a JSON file (or standard input) into a shape; what is wrong becomes sentences.
import { readFile, stat } from 'node:fs/promises'
import { text as readStream } from 'node:stream/consumers'
import type { z } from 'zod'
import { shapeProblems } from '../../engine/pack/read-pack.ts'
import { sayProblem } from '../../words/problem-words.ts'
import type { Say } from '../../words/say.ts'
import type { Read } from './written-case.ts'

const largest = 100_000_000

export async function readJson<T>(file: string, shape: z.ZodType<T>, say: Say): Promise<Read<T>> {
  if (file !== '-' && (await stat(file)).size > largest)
    return { ok: false, sentences: [say('trend-input.too-large', { file, most: largest })] }
  let data: unknown
  try {
    data = JSON.parse(file === '-' ? await readStream(process.stdin) : await readFile(file, 'utf8'))
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error
    return { ok: false, sentences: [say('trend-input.json', { file, says: error.message.split('\n')[0] ?? '' })] }
  }
  const read = shape.safeParse(data)
  if (read.success) return { ok: true, value: read.data }
  return { ok: false, sentences: shapeProblems(read.error).map(problem => sayProblem(say, problem)) }
}
