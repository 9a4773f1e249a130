// npm run pictures: writes sheets with every picture there is into .pictures/, for people to look over.
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { toPng } from '../../src/pictures/png.ts'
import { contactSheet, type SheetEntry } from './contact-sheet.ts'
import { gallery } from './gallery.ts'
import { shipped } from './shipped.ts'

const folder = '.pictures'
const sheets: Readonly<Record<string, () => SheetEntry[]>> = {
  'every-kind': gallery,
  'shipped-en': () => shipped('en'),
  'shipped-de': () => shipped('de'),
  'shipped-es': () => shipped('es'),
}
await mkdir(folder, { recursive: true })
for (const [name, entries] of Object.entries(sheets)) {
  const file = join(folder, `${name}.png`)
  await writeFile(file, await toPng(contactSheet(entries(), 6)))
  console.log(file)
}
