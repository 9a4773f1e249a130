// What a danger sign asks of whoever is beside the cell, the most urgent first.

/**
 * Get away from a cell that may burn now; leave alone one that has failed and seems cold; set apart (isolate) one that only
 * shows damage.
 */
export const urgencies = ['get-away', 'leave', 'isolate'] as const
export type Urgency = (typeof urgencies)[number]
