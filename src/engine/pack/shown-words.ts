// Texts that a folder of rules brings to people's screens: none hides where a link leads, or what it says.
import type { z } from 'zod'

/** A link whose words hide where it leads, as Discord's markdown has it. */
const maskedLink = /\]\s?\(/
/** Characters that turn around or hide what stands behind them (Unicode Standard Annex 9, 2; and zero width spaces). */
const unseen = /[\u061c\u200b\u200e\u200f\u202a-\u202e\u2060\u2066-\u2069\ufeff]/u

export const shown = (text: z.ZodString) =>
  text
    .refine(one => !maskedLink.test(one), 'write a link as it is, without words in brackets before it')
    .refine(one => !unseen.test(one), 'remove the characters that nobody sees: they turn around or hide what follows')
