// npm start: turns on Node's compile cache, so that every start after the first is faster, and runs the bot.
import { enableCompileCache, flushCompileCache } from 'node:module'

enableCompileCache()
await import('./run.ts')
// Written now rather than at the end, which a killed process never sees.
flushCompileCache()
