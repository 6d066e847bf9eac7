import schema from '../../src/part/part.schema.json' with { type: 'json' }
import type { Kind } from './drawn-grades.ts'
import type { Random } from './random.ts'

type Json = Record<string, unknown>

const FEATURES = schema.properties.body.properties as Json

export const rounded = (value: number, to: number): number => Number((Math.round(value / to) * to).toFixed(6))
export const clamped = (value: number, least: number, most: number): number => Math.min(most, Math.max(least, value))

/** Bores 15 to 120, walls 2.5 to 12, lengths to 250: what the lathe, mill and grinder of a small works take. */
export type Sizes = { readonly bore: number; readonly length: number; readonly wall: number; readonly flange: number }

/** A tolerance grade goes with the roughness that it can be measured on. */
const ROUGHNESS = { '5': [0.2, 0.4], '6': [0.4, 0.8], '7': [0.8, 0.8, 1.6], '8': [0.8, 1.6], '9': [1.6, 3.2] } as const

/**
 * How the finished part is made decides what is drawn: ground after a case, turned soft, or used as it comes from a thin
 * treatment, which a works holds to the eighth grade and to the form that the heat leaves (memory: nitrocarburised layers grow
 * 5 to 11 µm a side, and thin sleeves go some hundredths out of round).
 */
export type Made = 'soft' | 'cased' | 'quenched' | 'thin layer'

function fitsOf(kind: Kind, made: Made, soft: boolean): readonly string[] {
  if (soft && kind !== 'pin') return ['h7', 'h8', 'n6', 'p6']
  if (made === 'thin layer') return ['h8', 'f8', 'h9']
  if (kind === 'pin') return made !== 'soft' ? ['h5', 'h6', 'h6', 'g6'] : ['h6', 'h7', 'h8']
  return made !== 'soft' ? ['g6', 'h6', 'h7'] : ['g6', 'h7', 'h7', 'f7', 'h8']
}

export function bodyOf(
  random: Random,
  kind: Kind,
  { bore, length, wall, flange }: Sizes,
  { flanged, treated, soft }: { flanged: boolean; treated: Made; soft: boolean },
): Json {
  const outside = rounded(bore + 2 * wall, 0.01)
  if (kind === 'piston')
    return {
      length: `${length} ${random.pick(['±0.05', '±0.1'])}`,
      outside: [
        { to: rounded(length * 0.3, 0.5), size: `${rounded(bore * 0.995, 0.01)} ±0.03`, name: 'crown land' },
        {
          to: length,
          size: `${rounded(bore * 0.9988, 0.01)} ${random.pick(soft ? ['±0.01', '±0.015', '±0.02'] : ['±0.015', '±0.02'])}`,
          Ra: 1.6,
          name: 'skirt',
        },
      ],
    }
  const fit = random.any(fitsOf(kind, treated, soft)) ?? 'h7'
  const seat = {
    size: `${outside} ${fit}`,
    ...(random.chance(0.8) && { Ra: random.any(ROUGHNESS[fit.slice(-1) as keyof typeof ROUGHNESS]) }),
    ...(kind !== 'pin' &&
      random.chance(0.3) && { runout: treated === 'thin layer' ? 0.03 : random.pick([0.015, 0.02, 0.03]) }),
    ...(kind === 'pin' &&
      (treated === 'cased' || treated === 'quenched') &&
      random.chance(0.4) && { roundness: random.pick([0.002, 0.003]) }),
  }
  const running = {
    size: `${bore} ${soft || treated === 'thin layer' ? random.pick(soft ? ['H7', 'H8', 'H8'] : ['H8', 'H8', 'H9']) : random.pick(['H6', 'H7', 'H7'])}`,
    Ra: treated === 'thin layer' ? 0.8 : soft ? random.pick([0.4, 0.8, 0.8]) : random.pick([0.2, 0.3, 0.4, 0.6]),
    ...(treated !== 'thin layer' &&
      random.chance(0.5) && { cylindricity: rounded(clamped(bore / 8000, 0.006, 0.015), 0.001) }),
    ...(kind === 'liner' && random.chance(0.05) && { taper: random.pick([0.02, 0.03, 0.04]) }),
  }
  const recess = rounded(random.between(2, 5), 0.5)
  const wide = rounded(bore + clamped(wall * 0.4, 0.5, 2), 0.5)
  return {
    // What is quenched grows by a tenth of a per cent more or less: it is drawn for that, or its ends are ground.
    length: `${length} ${treated === 'quenched' ? random.pick(length > 80 ? ['±0.2', '+0/-0.4', 'h12'] : ['±0.1', '±0.2', '+0/-0.2', 'h12']) : random.pick(['±0.05', '±0.1', '±0.1', '±0.2', '+0/-0.1', 'h11'])}`,
    outside: flanged
      ? [
          {
            to: rounded(random.between(3, 8), 0.5),
            size: `${rounded(outside + 2 * flange, 0.5)} ${random.pick(['h9', 'h11'])}`,
            name: 'flange',
          },
          { to: length, name: 'seat', ...seat },
        ]
      : seat,
    ...(bore > 0 && {
      bore:
        kind === 'pin'
          ? `${bore} ±0.1`
          : kind === 'liner' && random.chance(0.1)
            ? [
                { to: recess, size: `${wide} H9`, name: 'recess' },
                { to: length, name: 'running bore', ...running },
              ]
            : running,
    }),
    ...(kind === 'liner' &&
      random.chance(0.6) && {
        top: { Ra: random.pick([0.8, 1.6]), ...(treated !== 'thin layer' && random.chance(0.4) && { flatness: 0.01 }) },
      }),
  }
}

/** What a drawing may have beside its bands, as far as the part file has words for it. */
export function featuresOf(random: Random, { bore, length, wall }: Sizes, kind: Kind): Json {
  if (kind === 'pin' || kind === 'piston' || wall < 4 || length < 40 || !random.chance(0.2)) return {}
  const outside = bore + 2 * wall
  return {
    ...('grooves' in FEATURES && {
      grooves: [
        {
          name: 'O-ring',
          on: 'outside',
          at: rounded(length * 0.85, 1),
          width: '2.4 +0.2/0',
          size: `${rounded(outside - 2.6, 0.1)} h11`,
        },
      ],
    }),
    ...('holes' in FEATURES &&
      random.chance(0.5) && {
        holes: [{ name: 'oil', at: 90, depth: rounded(length - 6, 1), size: '3 H12', through: 'wall' }],
      }),
  }
}
