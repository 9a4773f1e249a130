// npm run goldens: writes the drawings of golden/ anew, on purpose; look at each file that git says has changed.
import { mkdir, rm, writeFile } from 'node:fs/promises'
import { fileOf, folder, goldens, inLines } from './goldens.ts'

await rm(folder, { recursive: true, force: true })
await mkdir(folder)
for (const [name, draw] of Object.entries(goldens)) await writeFile(fileOf(name), inLines(draw().svg))
console.log(`${Object.keys(goldens).length} drawings are in ${folder}; open the ones that “git diff --stat” lists.`)
