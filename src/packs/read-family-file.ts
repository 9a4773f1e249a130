// Reads and writes a family as one YAML file. Files come from strangers: no aliases, no tags, no second document, bounded in size.
import { isAlias, isCollection, isNode, parseAllDocuments, stringify, visit } from 'yaml'
import { exported, fileLimits, type Importing, imported } from '../families/exchange/exchange.ts'
import type { Facts } from '../families/facts/facts-schema.ts'
import { keyProblems } from './read-yaml.ts'

export type ReadingFamily =
  | Importing
  | { readonly ok: false; readonly yaml: string }
  | { readonly ok: false; readonly tooLarge: number }

export const writeFamilyFile = (facts: Facts): string =>
  `# A model as one server's moderators describe it. It proves nothing, and nobody else vouches for it.\n${stringify(exported(facts), { lineWidth: 120, aliasDuplicateObjects: false })}`

/** `id`: the new family's own. */
export function readFamilyFile(text: string, id: string): ReadingFamily {
  if (Buffer.byteLength(text) > fileLimits.bytes) return { ok: false, tooLarge: fileLimits.bytes / 1024 }
  const documents = parseAllDocuments(text, { prettyErrors: false, uniqueKeys: false, schema: 'core' })
  const [document, ...more] = Array.isArray(documents) ? documents : []
  if (!document) return { ok: false, yaml: 'empty' }
  if (more.length > 0) return { ok: false, yaml: 'more than one document' }
  const [problem] = [...document.errors, ...document.warnings]
  const wrong = problem?.message.split('\n')[0] ?? keyProblems(document)[0]?.says
  if (wrong !== undefined) return { ok: false, yaml: wrong }
  let found: string | undefined
  let nodes = 0
  visit(document, {
    Node(_, node) {
      nodes++
      if (isAlias(node)) found = 'an alias'
      else if (isNode(node) && node.tag !== undefined && !node.tag.startsWith('tag:yaml.org,2002:')) found = 'a tag'
      else if ((isCollection(node) || isNode(node)) && 'anchor' in node && node.anchor) found = 'an anchor'
      return found || nodes > 20_000 ? visit.BREAK : undefined
    },
  })
  if (found) return { ok: false, yaml: found }
  if (nodes > 20_000) return { ok: false, yaml: 'too many entries' }
  return imported(document.toJS({ maxAliasCount: 0 }), id)
}
