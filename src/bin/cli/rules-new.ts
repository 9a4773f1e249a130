// cellwary rules new: a folder with a small pack that passes the checker, to go on from.
import { mkdir, readdir, writeFile } from 'node:fs/promises'
import { basename, join } from 'node:path'
import { Command } from 'commander'

const idShape = /^[a-z0-9]+(-[a-z0-9]+)*$/

export function newCommand(): Command {
  return new Command('new')
    .description('Begin a pack of your own: a folder with a pack and its cases that pass the checker.')
    .argument('<dir>', 'a folder that is not there yet; its name becomes the id of the pack')
    .option('--maker <name>', 'whose cells it is about', 'A maker')
    .option('--family <name>', 'the model', 'A model')
    .option('--json', 'print one JSON object')
    .action(async (dir: string, { maker, family, json }: { maker: string; family: string; json?: true }) => {
      const id = basename(dir)
      const there = await readdir(dir).catch(() => [])
      if (!idShape.test(id) || id.length > 30 || there.length > 0) {
        console.error(
          there.length > 0
            ? `${dir}: there is something in it already. Name a folder that is not there yet.`
            : `${dir}: name it in lower-case words joined by hyphens, such as my-cells (at most 30 characters).`,
        )
        process.exitCode = 2
        return
      }
      await mkdir(join(dir, 'cases'), { recursive: true })
      await writeFile(join(dir, 'pack.yaml'), packOf(id, maker, family))
      await writeFile(join(dir, 'cases', 'first.yaml'), casesOf(id))
      if (json) return console.log(JSON.stringify({ folder: dir, pack: id }, null, 2))
      console.log(`${dir}: a pack with one rule and its three cases. Check it: cellwary rules check ${dir}`)
      console.log('Which questions rules can read: cellwary rules list')
    })
}

const packOf = (id: string, maker: string, family: string): string => `# A pack of rules about one maker's cells.
pack: ${id}
version: 1.0.0
written: ${new Date().toISOString().slice(0, 10)}
title: ${JSON.stringify(`${maker}: ${family}`)}
about: >-
  Say here what these rules rest on, and what they do not cover.
uses: [any-cell]
sources:
  counted: { kind: common-practice, text: 'Counted on cells of ours; say how many, from where and when.' }

rules:
  # A must: contradicted, it cannot be that cell. A sign: weak, moderate or strong. no-bearing: said, never counted.
  - id: ${id}-legs
    kind: must
    means: another-cell
    when: { legs: [four, five] }
    says: The positive contact stands on three legs.
    source: [counted]

families:
  - id: ${id}-first
    name: ${JSON.stringify(family)}
    maker: ${JSON.stringify(maker)}
    given: { format: '18650' }
    # What must have been answered and met before "nothing found" can be said.
    enough: [${id}-legs, torn-wrap, torn-ring, missing-ring, weld-scars, second-wrap-below]
    show: { format: '18650', legs: 3 }
`

const casesOf = (
  id: string,
): string => `# Each rule has a case in which it fires, one in which it stays quiet, and one that leaves it unknown.
- case: four legs rule it out
  family: ${id}-first
  answers: { legs: four }
  rules: { ${id}-legs: fires }
  verdict: ruled-out
- case: three legs are as it is made
  family: ${id}-first
  answers: { legs: three }
  rules: { ${id}-legs: quiet }
- case: who cannot tell has nothing held against the cell
  family: ${id}-first
  answers: { legs: cant-tell }
  rules: { ${id}-legs: unknown }
  verdict: open
`
