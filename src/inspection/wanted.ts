import type { Part, Surface } from '../part/part.ts'
import type { PlannedPort } from '../ports/port.ts'
import type { Operation } from '../route/operation.ts'
import type { GaugeKind } from '../shop/shop.ts'
import type { CasePlan, OperationSize } from '../stock/stock.ts'
import type { Characteristic } from './characteristic.ts'

/** One thing to measure, before a gauge and a sample are found for it. */
export type Wanted = {
  readonly name: string
  readonly kind: GaugeKind
  readonly unit: string
  readonly nominal?: number
  readonly lower?: number
  readonly upper?: number
  readonly operation: number
  readonly stage: Characteristic['stage']
  readonly feature: string
  readonly weight: 'critical' | 'major' | 'minor'
  readonly remark?: string
  /** Read off a paper that comes with the work, not off a gauge of ours: what it is called, and its places. */
  readonly certificate?: { readonly name: string; readonly places: number }
}

type Where = Pick<Wanted, 'operation' | 'stage'>

const KIND: { readonly [measure in OperationSize['measure']]: GaugeKind } = {
  diameter: 'outside',
  length: 'length',
  depth: 'depth',
  height: 'contour',
  width: 'contour',
}

/** A size of an operation, as it must measure there. */
export function sizeWanted(part: Part, size: OperationSize, where: Where): Wanted {
  const { feature, measure, edge, nominal, lower, upper } = size
  const inBore = part.bore.some(({ name }) => name === feature)
  const isPort = part.ports.some(({ name }) => name === feature)
  const what = edge ? `${edge} edge` : measure === 'diameter' ? 'diameter' : feature === measure ? '' : measure
  return {
    ...where,
    name: [feature, what].filter(Boolean).join(' '),
    kind: measure === 'diameter' && inBore ? 'bore' : KIND[measure],
    unit: 'mm',
    nominal,
    lower,
    upper,
    feature,
    weight: inBore || (isPort && edge === 'top') ? 'critical' : 'major',
    ...(inBore &&
      part.ports.length > 0 && { remark: 'measure above and below the ports, at three heights and two directions' }),
  }
}

/** What the drawing asks of a surface beyond its size. */
export function formWanted(feature: string, surface: Surface, where: Where): readonly Wanted[] {
  const zone = (name: string, upper: number | undefined, remark?: string): readonly Wanted[] =>
    upper === undefined
      ? []
      : [
          {
            ...where,
            name: `${feature} ${name}`,
            kind: 'form',
            unit: 'mm',
            upper,
            feature,
            weight: 'critical',
            ...(remark && { remark }),
          },
        ]
  return [
    ...zone('cylindricity', surface.cylindricity, 'a two-point gauge does not see lobes'),
    ...zone('roundness', surface.roundness, 'a two-point gauge does not see lobes'),
    ...zone('run-out', surface.runout),
    ...zone('flatness', surface.flatness),
    ...zone('perpendicularity', surface.perpendicularity),
    ...(surface.roughness === undefined
      ? []
      : [
          {
            ...where,
            name: `${feature} roughness Ra`,
            kind: 'roughness' as const,
            unit: 'µm',
            upper: surface.roughness,
            feature,
            weight: 'major' as const,
            remark: 'three places, clear of the ports',
          },
        ]),
  ]
}

/** A window's edges in the finished bore, by what the works allows on them. */
export function finishedPorts(ports: readonly PlannedPort[], tolerance: number, where: Where): readonly Wanted[] {
  return ports.flatMap(port =>
    port.windows.map(
      (window, index): Wanted => ({
        ...where,
        name:
          port.windows.length > 1 ? `${port.name} ${index + 1} top edge, finished` : `${port.name} top edge, finished`,
        kind: 'depth',
        unit: 'mm',
        nominal: window.edges.finished.highest,
        lower: window.edges.finished.highest - tolerance / 2,
        upper: window.edges.finished.highest + tolerance / 2,
        feature: port.name,
        weight: 'critical',
        remark: 'from the finished top face to the highest point of the edge',
      }),
    ),
  )
}

const OF_CASE = { feature: 'coupon', weight: 'critical' } as const

/** What comes back from the hardener: on the coupon, and on the pieces. */
export function hardeningWanted(part: Part, plan: CasePlan, where: Where): readonly Wanted[] {
  return [
    {
      ...where,
      ...OF_CASE,
      name: 'case depth on the coupon',
      kind: 'visual',
      certificate: { name: "hardener's traverse", places: 2 },
      unit: 'mm',
      lower: plan.ordered.least,
      upper: plan.ordered.most,
      remark: plan.definition,
    },
    {
      ...where,
      ...OF_CASE,
      name: 'core hardness',
      kind: 'hardness',
      unit: 'HV',
      nominal: plan.coreHardness,
    },
    ...part.outside.map(
      ({ name, size }): Wanted => ({
        ...where,
        name: `${name} out of round, as returned`,
        kind: 'form',
        unit: 'mm',
        nominal: size.nominal,
        feature: name,
        weight: 'major',
        remark: 'largest less smallest of four directions; write it into the shop file',
      }),
    ),
  ]
}

/** Hardness and cracks of the finished piece. */
export function finishedCase(part: Part, plan: CasePlan, where: Where): readonly Wanted[] {
  const asked = part.hardening?.hardness?.least
  return [
    ...(asked === undefined
      ? []
      : [
          {
            ...where,
            name: 'hardness of the finished surface',
            kind: 'hardness' as const,
            unit: 'HV',
            lower: asked,
            feature: 'bore',
            weight: 'critical' as const,
            remark: `${plan.testLoad} at most, three places, the deepest-ground side among them; on the ground coupon where the piece may not be marked`,
          },
        ]),
    {
      ...where,
      name: 'cracks by magnetic particle, after grinding',
      kind: 'visual',
      unit: '-',
      feature: 'all surfaces',
      weight: 'critical',
      remark: 'reject any crack; demagnetise and clean after; no temper etch on a nitrided surface',
    },
  ]
}

/** Marks and edges, by eye. */
export const edgesWanted = (operation: Operation): Wanted => ({
  operation: operation.number,
  stage: 'in-process',
  name: 'every edge broken, no burr',
  kind: 'visual',
  unit: '-',
  feature: 'edges',
  weight: 'minor',
})
