// Where a program's answers stand: the state of each of its questions, and what is read from that.

/** The state of each variable; -1 where nothing was answered. */
export type Places = readonly number[]

/** How a condition weighs places: 0 false, 1 unknown, 2 true. */
export type Weigher = (places: Places) => number
