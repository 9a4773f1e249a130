// npm start: turns on Node's compile cache, so that every start after the first finds its code compiled, and runs the bot.
import { enableCompileCache, flushCompileCache } from 'node:module'

enableCompileCache()
const { run } = await import('./run.ts')
await run()
// Written now rather than at the end, which a killed process never sees.
flushCompileCache()
