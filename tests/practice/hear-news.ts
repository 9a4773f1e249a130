// Listens to the news that the page of one person gets, each held against the description of what travels.
import type { StandIn } from '../../src/practice/stand-in.ts'
import { newsShape, type WireNews } from '../../src/practice/wire.ts'

/** Everything heard, up to and with the first news that is `enough`. */
export async function hearNews(
  standIn: StandIn,
  at: { readonly you: string; readonly place: string },
  enough: (news: WireNews) => boolean,
): Promise<WireNews[]> {
  const response = await fetch(`${standIn.pageUrl}live?${new URLSearchParams(at)}`)
  const heard: WireNews[] = []
  let text = ''
  for await (const chunk of response.body?.pipeThrough(new TextDecoderStream()) ?? []) {
    text += chunk
    const lines = text.split('\n\n')
    text = lines.pop() ?? ''
    for (const line of lines.filter(one => one.startsWith('data: '))) {
      const news: WireNews = newsShape.parse(JSON.parse(line.slice('data: '.length)))
      heard.push(news)
      if (enough(news)) return heard
    }
  }
  throw new Error('The line ended')
}
