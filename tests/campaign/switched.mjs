// Puts many small faults into one text at once, each behind a switch: a text is compiled and loaded once for all of them.
import { transformSync } from 'esbuild'

/** Notes that a fault's place is reached, and says whether that fault is the one that is tried. */
export const SWITCH = 'globalThis.linerwrightFault'

/** What lies in a span with the faults inside it; those are parts of a syntax tree, so that two of them nest or lie apart. */
export function switched(text, faults, from = 0, upTo = text.length) {
  let out = ''
  let at = from
  for (;;) {
    const [next] = faults
      .filter(({ start, end }) => start >= at && end <= upTo)
      .sort((one, other) => one.start - other.start || other.end - one.end)
    if (!next) return out + text.slice(at, upTo)
    const { start, end } = next
    const isHere = fault => fault.start === start && fault.end === end
    const inner = faults.filter(fault => !isHere(fault))
    const before = out + text.slice(at, start)
    const isMember = before.endsWith('.') && /^\w+$/.test(next.to)
    if (isMember) {
      const name = faults
        .filter(isHere)
        .reduce((or, { id, to }) => `${SWITCH}(${id}) ? '${to}' : ${or}`, `'${text.slice(start, end)}'`)
      out = `${before.endsWith('?.') ? before : before.slice(0, -1)}[${name}]`
    } else {
      const original = switched(text, inner, start, end)
      out = before + faults.filter(isHere).reduce((or, { id, to }) => `(${SWITCH}(${id}) ? ${to} : ${or})`, original)
    }
    at = end
  }
}

/** A fault that makes no program at all, or that no switch fits, as in the key of a record. */
export function fits(text, fault) {
  try {
    return transformSync(switched(text, [fault]), { loader: 'ts' }) !== undefined
  } catch {
    return false
  }
}
