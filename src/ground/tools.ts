// The tools a person may have at hand; questions that need another are not asked.

/** In the order in which they are offered: from what nearly everybody has to what few have. `load` is a charger or tester that counts. */
export const tools = ['lens', 'ruler', 'calliper', 'scale', 'meter', 'load'] as const
export type Tool = (typeof tools)[number]
