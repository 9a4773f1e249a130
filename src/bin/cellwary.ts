#!/usr/bin/env node
// npm run cellwary: turns on Node's compile cache, so that every command after the first finds its code compiled, and runs the command line.
import { enableCompileCache } from 'node:module'

enableCompileCache()
const { runCommandLine } = await import('./command-line.ts')
await runCommandLine(process.argv)
