import { LONGEST_OVERHANG } from '../handbook/boring-bar.ts'
import type { Millimetre } from '../units.ts'
import type { Shop } from './shop.ts'
import {
  type Abrasive,
  type BarMaterial,
  type BoringBar,
  type Drill,
  type EndMill,
  type Hone,
  type InternalWheel,
  type Tool,
  type ToolKind,
  type ToolOf,
  toolsOf,
} from './tool.ts'

const steps = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, index) => Number((from + index * by).toFixed(3)))

/** Flutes over diameter that drills are sold with: a short, a long and an extra long row, small ones for deep holes; large ones have changeable edges. */
const FLUTES = [
  { upTo: 12, over: [5, 8, 12, 20] },
  { upTo: 20, over: [5, 8, 12, 15] },
  { upTo: 33, over: [5, 8] },
  { upTo: 60, over: [5] },
] as const

/** Memory: twist drills by tenths to 13 (DIN 338), by halves to 20, by ones and twos over it. */
const DRILL_SIZES = [...steps(1, 13, 0.1), ...steps(13.5, 20, 0.5), ...steps(21, 33, 1), ...steps(34, 60, 2)]

const DRILLS: readonly Drill[] = DRILL_SIZES.flatMap(diameter =>
  (FLUTES.find(({ upTo }) => diameter <= upTo)?.over ?? []).map(over => ({
    name: `drill ${diameter}, ${over} D`,
    kind: 'drill' as const,
    diameter,
    fluteLength: Number((over * diameter).toFixed(1)),
    reach: Number((over * diameter + Math.max(10, diameter)).toFixed(1)),
    shank: Math.max(3, Math.ceil(diameter)),
    point: 140,
  })),
)

const BAR_NOSES: readonly (readonly [BarMaterial, number])[] = [
  ['steel', 0.4],
  ['carbide', 0.4],
  ['damped', 0.4],
]

/** As far out as each may stand; under 10 mm of solid carbide, for a damper goes into no thinner bar (memory). */
const BARS: readonly BoringBar[] = [4, 5, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50].flatMap(diameter =>
  BAR_NOSES.filter(([material]) => material === 'carbide' || diameter >= 10).map(([material, nose]) => ({
    name: `boring bar ${diameter}, ${material}`,
    kind: 'boring bar' as const,
    diameter,
    reach: LONGEST_OVERHANG[material] * diameter,
    noseRadius: diameter < 10 ? 0.2 : nose,
    material,
  })),
)

/** Solid carbide on a shank of 6 mm, edges of one and a half diameters on a neck a twentieth thinner; to twelve diameters. */
const END_MILLS: readonly EndMill[] = [0.8, 1, 1.2, 1.5, 2, 2.5, 3, 4, 5].flatMap(diameter =>
  [6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 36]
    .filter(neck => neck >= 3 * diameter && neck <= 12 * diameter)
    .flatMap(neck =>
      [12, 30].map(behind => ({
        name: `end mill ${diameter}, neck ${neck}${behind > 12 ? `, ${neck + behind} out` : ''}`,
        kind: 'end mill' as const,
        diameter,
        fluteLength: neck,
        reach: neck + behind,
        shank: 6,
        teeth: diameter < 1.5 ? 2 : 4,
        neck: { diameter: Number((0.95 * diameter).toFixed(3)), edges: Number((1.5 * diameter).toFixed(2)) },
      })),
    ),
)

/** Internal wheels to 80 mm; nobody grinds a bore with one under 6. Its quill is two thirds of it and four times as long. */
const WHEELS: readonly InternalWheel[] = [6, 8, 10, 13, 16, 20, 25, 30, 36, 45, 50, 63, 80].map(diameter => ({
  name: `internal wheel ${diameter}`,
  kind: 'internal wheel',
  diameter,
  width: Math.min(25, Math.max(6, diameter)),
  quill: { diameter: Math.round(0.65 * diameter), length: 4 * Math.round(0.65 * diameter) },
  grade: 'A 80 I 8 V',
}))

/** Short ones are cut from longer. */
const STONES: readonly Millimetre[] = [6, 8, 10, 12, 16, 20, 25, 30, 40, 50, 60, 80, 100, 125, 150]
const ABRASIVES: readonly Abrasive[] = ['A', 'C']

const HONES: readonly Hone[] = STONES.flatMap(length =>
  ABRASIVES.flatMap(abrasive =>
    [150, 220, 280, 400].map(grit => ({
      name: `hone, ${length} mm stones, ${grit} grit${abrasive === 'C' ? ' for iron' : ''}`,
      kind: 'hone' as const,
      stones: { count: length > 30 ? 6 : 4, length, abrasive, grit },
    })),
  ),
)

/**
 * Tools that any dealer has, for a works that lacks one. Sizes and lengths: common practice, no source, but the diameters
 * of drills; a works that gets one lists it with the figures of the one it got.
 */
const TO_GET: readonly Tool[] = [...DRILLS, ...BARS, ...END_MILLS, ...WHEELS, ...HONES]

/** The tools of one kind that can be got. */
export const toolsToGet = <K extends ToolKind>(kind: K): readonly ToolOf<K>[] => toolsOf({ tools: TO_GET }, kind)

/** A tool by its name: on hand, or to be got. */
export const toolNamed = <K extends ToolKind>(
  shop: Pick<Shop, 'tools'>,
  kind: K,
  wanted: string | undefined,
): ToolOf<K> | undefined =>
  wanted === undefined
    ? undefined
    : (toolsOf(shop, kind).find(({ name }) => name === wanted) ?? toolsToGet(kind).find(({ name }) => name === wanted))

/** Of those that can be got the one of that name. */
export const namedToGet = (wanted: string): Tool | undefined => TO_GET.find(({ name }) => name === wanted)

/** Whether a tool is on hand by that name. */
export const isOnHand = ({ tools }: Pick<Shop, 'tools'>, wanted: string): boolean =>
  tools.some(({ name }) => name === wanted)

/** What a choice gives of the tools on hand; where that is nothing, of those that can be got. */
export function handOrGet<K extends ToolKind, T>(
  shop: Pick<Shop, 'tools'>,
  kind: K,
  choose: (tools: readonly ToolOf<K>[]) => T | undefined,
): T | undefined {
  return choose(toolsOf(shop, kind)) ?? choose(toolsToGet(kind))
}
