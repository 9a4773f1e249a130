// Says the page that a host links as privacy policy and terms of use, in the words of /privacy and of every verdict.
import type { Say } from './say.ts'

/** What is kept, by whom it concerns; each part has a name and a text. */
export const keptParts = {
  everybody: ['checks', 'drafts', 'counts', 'server', 'not'],
  helping: ['decisions', 'helped', 'families'],
} as const

export type PolicySection = { readonly title: string; readonly paragraphs: readonly string[] }
export type Policy = { readonly title: string; readonly sections: readonly PolicySection[] }

/** `contact`: who runs the bot and how they are reached. */
export function sayPolicy(say: Say, contact: string): Policy {
  const kept = (part: keyof typeof keptParts) =>
    keptParts[part].map(one => `${say(`privacy.${one}.name`)} ${say(`privacy.${one}`)}`)
  return {
    title: say('policy.title'),
    sections: [
      { title: say('policy.run-by'), paragraphs: [contact] },
      { title: say('privacy.title'), paragraphs: [say('privacy.short'), ...kept('everybody')] },
      { title: say('privacy.page.helping'), paragraphs: kept('helping') },
      {
        title: say('policy.delete.title'),
        paragraphs: [say('policy.delete'), say('privacy.sure'), say('privacy.stays')],
      },
      {
        title: say('policy.terms.title'),
        paragraphs: [say('policy.terms.unproven'), say('caution.full'), say('policy.terms.fair')],
      },
    ],
  }
}
