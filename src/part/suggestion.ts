import { distance } from 'fastest-levenshtein'

/** Share of a word's letters that may be wrong for it to count as a slip. */
const SLIP = 0.4

/**
 * The name that was probably meant: the nearest one, when at most two letters in five are wrong. A name of one or two
 * letters is only offered for its own letters in the other case, since everything is near it. Of two names that are
 * equally near neither is offered.
 */
export function suggestion(word: string, names: Iterable<string>): string | undefined {
  const lower = word.toLowerCase()
  let best: { readonly name: string | undefined; readonly wrong: number } | undefined
  for (const name of names) {
    const wrong = distance(lower, name.toLowerCase())
    const allowed = Math.min(word.length, name.length) < 3 ? 0 : SLIP * Math.max(word.length, name.length)
    if (wrong > allowed || wrong > (best?.wrong ?? wrong)) continue
    best = { name: wrong === best?.wrong ? undefined : name, wrong }
  }
  return best?.name
}

/** `did you mean height?`, and otherwise the names there are. */
export function suggestionOrList(word: string, names: readonly string[], what: string): string {
  const near = suggestion(word, names)
  return near === undefined ? `${what}: ${names.join(', ')}` : `did you mean ${near}?`
}
