import { faceGrowth, faceGrowthOneSided } from '../handbook/stock-at-worst-place.ts'
import { treatedSides } from '../hardening/case-surfaces.ts'
import { fromPart, type KnownSpread, known, type Origin, worked } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { hardeningPurpose } from '../route/hard-tasks.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** Growth of the two sides, and the diameters that it is reckoned at; a solid part has no `d`. */
type Sides = {
  readonly outside: KnownSpread
  readonly bore: KnownSpread
  readonly D: Millimetre
  readonly d: Millimetre | undefined
}

/**
 * Growth at each end face, from that of the two sides: free growth, and the stretch of the core along the length. A masked
 * side of a nitrided part moves by the stretch alone, and so tells it; otherwise both sides tell both.
 */
export function faceSpread(notebook: Notebook, part: Part, { outside, bore, D, d }: Sides): KnownSpread {
  const across = known(D, 'mm', fromPart('/body/outside'))
  const along = known(part.length.nominal, 'mm', fromPart('/body/length'))
  // With no bore, or growth measured on one side alone, the two cannot be told apart: the face grows as the open side does.
  if (d === undefined || outside.nominal === 0 || bore.nominal === 0) {
    const { from, source } = bore.nominal > outside.nominal ? bore : outside
    return { from, source, ...ends(end => Math.max(outside[end], bore[end])) }
  }
  const about = (end: keyof Spread) => ({ about: `faces, ${end}` })
  const open = treatedSides(part)
  if (open.outside !== open.bore && part.hardening && hardeningPurpose(part.hardening.process) === 'nitride') {
    const at = (end: keyof Spread): Millimetre => {
      const epsilon = open.bore ? (2 * outside[end]) / D : (-2 * bore[end]) / d
      const F = open.bore ? bore[end] + (epsilon * d) / 2 : outside[end] - (epsilon * D) / 2
      return notebook.use(faceGrowthOneSided, { F, epsilon, L: along }, about(end))
    }
    return { ...originOf(bore), ...ends(at) }
  }
  const at = (end: keyof Spread): Millimetre =>
    notebook.use(
      faceGrowth,
      {
        g_o: known(outside[end], 'mm', outside),
        g_b: known(bore[end], 'mm', bore),
        D: across,
        d: known(d, 'mm', fromPart('/body/bore')),
        L: along,
      },
      about(end),
    )
  return { ...originOf(bore.nominal > outside.nominal ? bore : outside), ...ends(at) }
}

const ends = (at: (end: keyof Spread) => Millimetre): Spread => ({
  least: at('least'),
  nominal: at('nominal'),
  most: at('most'),
})

/** As well known as the sides that it is taken from. */
const originOf = ({ from, source }: KnownSpread): Origin =>
  from === 'measured' ? { from, source } : worked(`${faceGrowth.symbol}, ${faceGrowth.meaning}`)
