import type { Surface } from '../band.ts'
import { GROUND_ROUNDNESS } from '../handbook/distortion.ts'
import { cutOffFor } from '../handbook/roughness-measurement.ts'
import type { Part } from '../part/part.ts'
import type { Process } from '../process.ts'
import type { Micrometre } from '../units.ts'
import type { Weight } from './sample-size.ts'
import type { Wanted, Where } from './wanted.ts'

/** A surface of the part by name: what is asked of it, and how far across it is. */
export type NamedSurface = {
  readonly feature: string
  readonly surface: Surface
  readonly across: number
  /** Ports break through it, or may. */
  readonly ported: boolean
}

export function surfacesOf(part: Part): readonly NamedSurface[] {
  const across = Math.max(...part.outside.map(({ size }) => size.nominal))
  return [
    ...[...part.outside, ...part.bore].map(band => ({
      feature: band.name,
      surface: band,
      across: band.size.nominal,
      ported: part.ports.length > 0,
    })),
    { feature: 'top', surface: part.top, across, ported: false },
    { feature: 'bottom', surface: part.bottom, across, ported: false },
  ]
}

const LOBES = 'a two-point gauge does not see lobes'

/** What the drawing asks of a surface beyond its size, as `process` leaves it. */
export function formWanted(
  { feature, surface, across, ported }: NamedSurface,
  process: Process | undefined,
  weight: Weight,
  where: Where,
): readonly Wanted[] {
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
            reach: across,
            feature,
            weight,
            ...(remark && { remark }),
          },
        ]
  return [
    ...zone('cylindricity', surface.cylindricity, LOBES),
    ...zone('roundness', surface.roundness, LOBES),
    ...zone('run-out', surface.runout),
    ...zone('flatness', surface.flatness),
    ...zone('perpendicularity', surface.perpendicularity),
    ...(surface.roughness === undefined
      ? []
      : [roughness({ feature, upper: surface.roughness, ported, process, where })]),
  ]
}

/** Roundness and roughness height that a bore is ground to where it is honed next: the hone's stock rests on both. */
export function groundForHoning(
  { feature, across, ported }: NamedSurface,
  groundRoughness: Micrometre,
  where: Where,
): readonly Wanted[] {
  const places = ported ? 'three places, clear of the ports' : 'three places'
  return [
    {
      ...where,
      name: `${feature} roundness`,
      kind: 'form',
      unit: 'mm',
      upper: GROUND_ROUNDNESS,
      reach: across,
      feature,
      weight: 'major',
      remark: `${LOBES}; the stock of the hone rests on it`,
    },
    {
      ...where,
      name: `${feature} roughness Rz`,
      kind: 'roughness',
      unit: 'µm',
      upper: groundRoughness,
      feature,
      weight: 'major',
      remark: `${places}; the stock of the hone rests on it`,
    },
  ]
}

function roughness({
  feature,
  upper,
  ported,
  process,
  where,
}: {
  readonly feature: string
  readonly upper: number
  readonly ported: boolean
  readonly process: Process | undefined
  readonly where: Where
}): Wanted {
  const setting = cutOffFor(upper)
  const remarks = [
    ...(setting ? [`cut-off ${setting.cutOff} mm over ${setting.evaluation} mm`] : []),
    ported ? 'three places, clear of the ports' : 'three places',
    ...(process === 'hone' ? ['Ra alone passes peaks too: look at Rpk and Rvk'] : []),
  ]
  return {
    ...where,
    name: `${feature} roughness Ra`,
    kind: 'roughness',
    unit: 'µm',
    upper,
    feature,
    weight: 'major',
    remark: remarks.join('; '),
  }
}
