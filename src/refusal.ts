/**
 * What the command cannot do, and says so in one line: exit status 2. A finding is about what stands in a file and goes on to
 * the next; this ends the work on a file. Anything else that is thrown is a fault of ours.
 */
export class Refusal extends Error {
  override readonly name: string = 'Refusal'
}

/** Longest line that a refusal or a fault prints. */
const LONGEST = 400

/** A text that came from outside as one line: what would move the cursor or colour the terminal is written out instead. */
export function oneLine(text: string): string {
  const flat = writtenOut(text.slice(0, 4 * LONGEST))
  return flat.length <= LONGEST ? flat : `${flat.slice(0, LONGEST)}…`
}

/** Whatever would move the cursor, colour the terminal or turn the direction of writing, by its number instead. */
export const writtenOut = (text: string): string =>
  text.replace(/[\p{Cc}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/gu, numbered)

/** The same of a text that has lines of its own. */
export const withoutControls = (text: string): string => text.replace(/(?!\n)\p{Cc}/gu, numbered)

const numbered = (character: string): string => `\\u${(character.codePointAt(0) ?? 0).toString(16).padStart(4, '0')}`
