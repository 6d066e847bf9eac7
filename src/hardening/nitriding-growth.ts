import { caseStressOf, HOT_CASE, IRON } from '../handbook/case-stress.ts'
import type { CompoundLayer } from '../handbook/compound-layer.ts'
import { hardeningWindow } from '../handbook/hardening-processes.ts'
import { SHAPE, SHAPE_SOURCE } from '../handbook/hardness-profile.ts'
import { materialOf } from '../handbook/materials.ts'
import { GROWTH_COEFFICIENTS, growthPerSide, STEEL } from '../handbook/nitriding-growth.ts'
import type { Elastic } from '../handbook/shell-of-bands.ts'
import { bandStretch, caseStress, profileFactor } from '../handbook/wall-stretch.ts'
import { fromHandbook, type KnownSpread, known, told, worked } from '../known.ts'
import type { Spread } from '../limits.ts'
import type { Part } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import { type Millimetre, millimetres } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import { caseCycle, layerOf } from './case-cycle.ts'
import { caseFigures } from './case-figures.ts'
import { boreOf, seatOf } from './case-surfaces.ts'
import type { BandGrowth, Growth, ShareSpread } from './growth.ts'
import { noteBand, noteWall, type Stretching } from './growth-notes.ts'
import { meanOver, movedOut, movementBetween, type PlaceMovement, rangeOver, wallMovement } from './wall-movement.ts'
import { sidesIn, type WallSection, wallsAlong } from './walls-along.ts'

export type DepthRange = { readonly least: Millimetre; readonly most: Millimetre }

/**
 * At the corner of a treated end the last half millimetre moves by itself: no size is taken there. Where both sides are
 * treated a shell overstates the last wall, and what it gives one wall in covers the end itself (finite elements: 6.96 µm at
 * the end of a tube 54/60, the shell 7.2 at one wall).
 */
const CORNER = 0.5
const NOTHING: Spread = { least: 0, nominal: 0, most: 0 }
const about = { about: 'growth' }

/** Mean compression of the case, from the stress at its surface and the shape of its hardness. */
export function meanCaseStress(notebook: Notebook, part: Part, shop: Shop): ShareSpread | undefined {
  const row = caseStressOf(part.material.grade)
  const window = part.hardening && hardeningWindow(part.hardening.process)
  const cycle = caseCycle(part, shop)
  if (!row || !window || !cycle) return undefined
  const figures = caseFigures(SCRATCH, part, shop, window)
  const own = 'missing' in figures || figures.surface.usual - figures.core.value <= 60 ? undefined : figures
  const origin = fromHandbook(row.source)
  const phi = notebook.use(
    profileFactor,
    {
      H_s: own ? known(own.surface.usual, 'HV', own.surface) : known(row.surface, 'HV', origin),
      H_c: own ? own.core : known(row.core, 'HV', origin),
      ...told(fromHandbook(SHAPE_SOURCE), { n: SHAPE.expected }),
    },
    about,
  )
  const hot = cycle.stages.length > 1 || cycle.temperature.value > HOT_CASE.over
  const c = known(hot ? HOT_CASE.left : 1, '', fromHandbook(HOT_CASE.source))
  const s_0 = (s_s: number) => notebook.use(caseStress, { s_s: known(s_s, 'MPa', origin), phi, c }, about)
  return { least: s_0(row.least), nominal: s_0(row.usual), most: s_0(row.most), ...origin }
}

/** Elastic constants of the wall. */
export const elasticOf = ({ material }: Part): Elastic => {
  const group = materialOf(material.grade)?.group
  return group === 'grey iron' || group === 'ductile iron' ? IRON : STEEL
}

/** What a treated surface moves out of the metal. It holds no stretch and does not depend on the wall. */
function freeGrowthOf(notebook: Notebook, layer: CompoundLayer, depth: DepthRange): KnownSpread {
  const { diffusion, compound } = GROWTH_COEFFICIENTS
  const C = known(millimetres(layer.usual), 'mm', fromHandbook(layer.source))
  const share = (value: number) => known(value, '', fromHandbook(growthPerSide.source))
  const N = (value: Millimetre) => known(value, 'mm', worked('depth ordered'))
  const at = (end: 'least' | 'usual' | 'most', deep: Millimetre) =>
    notebook.use(growthPerSide, { k_d: share(diffusion[end]), N: N(deep), k_c: share(compound[end]), C }, about)
  return {
    ...worked(`${growthPerSide.symbol}, ${growthPerSide.meaning}`),
    least: at('least', depth.least),
    nominal: at('usual', (depth.least + depth.most) / 2),
    most: at('most', depth.most),
  }
}

/** Growth of a nitrided part, a band at a time: free growth of each surface, and the movement of the wall along the axis. */
export function nitridingGrowth(
  notebook: Notebook,
  { part, shop, depth }: { readonly part: Part; readonly shop: Shop; readonly depth: DepthRange },
): Growth | undefined {
  const layer = layerOf(part, shop)
  const stress = meanCaseStress(notebook, part, shop)
  if (!layer || !stress) return undefined
  const sections = wallsAlong(part)
  const elastic = elasticOf(part)
  const free = freeGrowthOf(notebook, layer, depth)
  const movement = wallMovement(part, sections, elastic)
  noteWall(notebook, { part, sections, elastic, stress, depth })
  const given = { notebook, sections, layer, depth, stress, movement }
  const bands = [
    ...part.outside.map(band => bandGrowth({ ...given, side: 'outside', name: band.name })),
    ...part.bore.map(band => bandGrowth({ ...given, side: 'bore', name: band.name })),
  ]
  const of = (side: BandGrowth['side'], name: string | undefined): KnownSpread =>
    bands.find(band => band.side === side && band.surface === name)?.growth ?? { ...NOTHING, ...worked('not there') }
  return {
    outside: of('outside', seatOf(part)?.name),
    bore: of('bore', boreOf(part)?.name),
    bands,
    face: free,
    ...stretchAlong({ sections, elastic, stress, depth }),
  }
}

/** Along the part every section stretches by its own wall; the share of each in the mean is the same whatever the stress. */
function stretchAlong({ sections, elastic, stress, depth }: Stretching): Pick<Growth, 'along' | 'sections'> {
  const length = (sections.at(-1)?.to ?? 0) - (sections[0]?.from ?? 0)
  const unit = sections.map(section => stretchOf(section, elastic, 1, 1))
  const mean = sections.reduce((sum, { from, to }, index) => sum + (unit[index] ?? 0) * (to - from), 0) / (length || 1)
  const along: ShareSpread = {
    ...worked(`${bandStretch.symbol}, ${bandStretch.meaning}, mean along the part`),
    least: mean * stress.least * depth.least,
    nominal: (mean * stress.nominal * (depth.least + depth.most)) / 2,
    most: mean * stress.most * depth.most,
  }
  return {
    along,
    sections: sections.map(({ to }, index) => ({ to, share: mean === 0 ? 1 : (unit[index] ?? 0) / mean })),
  }
}

const stretchOf = (section: WallSection, { modulus, poisson }: Elastic, s_0: number, depth: Millimetre): number =>
  ((1 - poisson) * s_0 * sidesIn(section) * depth) / (modulus * section.t)

function bandGrowth({
  notebook,
  sections,
  layer,
  depth,
  stress,
  movement,
  side,
  name,
}: {
  readonly notebook: Notebook
  readonly sections: readonly WallSection[]
  readonly layer: CompoundLayer
  readonly depth: DepthRange
  readonly stress: ShareSpread
  readonly movement: readonly PlaceMovement[]
  readonly side: BandGrowth['side']
  readonly name: string
}): BandGrowth {
  const own = sections.filter(section => section[side]?.name === name)
  const treated = own.some(section => section.treated[side])
  const [from, to] = [own[0]?.from ?? 0, own.at(-1)?.to ?? 0]
  const [first, last] = [sections[0], sections.at(-1)]
  const cornerOf = (section: WallSection | undefined): Millimetre =>
    section?.treated.outside && section.treated.bore ? section.t : CORNER
  const start = (first?.from ?? 0) + cornerOf(first)
  const end = (last?.to ?? 0) - cornerOf(last)
  // A band that lies in a corner whole is judged as it is.
  const inner = Math.min(to, end) - Math.max(from, start) > 0 ? [Math.max(from, start), Math.min(to, end)] : [from, to]
  const places = movementBetween(movement, inner[0] ?? from, inner[1] ?? to)
  const middle = (depth.least + depth.most) / 2
  const { diffusion, compound } = GROWTH_COEFFICIENTS
  const C = millimetres(layer.usual)
  const free = (at: 'least' | 'usual' | 'most', N: Millimetre) =>
    treated ? growthPerSide.value({ k_d: diffusion[at], N, k_c: compound[at], C }) : 0
  const outward = side === 'outside' ? 1 : -1
  const corners = [depth.least, depth.most].map(N => {
    const w = rangeOver(places, [stress.least, stress.most], N)
    const [inmost, outmost] = side === 'outside' ? [w.least, w.most] : [-w.most, -w.least]
    return { w, least: free('least', N) + inmost, most: free('most', N) + outmost }
  })
  const least = Math.min(...corners.map(corner => corner.least))
  const most = Math.max(...corners.map(corner => corner.most))
  const mean = meanOver(places, place => movedOut(place, stress.nominal, middle))
  const nominal = free('usual', middle) + outward * mean
  const growth: KnownSpread = {
    ...worked(
      treated ? 'g, growth per side, with the movement of the wall w' : 'w, movement of the wall: takes no case',
    ),
    least: Math.min(least, nominal),
    nominal,
    most: Math.max(most, nominal),
  }
  const wallMoves = {
    least: Math.min(mean, ...corners.map(({ w }) => w.least)),
    nominal: mean,
    most: Math.max(mean, ...corners.map(({ w }) => w.most)),
  }
  noteBand(notebook, { name, side, growth, wallMoves, free: treated ? free('usual', middle) : 0 })
  return { surface: name, side, takesCase: treated, growth, wallMoves }
}
