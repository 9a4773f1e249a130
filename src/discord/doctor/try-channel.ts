// What the doctor tries out in one channel, and takes away again: everything the bot posts that no list of Discord's tells beforehand.
import { randomBytes } from 'node:crypto'
import { DiscordAPIError, type REST, Routes } from 'discord.js'
import { openPictures } from '../../services/pictures/open-pictures.ts'
import { sayIn } from '../../words/say.ts'
import { gallery, message, type ShownMessage, small, text } from '../message/parts.ts'
import { showOffer } from '../offers/show-offer.ts'
import { type Place, postsOver } from '../posts/post.ts'
import { roleMenu } from '../setup/show/menus.ts'
import { type Finding, of } from './finding.ts'

/** Posts, posts again, edits, shows a picture, buttons and a menu, types, and removes what it has posted. */
export async function tryChannel(rest: REST, channel: string): Promise<Finding[]> {
  const say = sayIn('en')
  const posts = postsOver(rest)
  const run = randomBytes(6).toString('hex')
  const left: Place[] = []
  const findings: Finding[] = []
  const attempt = async (about: string, trial: () => Promise<string | undefined>) => {
    const { fine, wrong } = of(`channel: ${about}`)
    findings.push(
      await trial().then(
        refused => (refused ? wrong(refused) : fine('Discord takes it.')),
        error => wrong(sayError(error)),
      ),
    )
  }
  const post = async (nonce: string, shown: ShownMessage): Promise<Place | undefined> => {
    const posting = await posts.post(channel, shown, nonce)
    if (posting.is !== 'posted') return undefined
    if (!left.some(one => one.message === posting.place.message)) left.push(posting.place)
    return posting.place
  }
  const mayNot = `The bot may not post there. Give its role “View Channel”, “Send Messages” and “Attach Files” in <#${channel}>, or name another channel.`
  const posted = (name: string, parts: ShownMessage) => async () =>
    (await post(`${name}${run}`, parts)) ? undefined : mayNot
  const trial = message([text('A trial of Cellwary’s doctor; it is taken away at once.'), small(say('caution.line'))])

  await attempt('a post', posted('a', trial))
  if (left.length === 0) return findings
  await attempt('the same post again stands there once', async () => {
    await post(`a${run}`, trial)
    return left.length === 1 ? undefined : 'It was posted twice: Discord does not keep to the nonce.'
  })
  await attempt('a change of a post', async () => {
    const [first] = left
    return first && (await posts.redraw(first, message([text('Changed.')]))) === 'done' ? undefined : mayNot
  })
  await attempt('a picture', async () => {
    const nowhere = { get: async () => undefined, set: async () => undefined }
    const picture = await openPictures(nowhere).forBench(say)
    return posted('p', message([...gallery(picture ? [picture] : []), text('A picture.')], picture ? [picture] : []))()
  })
  await attempt('a panel with buttons', posted('b', showOffer(say)))
  await attempt(
    'a menu of roles with none chosen',
    posted('m', message([text('A menu.'), roleMenu(say, 0, 'moderators', [])])),
  )
  await attempt('being seen typing', async () => void (await rest.post(Routes.channelTyping(channel))))
  await attempt('taking the posts away', async () => {
    const gone = await Promise.all(left.map(place => posts.remove(place)))
    return gone.every(one => one !== 'forbidden') ? undefined : 'Some could not be removed; delete them by hand.'
  })
  return findings
}

function sayError(error: unknown): string {
  if (error instanceof DiscordAPIError) return `Discord refused it: ${error.status} ${error.code} ${error.message}.`
  return `It failed: ${error instanceof Error ? error.message : error}.`
}
