// Why a port or an address of the settings cannot be listened on, in one sentence that names the setting: for a start and the doctor alike.
import type { Config } from './config.ts'

/** Undefined where the error is of something else. */
export function sayPort(error: unknown, { figures, http, port }: Config): string | undefined {
  if (!(error instanceof Error) || !('code' in error)) return undefined
  const failed = error as NodeJS.ErrnoException & Readonly<{ port?: number; address?: string; hostname?: string }>
  const doors = [
    { door: figures, sets: 'CELLWARY_FIGURES_PORT', host: 'CELLWARY_FIGURES_HOST' },
    { door: http, sets: 'CELLWARY_HTTP', host: 'CELLWARY_HTTP_HOST' },
  ]
  if (failed.syscall === 'getaddrinfo') {
    const wanting = doors.find(({ door }) => door?.host === failed.hostname)
    return wanting && noAddress(wanting.host, failed.hostname, failed.code)
  }
  if (failed.syscall !== 'listen') return undefined
  if (failed.code === 'EADDRNOTAVAIL' || failed.code === 'EINVAL') {
    const wanting = doors.find(({ door }) => door?.host === failed.address)
    return wanting && noAddress(wanting.host, failed.address, failed.code)
  }
  const at = doors.find(({ door }) => door?.port === failed.port)
  const change = at ? `set ${at.sets} to another one.` : 'set CELLWARY_PORT to another one (0 takes any).'
  const which = at?.door?.port ?? port
  if (failed.code === 'EADDRINUSE') return `Port ${which} is taken. Stop what uses it, or ${change}`
  return `Port ${which} may not be opened (${failed.code}). Ports below 1024 are often kept for others: ${change}`
}

const noAddress = (setting: string, host: string | undefined, code: string | undefined): string =>
  `${setting}: ${host} is no address of this machine (${code}). Name one that it has, or leave it out for this machine alone.`
