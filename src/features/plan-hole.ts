import type { CutOut, Hole } from '../feature.ts'
import { grooveWidthAsCut } from '../handbook/grooves.ts'
import { fromPart, told } from '../known.ts'
import { type Limits, middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import { asKnown, type FeaturesGiven, faceGrowth } from './given.ts'
import type { MadeFeature } from './made-feature.ts'
import { withinGrowth } from './within-growth.ts'

/** A hollow closes by twice the growth of its wall. */
function hollowAsCut(given: FeaturesGiven, feature: Hole | CutOut, size: Limits, operation: number): Limits {
  const { notebook } = given
  const wall = faceGrowth(given, [feature.name, feature.band, 'outside'])
  const cut = (b: number, g: number): number =>
    notebook.use(
      grooveWidthAsCut,
      {
        ...told(fromPart(feature.name), { b }),
        g: asKnown(g, 'growth of a treated face; none where it is not hardened'),
      },
      { operation, about: feature.name },
    )
  return withinGrowth(given, feature, {
    nominal: grooveWidthAsCut.value({ b: size.nominal, g: wall.nominal }),
    lower: cut(size.lower, wall.most),
    upper: cut(size.upper, wall.least),
  })
}

export function planHole(given: FeaturesGiven, feature: Hole, operation: number): MadeFeature {
  const { part, turned } = given
  const { name, band, size, depth, circle, through, at } = feature
  const around = part.outside.find(one => one.name === band)
  const shift = -turned.top
  const sizes = (diameter: Limits, lower: Limits | undefined): readonly OperationSize[] => [
    { ...limitsOf(diameter), feature: name, measure: 'diameter', of: 'hole', drawn: size.written },
    ...(lower && depth
      ? [{ ...limitsOf(lower), feature: name, measure: 'depth', of: 'place', drawn: depth.written } as const]
      : []),
    ...(circle
      ? [
          {
            ...limitsOf(circle),
            feature: name,
            measure: 'diameter',
            of: 'circle',
            item: 'circle',
            drawn: circle.written,
          } as const,
        ]
      : []),
  ]
  return {
    planned: {
      name,
      kind: 'hole',
      band,
      operation,
      written: feature.written,
      at,
      through,
      middle: {
        depth: depth?.nominal ?? ((around?.from ?? 0) + (around?.to.nominal ?? 0)) / 2,
        radius: circle ? circle.nominal / 2 : (around?.size.nominal ?? 0) / 2,
      },
      across: {
        width: middleOf(size),
        height: depth ? middleOf(size) : (around?.to.nominal ?? 0) - (around?.from ?? 0),
      },
    },
    cut: sizes(
      hollowAsCut(given, feature, size, operation),
      depth && { nominal: depth.nominal + shift, lower: depth.lower + shift, upper: depth.upper + shift },
    ),
    finished: sizes(size, depth),
  }
}

export function planCutOut(given: FeaturesGiven, feature: CutOut, operation: number): MadeFeature {
  const { part } = given
  const { name, band, width, height, corner, at, from } = feature
  const around = part.outside.find(one => one.name === band)
  const sizes = (wide: Limits): readonly OperationSize[] => [
    { ...limitsOf(wide), feature: name, measure: 'width', of: 'cut-out', drawn: width.written },
    { ...limitsOf(height), feature: name, measure: 'height', of: 'cut-out', drawn: height.written },
    ...(from
      ? [{ ...limitsOf(from), feature: name, measure: 'depth', of: 'place', drawn: from.written } as const]
      : []),
  ]
  return {
    planned: {
      name,
      kind: 'cut-out',
      band,
      operation,
      written: feature.written,
      at,
      corner,
      middle: {
        depth: from ? from.nominal + height.nominal / 2 : part.length.nominal - height.nominal / 2,
        radius: (around?.size.nominal ?? 0) / 2,
      },
      across: { width: width.nominal, height: height.nominal },
    },
    cut: sizes(hollowAsCut(given, feature, width, operation)),
    finished: sizes(width),
  }
}

const limitsOf = ({ nominal, lower, upper }: Limits): Limits => ({ nominal, lower, upper })
