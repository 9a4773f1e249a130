// Text from people and packs' names, shown as text: nothing in it becomes a mention, a link, a heading or bold.

/** Escapes every character that Discord's markup, mentions, timestamps or command links begin with. */
export const plain = (text: string): string => text.replace(/[\\`*_~|<>[\]()#@:-]/g, '\\$&')

/** Text from people in a block of code: nothing in it ends the block. */
export const fenced = (text: string): string => `\`\`\`\n${text.replaceAll('`', "'")}\n\`\`\``

/** The text without those escapes, for a terminal, which has no markup. */
export const unmarked = (text: string): string => text.replace(/\\([\\`*_~|<>[\]()#@:-])/g, '$1')
