import type { Groove } from '../feature.ts'
import { grooveFloorAsCut, grooveWidthAsCut } from '../handbook/grooves.ts'
import { fromPart, told } from '../known.ts'
import { type Limits, middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { asKnown, type FeaturesGiven, faceGrowth, floorGrowth, outward } from './given.ts'
import type { MadeFeature } from './made-feature.ts'
import { withinGrowth } from './within-growth.ts'

/** Both flanks and the floor grow; the surface beside it is ground, the groove is not. */
export function planGroove(given: FeaturesGiven, feature: Groove): MadeFeature {
  const { turning, notebook, turned } = given
  const { name, side, band, at, width, floor, roughness, corner } = feature
  const about = { operation: turning, about: name }
  const out = outward(side)
  const flank = faceGrowth(given, [name, band, side])
  const ground = floorGrowth(given, name, side, band)
  const wide = (b: number, g: number): number =>
    notebook.use(
      grooveWidthAsCut,
      {
        ...told(fromPart(`width of ${name}`), { b }),
        g: asKnown(g, 'growth of a treated face; none where it is not hardened'),
      },
      about,
    )
  const deep = (d: number, g: number): number =>
    notebook.use(
      grooveFloorAsCut,
      {
        ...told(fromPart(name), { d }),
        g: asKnown(out * g, `growth of the wall at ${band}; none where it is not hardened`),
      },
      about,
    )
  const widthCut = withinGrowth(given, feature, {
    nominal: grooveWidthAsCut.value({ b: width.nominal, g: flank.nominal }),
    lower: wide(width.lower, flank.most),
    upper: wide(width.upper, flank.least),
  })
  const [toLower, toUpper] = out > 0 ? [ground.least, ground.most] : [ground.most, ground.least]
  const floorCut = withinGrowth(given, feature, {
    nominal: grooveFloorAsCut.value({ d: floor.nominal, g: out * ground.nominal }),
    lower: deep(floor.lower, toLower),
    upper: deep(floor.upper, toUpper),
  })
  const from = at.nominal
  const to = from + middleOf(width)
  const radius = middleOf(floor) / 2
  const surface = turned[side].find(one => one.name === band)?.diameter ?? 2 * radius
  const shift = -turned.top
  const sizes = (widths: Limits, floors: Limits, place: Limits): readonly OperationSize[] => [
    { ...limitsOf(widths), feature: name, measure: 'width', of: 'groove', drawn: width.written },
    {
      ...limitsOf(floors),
      feature: name,
      measure: 'diameter',
      of: side === 'bore' ? 'floor in the bore' : 'floor',
      drawn: floor.written,
      ...(roughness !== undefined && { roughness }),
    },
    { ...limitsOf(place), feature: name, measure: 'depth', of: 'place', drawn: at.written },
  ]
  return {
    planned: {
      name,
      kind: 'groove',
      band,
      operation: turning,
      written: feature.written,
      side,
      deep: (out * (surface - middleOf(floorCut))) / 2,
      line: [
        { depth: from, radius },
        { depth: to, radius },
      ],
      ...(corner !== undefined && { corner }),
      ...(roughness !== undefined && { roughness }),
    },
    cut: sizes(widthCut, floorCut, { nominal: at.nominal + shift, lower: at.lower + shift, upper: at.upper + shift }),
    finished: sizes(width, floor, at),
  }
}

const limitsOf = ({ nominal, lower, upper }: Limits): Limits => ({ nominal, lower, upper })
