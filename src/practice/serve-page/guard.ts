// Keeps every other web page out: only this machine's own names, this page's own origin, and only JSON we asked for.

type Headers = Readonly<Record<string, string>>

/** Whether the request was made by the page itself (or by a tool on this machine), not by a page elsewhere. */
export function fromOwnPage(headers: Headers): boolean {
  const { host, origin } = headers
  const site = headers['sec-fetch-site']
  if (origin !== undefined && origin !== `http://${host}`) return false
  return site === undefined || site === 'same-origin' || site === 'none'
}

/** Whether a POST comes from our script: a custom header and a JSON body cannot be sent across origins unasked. */
export function isOwnAct(headers: Headers): boolean {
  const json = headers['content-type']?.startsWith('application/json') === true
  return json && headers['x-practice'] === 'act' && fromOwnPage(headers)
}

/** Headers of everything the page consists of. */
export const pageHeaders = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; " +
    "form-action 'none'; frame-ancestors 'none'; base-uri 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cache-control': 'no-store',
} as const
