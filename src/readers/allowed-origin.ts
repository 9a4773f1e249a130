// Whether a link leads to one of the hosts that serve attachments: scheme, host and port compared exactly, no name or password in it.
export function isAllowedOrigin(origins: readonly string[], link: string): boolean {
  if (!URL.canParse(link)) return false
  const { origin, username, password } = new URL(link)
  return username === '' && password === '' && origins.includes(origin)
}
