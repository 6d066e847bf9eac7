/**
 * Digits that plain data carries. The last three or four of the sixteen that a machine reckons with differ between versions of
 * the mathematics under it; no size needs them.
 */
const DIGITS = 12

/** Plain data as text, the same wherever it was reckoned, with a line end. */
export const jsonText = (data: unknown): string => `${JSON.stringify(data, rounded, 2)}\n`

const rounded = (_: string, value: unknown): unknown =>
  typeof value === 'number' && !Number.isInteger(value) ? Number(value.toPrecision(DIGITS)) : value
