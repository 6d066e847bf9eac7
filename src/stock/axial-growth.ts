import { depthGrowth, endGrowth } from '../handbook/axial-growth.ts'
import { type Growth, type ShareSpread, type StretchedSection, stretchedDepth } from '../hardening/growth.ts'
import { type KnownSpread, known, type Origin, told, worked } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { Notebook } from '../working.ts'

/** What moves the faces of a part: free growth at each treated face, and the stretch of the metal between them. */
export type AxialGrowth = {
  readonly free: KnownSpread
  readonly stretch: ShareSpread
  /** The lengths of one wall; none where the part stretches alike all along. */
  readonly sections: readonly StretchedSection[]
  /** Whether the top face takes case. */
  readonly topOpen: boolean
}

export const NO_AXIAL_GROWTH: AxialGrowth = {
  free: { least: 0, nominal: 0, most: 0, ...worked('no growth: not treated') },
  stretch: { least: 0, nominal: 0, most: 0, ...worked('no stretch: not treated') },
  sections: [],
  topOpen: false,
}

/** A face that looks down moves away from the top face, one that looks up moves with it. */
export type Looks = 'up' | 'down'

/** How a depth below the top face, or the whole length, grows at each end of the range. */
export function growthOfDepth(growth: AxialGrowth, looks: Looks, depth: Millimetre): Spread {
  const { free, stretch, sections, topOpen } = growth
  const n = (topOpen ? 1 : 0) + (looks === 'down' ? 1 : -1)
  const z = stretchedDepth(sections, depth)
  const at = (end: keyof Spread) => depthGrowth.value({ n, F: free[end], epsilon: stretch[end], z })
  const found = { least: at('least'), nominal: at('nominal'), most: at('most') }
  return found.least <= found.most ? found : { ...found, least: found.most, most: found.least }
}

/** Growth at each end of a length, as a finish that starts from the one and cuts the other meets it. */
export function growthAtEnds(notebook: Notebook, growth: AxialGrowth, length: Millimetre): KnownSpread {
  const { free, stretch, sections, topOpen } = growth
  const at = (end: keyof Spread): Millimetre =>
    notebook.use(
      endGrowth,
      {
        ...told(worked('faces that take case'), { n: topOpen ? 2 : 1 }),
        F: known(free[end], 'mm', free),
        epsilon: known(stretch[end], '', stretch),
        ...told(worked('length, by the walls along it'), { L: stretchedDepth(sections, length) }),
      },
      { about: `faces, ${end}` },
    )
  const measured = [free, stretch].find(({ from }) => from === 'measured')
  return {
    ...(measured ? originOf(measured) : worked(`${endGrowth.symbol}, ${endGrowth.meaning}`)),
    least: at('least'),
    nominal: at('nominal'),
    most: at('most'),
  }
}

export const axialGrowth = ({ face, along, sections }: Growth, topOpen: boolean): AxialGrowth => ({
  free: face,
  stretch: along,
  sections,
  topOpen,
})

const originOf = ({ from, source }: Origin): Origin => ({ from, source })
