import type { Band } from '../band.ts'
import type { Chamfer } from '../feature.ts'
import { chamferAsCut, smallEnd } from '../handbook/edge-sizes.ts'
import { fromPart, told, worked } from '../known.ts'
import { type Limits, middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { radians } from '../units.ts'
import type { LinePoint } from './feature-plan.ts'
import { asKnown, type FeaturesGiven, outward, takenOff } from './given.ts'
import type { MadeFeature } from './made-feature.ts'
import { withinGrowth } from './within-growth.ts'

/** Cut longer by what is ground off the surface and the end later. */
export function planChamfer(given: FeaturesGiven, feature: Chamfer): MadeFeature | undefined {
  const { part, turning, notebook, turned } = given
  const bands = part[feature.side]
  const index = bands.findIndex(({ name }) => name === feature.band)
  const band = bands[index]
  if (!band) return undefined
  const { length, angle, name, side, end } = feature
  const face = end === 'upper' && index === 0 ? 'top' : end === 'lower' && index === bands.length - 1 ? 'bottom' : ''
  const [off, faced] = [takenOff(given, feature.band), takenOff(given, face)]
  const about = { operation: turning, about: name }
  const cutAt = (c: number, s: number, f: number, use = chamferAsCut.value): number => use({ c, s, alpha: angle, f })
  const nominal = notebook.use(
    chamferAsCut,
    {
      ...told(fromPart(name), { c: length.nominal, alpha: angle }),
      s: asKnown(off.nominal, `taken off ${feature.band} after turning, nominal`),
      f: asKnown(faced.nominal, face ? `taken off ${face} after turning, nominal` : 'an edge whose face is not ground'),
    },
    about,
  )
  const cut = withinGrowth(given, feature, {
    nominal,
    lower: cutAt(length.lower, off.most, faced.most),
    upper: cutAt(length.upper, off.least, faced.least),
  })
  const soft = turned[side].find(one => one.name === feature.band)?.diameter ?? band.size.nominal
  const out = outward(side)
  const endOf = (D: number, c: number, noted: boolean): number => {
    const d = noted
      ? notebook.use(
          smallEnd,
          {
            ...told(worked('diameter as it is turned, middle of its limits'), { D }),
            ...told(worked('as turned'), { c }),
            ...told(fromPart(name), { alpha: angle }),
          },
          about,
        )
      : smallEnd.value({ D, c, alpha: angle })
    return out > 0 ? d : 2 * D - d
  }
  return {
    planned: {
      name,
      kind: feature.kind,
      band: feature.band,
      operation: turning,
      written: feature.written,
      side,
      angle,
      line: lineOf(feature, band, { surface: off.nominal, face: faced.nominal }),
      end: { cut: endOf(soft, nominal, true), finished: endOf(middleOf(band.size), length.nominal, false) },
    },
    cut: [sizeOf(feature, cut)],
    finished: [sizeOf(feature, length)],
  }
}

const sizeOf = ({ name, written }: Chamfer, { nominal, lower, upper }: Limits): OperationSize => ({
  feature: name,
  measure: 'length',
  of: 'chamfer',
  nominal,
  lower,
  upper,
  drawn: written,
})

/** One straight line, whatever is ground off around it. */
function lineOf(
  { length, angle, end, side }: Chamfer,
  band: Band,
  off: { readonly surface: number; readonly face: number },
): readonly LinePoint[] {
  const out = outward(side)
  const slope = Math.tan(radians(angle))
  const radius = middleOf(band.size) / 2
  const along = end === 'upper' ? 1 : -1
  const edge = end === 'upper' ? band.from : band.to.nominal
  const at = (distance: number) => ({
    depth: edge + along * distance,
    radius: radius - out * slope * (length.nominal - distance),
  })
  const points = [at(-off.face), at(length.nominal + off.surface / slope)]
  return end === 'upper' ? points : points.toReversed()
}
