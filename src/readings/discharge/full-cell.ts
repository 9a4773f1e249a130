// How far below its full voltage a cell that was full may rest.

/** A full cell loses some 10 to 40 mV in the hours after charging (common practice, no source). */
export const fullWithin_V = 0.06
