// npm start: turns on Node's compile cache, so that every start after the first finds its code compiled, and runs the bot.
//
// JavaScript, unlike all else: what stands here is read before the cache is on, and for TypeScript its compiler would be loaded each time.
import { enableCompileCache, flushCompileCache } from 'node:module'

enableCompileCache()
const { run } = await import('./run.ts')
await run()
// Written now rather than at the end, which a killed process never sees.
flushCompileCache()
