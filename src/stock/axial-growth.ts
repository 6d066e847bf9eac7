import { depthGrowth, endGrowth, freeGrowth, stretchOfSide, stretchOfSides } from '../handbook/axial-growth.ts'
import { lengthChange } from '../handbook/hardening-growth.ts'
import type { Growth } from '../hardening/case-growth.ts'
import { treatedSides } from '../hardening/case-surfaces.ts'
import { fromHandbook, fromPart, type KnownSpread, known, type Origin, worked } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import { hardeningPurpose } from '../route/hard-tasks.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** A share of the length, with its range. */
export type ShareSpread = { readonly [end in keyof Spread]: number } & Origin

/** What moves the faces of a part: free growth at each treated face, and the stretch along the length, a share of it. */
export type AxialGrowth = { readonly free: KnownSpread; readonly stretch: ShareSpread }

export const NO_AXIAL_GROWTH: AxialGrowth = {
  free: { least: 0, nominal: 0, most: 0, ...worked('no growth: not treated') },
  stretch: { least: 0, nominal: 0, most: 0, ...worked('no stretch: not treated') },
}

/** A face that looks down moves away from the top face, one that looks up moves with it. */
export type Looks = 'up' | 'down'

/** How a depth below the top face, or the whole length, grows at each end of the range. */
export const growthOfDepth = ({ free, stretch }: AxialGrowth, looks: Looks, depth: Millimetre): Spread =>
  ends(end => depthGrowth.value({ n: looks === 'down' ? 2 : 0, F: free[end], epsilon: stretch[end], z: depth }))

/** Growth at each end of a length, as a finish that starts from the one and cuts the other meets it. */
export function growthAtEnds(notebook: Notebook, { free, stretch }: AxialGrowth, length: Millimetre): KnownSpread {
  const at = (end: keyof Spread): Millimetre =>
    notebook.use(
      endGrowth,
      {
        F: known(free[end], 'mm', free),
        epsilon: known(stretch[end], '', stretch),
        L: length,
      },
      about(end),
    )
  const measured = [free, stretch].find(({ from }) => from === 'measured')
  return { ...(measured ? originOf(measured) : worked(`${endGrowth.symbol}, ${endGrowth.meaning}`)), ...ends(at) }
}

/** Growth of the two sides, and the diameters that it is reckoned at; a solid part has no `d`. */
type Sides = Growth & { readonly D: Millimetre; readonly d: Millimetre | undefined }

/** Free growth and stretch along the length, from the growth of the two sides. */
export function axialGrowth(notebook: Notebook, part: Part, sides: Sides): AxialGrowth {
  const { hardening } = part
  if (!hardening) return NO_AXIAL_GROWTH
  if (hardeningPurpose(hardening.process) !== 'nitride') return quenched(notebook, part, sides)
  const { outside, bore, D, d } = sides
  // With no bore, or growth measured on one side alone, the two cannot be told apart: the face grows as the open side does.
  if (d === undefined || outside.nominal === 0 || bore.nominal === 0) {
    const larger = bore.nominal > outside.nominal ? bore : outside
    return {
      free: { ...originOf(larger), ...ends(end => Math.max(outside[end], bore[end])) },
      stretch: NO_AXIAL_GROWTH.stretch,
    }
  }
  const open = treatedSides(part)
  if (open.outside !== open.bore) return oneSided(notebook, open.bore, { outside, bore, D, d })
  const given = (end: keyof Spread) => ({
    g_o: known(outside[end], 'mm', outside),
    g_b: known(bore[end], 'mm', bore),
    D: known(D, 'mm', fromPart('/body/outside')),
    d: known(d, 'mm', fromPart('/body/bore')),
  })
  const measured = [outside, bore].find(({ from }) => from === 'measured')
  return {
    free: {
      ...(measured ? originOf(measured) : worked(`${freeGrowth.symbol}, ${freeGrowth.meaning}`)),
      ...ends(end => notebook.use(freeGrowth, given(end), about(end))),
    },
    stretch: {
      ...(measured ? originOf(measured) : worked(`${stretchOfSides.symbol}, ${stretchOfSides.meaning}`)),
      ...ends(end => notebook.use(stretchOfSides, given(end), about(end))),
    },
  }
}

/** The masked side tells the stretch; what the open side grows beside it is free growth. */
function oneSided(
  notebook: Notebook,
  boreOpen: boolean,
  { outside, bore, D, d }: Growth & { readonly D: Millimetre; readonly d: Millimetre },
): AxialGrowth {
  const stretch = ends(end =>
    notebook.use(stretchOfSide, boreOpen ? { w: outside[end], D } : { w: -bore[end], D: d }, about(end)),
  )
  const free = ends(end => (boreOpen ? bore[end] + (stretch[end] * d) / 2 : outside[end] - (stretch[end] * D) / 2))
  return { free: { ...originOf(bore), ...free }, stretch: { ...originOf(boreOpen ? outside : bore), ...stretch } }
}

/** A quenched part changes by a share of every length, not at its surfaces: there is no free growth. */
function quenched(notebook: Notebook, { hardening }: Part, { outside, bore, D, d }: Sides): AxialGrowth {
  const { free } = NO_AXIAL_GROWTH
  if (outside.from === 'measured')
    return {
      free,
      stretch: {
        ...originOf(outside),
        ...ends(end => notebook.use(stretchOfSide, { w: outside[end], D }, about(end))),
      },
    }
  if (bore.from === 'measured' && d !== undefined) {
    const opposite = { least: 'most', nominal: 'nominal', most: 'least' } as const
    const at = (end: keyof Spread) => notebook.use(stretchOfSide, { w: -bore[opposite[end]], D: d }, about(end))
    return { free, stretch: { ...originOf(bore), ...ends(at) } }
  }
  const change = hardening && lengthChange(hardening.process)
  return change ? { free, stretch: { ...change, ...fromHandbook(change.source) } } : NO_AXIAL_GROWTH
}

const about = (end: keyof Spread) => ({ about: `faces, ${end}` })

const ends = <T extends number>(at: (end: keyof Spread) => T): { readonly [end in keyof Spread]: T } => ({
  least: at('least'),
  nominal: at('nominal'),
  most: at('most'),
})

const originOf = ({ from, source }: Origin): Origin => ({ from, source })
