// One thing wrong with a body, and Discord's nested shape for a list of them.

export type Issue = {
  readonly path: readonly (string | number)[]
  readonly code: string
  readonly message: string
}

type ErrorTree = {
  [key: string]: ErrorTree | { code: string; message: string }[]
}

/** An issue at a path. */
export function issue(path: readonly (string | number)[], code: string, message: string): Issue {
  return { path, code, message }
}

/** The `errors` object of Discord's 50035 answer. Source: Discord's documentation, Reference, "Error Messages". */
export function errorTree(issues: readonly Issue[]): ErrorTree {
  const root: ErrorTree = {}
  for (const { path, code, message } of issues) {
    let node = root
    for (const step of path) {
      const key = String(step)
      node[key] ??= {}
      node = node[key] as ErrorTree
    }
    node['_errors'] ??= []
    const list = node['_errors'] as { code: string; message: string }[]
    list.push({ code, message })
  }
  return root
}
