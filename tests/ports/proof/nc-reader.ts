/**
 * A small reader of ISO 6983 text: absolute millimetres, rapid and straight feed moves, a rotary word A, a tilt word B, and
 * one word of the machine's own, G53 Z0, which takes the spindle fully up.
 */
export type Place = { readonly x: number; readonly y: number; readonly z: number }
export type Move = {
  readonly rapid: boolean
  readonly rotary: number
  readonly from: Place
  readonly to: Place
  readonly feed: number
  readonly spindle: number
  /** Words of the comments since the last turn of the rotary: the window and the cut. */
  readonly about: readonly string[]
}
export type NcRead = {
  /** `(key: value)` comments. */
  readonly head: ReadonlyMap<string, string>
  readonly moves: readonly Move[]
  /** Where the rotary turned. */
  readonly turns: readonly { readonly at: Place; readonly to: number }[]
  /** Machine Z in which the program leaves the tip. */
  readonly endsAt: number
  /** Where the tilt axis turned. */
  readonly tilts: readonly { readonly at: Place; readonly to: number }[]
}

const KNOWN = /^(G(0|1|17|21|40|53|54|90|94)|M(0|3|5|6|8|9|10|11|21|22|30)|[NTSF][\d.]+|Z0|[XYZAB]-?\d+\.\d+)$/

export function readNc(text: string): NcRead {
  const lines = text.trim().split('\n')
  if (lines[0] !== '%' || lines.at(-1) !== '%') throw new Error('a program stands between % signs')
  const head = new Map<string, string>()
  const moves: Move[] = []
  const turns: { at: Place; to: number }[] = []
  const tilts: { at: Place; to: number }[] = []
  let place: Place = { x: Number.NaN, y: Number.NaN, z: Number.NaN }
  let [rapid, rotary, turning, spindle, feed] = [true, Number.NaN, false, 0, 0]
  let ended = false
  let about: readonly string[] = []
  for (const line of lines.slice(1, -1)) {
    const comment = /^\((?<key>[^:)]+): (?<value>[^)]*)\)$/.exec(line)
    if (comment?.groups) head.set(comment.groups['key'] ?? '', comment.groups['value'] ?? '')
    if (line.startsWith('(')) {
      about = [...about, line.slice(1, -1)]
      continue
    }
    const words = line.split(' ')
    const unknown = words.find(word => !KNOWN.test(word))
    if (unknown !== undefined) throw new Error(`unknown word ${unknown} in ${line}`)
    const value = (letter: string): number | undefined => {
      const word = words.find(candidate => candidate.startsWith(letter))
      return word === undefined ? undefined : Number(word.slice(1))
    }
    if (words.includes('G0')) rapid = true
    if (words.includes('G1')) rapid = false
    if (words.includes('M3')) turning = true
    if (words.includes('M5')) turning = false
    if (words.includes('M30')) ended = true
    spindle = value('S') ?? spindle
    feed = value('F') ?? feed
    const a = value('A')
    if (a !== undefined) {
      turns.push({ at: place, to: a })
      rotary = a
    }
    const b = value('B')
    if (b !== undefined) tilts.push({ at: place, to: b })
    if (words.includes('G53')) {
      place = { ...place, z: Number.POSITIVE_INFINITY }
      continue
    }
    const to = { x: value('X') ?? place.x, y: value('Y') ?? place.y, z: value('Z') ?? place.z }
    if (Object.is(to.x, place.x) && Object.is(to.y, place.y) && Object.is(to.z, place.z)) continue
    if (!rapid && !(turning && spindle > 0 && feed > 0)) throw new Error(`feed without spindle or feed rate: ${line}`)
    moves.push({ rapid, rotary, from: place, to, feed, spindle, about })
    place = to
  }
  if (!ended) throw new Error('the program has no M30')
  return { head, moves, turns, tilts, endsAt: place.z }
}
