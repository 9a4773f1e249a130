// Stands in for the process that reads a log, and ends as the file's name says.
import type { LogWork } from '../../src/readers/log/read-log.ts'

const ends: Record<string, () => void> = {
  '/memory': () => {
    for (const all: object[] = []; ; ) all.push([all.length, {}])
  },
  '/engine': () => process.kill(process.pid, 'SIGTRAP'),
  '/ours': () => {
    throw new Error('a fault of ours')
  },
  '/none': () => process.exit(0),
}

process.once('message', ({ url }: LogWork) => ends[new URL(url).pathname]?.())
