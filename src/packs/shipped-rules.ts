// Where the rule packs that come with the project lie.
import { fileURLToPath } from 'node:url'

export const shippedRules = fileURLToPath(new URL('../../rules', import.meta.url))
