// The tools a check may ask for.

/** `load`: anything that discharges a cell and counts, such as a charger with a test programme. */
export const tools = ['lens', 'ruler', 'calliper', 'scale', 'meter', 'load'] as const
export type Tool = (typeof tools)[number]
