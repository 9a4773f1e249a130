// Where the rule packs that come with the project lie.
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const shippedRules = fileURLToPath(new URL('../../rules', import.meta.url))

/** Where the constructions that come with the project lie. */
export const shippedConstructions = join(shippedRules, 'constructions')
