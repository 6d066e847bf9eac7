/** Where a function takes a value, or the values that it takes instead. */
export type Bracketed =
  | { readonly at: number }
  | { readonly least: number; readonly most: number }
  | { readonly nowhere: true }

const SAMPLES = 24
const STEPS = 60

/**
 * Where f(x) = wanted between two ends, nearest to a place: f is tried at even steps, and every neighbouring pair that has the
 * value between them is closed in on by false position, the end that stays put weighed half (the Illinois variant). Where f is
 * not defined it is passed over. Range: one crossing between two samples; of more, one is found. Source: derived, mathematics.
 */
export function bracketedRoot(
  f: (x: number) => number | undefined,
  {
    from,
    to,
    wanted,
    near,
  }: { readonly from: number; readonly to: number; readonly wanted: number; readonly near: number },
): Bracketed {
  const tried = Array.from({ length: SAMPLES + 1 }, (_, i) => from + ((to - from) * i) / SAMPLES).flatMap(x => {
    const y = f(x)
    return y === undefined || !Number.isFinite(y) ? [] : [{ x, off: y - wanted }]
  })
  const pairs = tried.flatMap((low, i) => {
    const high = tried[i + 1]
    return high && low.off * high.off <= 0 ? [{ low, high }] : []
  })
  const roots = pairs.flatMap(({ low, high }) => closedIn(x => off(f, wanted, x), low, high) ?? [])
  const [at] = roots.toSorted((a, b) => Math.abs(a - near) - Math.abs(b - near))
  if (at !== undefined) return { at }
  if (tried.length === 0) return { nowhere: true }
  const values = tried.map(({ off }) => off + wanted)
  return { least: Math.min(...values), most: Math.max(...values) }
}

const off = (f: (x: number) => number | undefined, wanted: number, x: number): number => (f(x) ?? Number.NaN) - wanted

type Tried = { readonly x: number; readonly off: number }

/** Nothing where the function is not defined between the two, or jumps over the value. */
function closedIn(f: (x: number) => number, first: Tried, second: Tried): number | undefined {
  let [a, b] = [first, second]
  if (a.off === 0) return a.x
  if (b.off === 0) return b.x
  const scale = Math.max(Math.abs(first.off), Math.abs(second.off))
  for (let step = 0; step < STEPS; step++) {
    const x = b.x - (b.off * (b.x - a.x)) / (b.off - a.off)
    const off = f(x)
    if (!Number.isFinite(off)) return undefined
    if (Math.abs(off) <= 1e-12 * scale) return x
    if (Math.abs(b.x - a.x) < 1e-10) return Math.abs(off) <= 1e-6 * scale ? x : undefined
    // The older end halves where the same side is hit twice, so that both ends close in.
    a = off * b.off < 0 ? b : { x: a.x, off: a.off / 2 }
    b = { x, off }
  }
  return undefined
}
