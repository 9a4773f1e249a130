// Why the database of the settings cannot be used, in one sentence that names the setting: for a start and for the doctor alike.
import { join } from 'node:path'
import { CannotStart, codeOf, exitCodes } from './cannot-start.ts'
import type { Config } from './config.ts'

/** Undefined where it is not known what is wrong. */
export function whyNoDatabase({ database, data }: Config, error: unknown): CannotStart | undefined {
  if (error instanceof CannotStart) return error
  return database === undefined ? ofFile(join(data, 'cellwary.db'), error) : ofServer(error)
}

/** What only the operator mends: a wrong name or password, no such database, no right to it (PostgreSQL's documentation, appendix A). */
const refusedByServer = ['28P01', '28000', '3D000', '42501']

function ofServer(error: unknown): CannotStart {
  const code = codeOf(error) ?? (error instanceof Error ? error.message : '')
  const operator = (sentence: string) =>
    new CannotStart(`DATABASE_URL: ${sentence}`, exitCodes.operator, { cause: error })
  // The address may name files with certificates.
  if (error instanceof Error && 'path' in error)
    return operator(`it names the file ${error.path}, which cannot be read (${code}). Correct its path or its rights.`)
  if (code === 'NO_TLS')
    return operator(
      'the database does not encrypt its connections, which sslmode asks for. Set it up there, or leave sslmode out.',
    )
  if (/CERT|SIGNATURE|^ERR_TLS/.test(code))
    return operator(
      `the certificate of the database is not trusted (${code}). Name who issued it with sslrootcert, or correct the address.`,
    )
  if (refusedByServer.includes(code))
    return operator(`the database does not let the bot in (${code}). Correct the name, the password or the rights.`)
  return new CannotStart(
    `DATABASE_URL: the database does not answer (${code}). Start it, or correct the address.`,
    exitCodes.trouble,
    { cause: error },
  )
}

/** SQLite's result codes (sqlite.org/rescode.html). */
const sentences: Readonly<Record<number, string>> = {
  5: 'is held by another program. Stop that one',
  8: 'may only be read. Mend its rights, or name another folder',
  10: 'cannot be read or written. Look at the disk, or name another folder',
  11: 'is damaged. Restore it from a back-up, or move it away to begin with an empty one',
  13: 'cannot grow: the disk is full. Make room',
  14: 'cannot be opened. Mend its rights, or name another folder',
  26: 'is no database, or is damaged. Restore it from a back-up, or move it away to begin with an empty one',
}
/** What may pass by itself. */
const passing = [5, 13]

/** What the system says of the file already; `what`: how it is, and what to do. */
export const noFile = (file: string, what: string): CannotStart =>
  new CannotStart(`CELLWARY_DATA: ${file} ${what}.`, exitCodes.operator)

function ofFile(file: string, error: unknown): CannotStart | undefined {
  const code = error instanceof Error && 'errcode' in error ? Number(error.errcode) & 0xff : 0
  const sentence = sentences[code]
  if (sentence === undefined) return undefined
  return new CannotStart(
    `CELLWARY_DATA: ${file} ${sentence}.`,
    passing.includes(code) ? exitCodes.trouble : exitCodes.operator,
    { cause: error },
  )
}
