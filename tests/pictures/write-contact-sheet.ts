// npm run pictures: writes a sheet with every picture there is to .pictures/sheet.png, for people to look over.
import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { toPng } from '../../src/pictures/png.ts'
import { contactSheet } from './contact-sheet.ts'
import { gallery } from './gallery.ts'

const folder = '.pictures'
const file = join(folder, 'sheet.png')
await mkdir(folder, { recursive: true })
await writeFile(file, await toPng(contactSheet(gallery())))
console.log(file)
