import type { CheckedWindow } from './port-check.ts'

/** Every two windows, once. */
export const pairsOf = (windows: readonly CheckedWindow[]): readonly (readonly [CheckedWindow, CheckedWindow])[] =>
  windows.flatMap((a, i) => windows.slice(i + 1).map(b => [a, b] as const))
