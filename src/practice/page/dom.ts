// Builds DOM nodes in one line; text always goes in as text.

type Child = Node | string | null | undefined | false

type Attributes = Readonly<Record<string, string | number | boolean | null | undefined | ((event: Event) => void)>>

/** An element with attributes (`on…` functions are listeners, `true` an empty attribute, null or false none) and children. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const node = document.createElement(tag)
  for (const [name, value] of Object.entries(attributes)) {
    if (value === null || value === undefined || value === false) continue
    if (typeof value === 'function') node.addEventListener(name.slice(2), value)
    else node.setAttribute(name, value === true ? '' : String(value))
  }
  for (const child of children) if (child !== null && child !== undefined && child !== false) node.append(child)
  return node
}

/** The element of this id; the page is broken without it. */
export function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  const found = document.getElementById(id)
  if (found === null) throw new Error(`The page has no #${id}`)
  return found as T
}

/** A size in bytes in words. */
export function sizeInWords(bytes: number): string {
  if (bytes < 1024) return `${bytes} bytes`
  if (bytes < 1024 * 1024) return `${(bytes / 1024).toFixed(1)} KiB`
  return `${(bytes / 1024 / 1024).toFixed(1)} MiB`
}

let counter = 0

/** An id no other element has. */
export function freshId(prefix: string): string {
  counter += 1
  return `${prefix}-${counter}`
}
