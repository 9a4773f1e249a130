// Reads the shipped constructions from disk: YAML in, checked constructions out, every problem named with its file.
import type { PackProblem } from '../engine/pack/problems.ts'
import { shapeProblems } from '../engine/pack/read-pack.ts'
import { type Construction, constructionSchema } from '../families/facts/facts-schema.ts'
import { readYaml } from './read-yaml.ts'
import { shippedConstructions } from './shipped-rules.ts'
import { yamlFiles } from './yaml-files.ts'

type Found = { readonly file: string; readonly problem: PackProblem }
export type LoadedConstructions = {
  readonly constructions: readonly Construction[]
  readonly problems: readonly Found[]
}

/** Every construction of a folder by name; one with a problem is left out. */
export async function loadConstructions(folder = shippedConstructions): Promise<LoadedConstructions> {
  const constructions: Construction[] = []
  const problems: Found[] = []
  for (const { file, data, problems: found } of await Promise.all((await yamlFiles(folder)).map(readYaml))) {
    problems.push(...found.map(problem => ({ file, problem })))
    if (found.length > 0) continue
    const read = constructionSchema.safeParse(data)
    if (read.success) constructions.push(read.data)
    else problems.push(...shapeProblems(read.error).map(problem => ({ file, problem })))
  }
  return { constructions, problems }
}
