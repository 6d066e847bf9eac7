import type { Undercut, Underside } from '../feature.ts'
import { undercutWidthAsCut } from '../handbook/edge-sizes.ts'
import { fromPart, told } from '../known.ts'
import { type Limits, middleOf, toleranceOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { asKnown, type FeaturesGiven, takenOff } from './given.ts'
import type { MadeFeature } from './made-feature.ts'

/** Run-out of the cylinder's side. */
const RUN_OUT = Math.tan(Math.PI / 12)

/** Cut deeper and wider by what is ground off the cylinder after it, so that it outlasts the wheel. */
export function planUndercut(given: FeaturesGiven, feature: Undercut): MadeFeature | undefined {
  const { part, turning, notebook, turned } = given
  const { name, band, shoulder, depth, width, radius } = feature
  const below = part.outside.find(one => one.name === band)
  const soft = turned.outside.find(one => one.name === band)?.diameter
  if (!below || soft === undefined) return undefined
  const z = takenOff(given, band)
  const wide = (f: number, off: number): number =>
    notebook.use(
      undercutWidthAsCut,
      { ...told(fromPart(`width of ${name}`), { f }), z: asKnown(off, `taken off ${band} after turning`) },
      { operation: turning, about: name },
    )
  // It must outlast the wheel: cut for the most that comes off, and to the deviations of its own from there.
  const least = wide(width.lower, z.most)
  const widthCut = { nominal: least, lower: least, upper: least + toleranceOf(width) }
  const floor = soft - 2 * (depth.lower + z.most)
  const floorCut = { nominal: floor, lower: floor - 2 * toleranceOf(depth), upper: floor }
  const finished = middleOf(below.size)
  const from = below.from
  const foot = finished / 2 - depth.nominal
  const end = from + width.nominal
  return {
    planned: {
      name,
      kind: 'undercut',
      band,
      operation: turning,
      written: feature.written,
      side: 'outside',
      deep: depth.nominal + z.nominal,
      corner: radius,
      line: [
        { depth: from, radius: foot },
        { depth: end - depth.nominal / RUN_OUT, radius: foot },
        { depth: end + z.nominal / RUN_OUT, radius: finished / 2 + z.nominal },
      ].filter(({ depth: at }) => at >= from),
    },
    cut: sizesOf(name, widthCut, floorCut, `${feature.written}, below ${shoulder}`),
    finished: [],
  }
}

const sizesOf = (name: string, wide: Limits, floor: Limits, drawn: string): readonly OperationSize[] => [
  {
    feature: name,
    measure: 'width',
    of: 'undercut',
    nominal: wide.nominal,
    lower: wide.lower,
    upper: wide.upper,
    drawn,
  },
  { feature: name, measure: 'diameter', of: 'floor', nominal: floor.nominal, lower: floor.lower, upper: floor.upper },
]

/** A face that is turned with the band below it, and left so. */
export const planUnderside = ({ turning }: FeaturesGiven, feature: Underside): MadeFeature => ({
  planned: {
    name: feature.name,
    kind: 'underside',
    band: feature.band,
    operation: turning,
    written: feature.written,
    side: 'outside',
    ...(feature.roughness !== undefined && { roughness: feature.roughness }),
    ...(feature.square !== undefined && { square: feature.square }),
  },
  cut: [],
  finished: [],
})
