// Counts how many pieces of our own code run, in a thread of its own: the same on a busy machine as on an idle one.
//
// V8's precise coverage counts every call of every block. What regular expressions do inside is not counted; patterns.test.ts
// looks at those.
import { Session } from 'node:inspector/promises'
import { parentPort } from 'node:worker_threads'
import { readBatch } from '../../src/readings/batch/read-batch.ts'
import { openLog } from '../../src/readings/open-log.ts'
import { readClaims } from '../../src/readings/read-claims.ts'
import { readTyped } from '../../src/readings/read-typed.ts'
import { weighClaims } from '../../src/readings/weigh-claims.ts'
import { sayClaimFinding, sayFact } from '../../src/words/claim-words.ts'
import { sayIn } from '../../src/words/say.ts'

export type Task = { readonly what: keyof typeof works; readonly text: string }

const say = sayIn('de')
const works = {
  claim: (text: string) => {
    const facts = readClaims(text, 'de')
    for (const fact of facts) sayFact(say, fact, text)
    for (const finding of weighClaims(facts, '2026-12-01').findings) sayClaimFinding(say, finding)
  },
  typed: (text: string) => void readTyped(text, 'capacity', 'de'),
  batch: (text: string) => void readBatch(text, 'mass', 'de'),
  log: (text: string) => {
    const log = openLog({ instrument: { kind: 'hobby-load' } })
    const bytes = new TextEncoder().encode(text)
    for (let at = 0; at < bytes.length; at += 65_536) if (log.push(bytes.subarray(at, at + 65_536)) === 'enough') break
    log.end()
  },
}

const session = new Session()
session.connect()
await session.post('Profiler.enable')
await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: true })

async function count({ what, text }: Task): Promise<number> {
  await session.post('Profiler.takePreciseCoverage')
  works[what](text)
  const { result } = await session.post('Profiler.takePreciseCoverage')
  return result
    .filter(({ url }) => url.includes('/src/'))
    .flatMap(script => script.functions.flatMap(({ ranges }) => ranges))
    .reduce((sum, range) => sum + range.count, 0)
}

parentPort?.on('message', async (task: Task) => parentPort?.postMessage(await count(task)))
