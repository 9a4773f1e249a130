// The bot's token, out of the settings or of a file that holds nothing else; what is none is told without repeating it.
import { closeSync, openSync, readSync } from 'node:fs'

export type ReadToken =
  | { readonly ok: true; readonly token: string | undefined }
  | { readonly ok: false; readonly sentence: string }

/** No token is as long. What holds more is not read to its end, which a device does not have. In bytes. */
const longest = 1024

const isOneWord = (text: string) => /^[\x21-\x7e]+$/.test(text)
const howToGet = 'Copy the bot’s token anew (Discord’s developer portal, Bot, Reset Token)'

/** The variable wins over the file. Without either there is no token, and nothing is wrong. */
export function readToken(given: string | undefined, file: string | undefined): ReadToken {
  if (given !== undefined) {
    const token = given.trim()
    if (isOneWord(token)) return { ok: true, token }
    return wrong(
      `DISCORD_TOKEN: A token is one word of letters, digits and signs, and this is not. ${howToGet}, or leave it out.`,
    )
  }
  if (file === undefined) return { ok: true, token: undefined }
  try {
    const token = beginningOf(file).trim()
    if (token === '') return wrong(`DISCORD_TOKEN_FILE: ${file} is empty. Put the bot’s token into it.`)
    if (isOneWord(token) && token.length < longest) return { ok: true, token }
    return wrong(
      `DISCORD_TOKEN_FILE: ${file} holds more than a token, which is one word. ${howToGet}, and nothing else.`,
    )
  } catch {
    return wrong(`DISCORD_TOKEN_FILE: ${file} cannot be read. Correct the path or its rights.`)
  }
}

const wrong = (sentence: string): ReadToken => ({ ok: false, sentence })

function beginningOf(file: string): string {
  const open = openSync(file, 'r')
  try {
    const buffer = Buffer.alloc(longest)
    let held = 0
    for (let read = 1; read > 0 && held < longest; held += read)
      read = readSync(open, buffer, held, longest - held, null)
    return buffer.toString('utf8', 0, held)
  } finally {
    closeSync(open)
  }
}
