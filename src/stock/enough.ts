/** A margin of nothing is not short: the last bits of a difference do not tell. */
export const ENOUGH: number = -1e-9
