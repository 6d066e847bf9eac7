import { clockPosition } from '../clock-position.ts'
import type { PlannedFeature } from '../features/feature-plan.ts'
import { type FeatureSize, featureWords, isOver, type OperationSize } from '../operation-size.ts'
import type { GaugeKind } from '../shop/shop.ts'
import { toLookAt, type Wanted, type Where } from './wanted.ts'

/** What measures it. */
const KIND: Readonly<Record<FeatureSize, GaugeKind>> = {
  chamfer: 'edge',
  groove: 'groove',
  floor: 'outside',
  'floor in the bore': 'bore',
  place: 'depth',
  undercut: 'edge',
  hole: 'contour',
  circle: 'outside',
  'cut-out': 'length',
  inside: 'bore',
  up: 'depth',
  'pin bore': 'bore',
  clip: 'bore',
  'along the pin': 'outside',
  'skirt top': 'outside',
}

const REMARK: Readonly<Partial<Record<FeatureSize, string>>> = {
  groove: 'blocks of the lower limit go in, of the upper do not, at three places round it',
  floor: 'with narrow anvils',
  'floor in the bore': 'with the hooked jaws',
  hole: 'a pin of the lower limit goes in, one of the upper does not',
  circle: 'over two pins, less one pin',
  'pin bore': 'two heights, two directions, each boss; a mandrel through both shows whether they are in line',
  clip: 'a clip goes in and turns',
  'along the pin': 'at the size point, square to the thrust direction',
  'skirt top': 'in the thrust direction, just below the rings',
}

/** A size of a chamfer, groove, hole or cut-out. */
export function featureSizeWanted(size: OperationSize & { readonly of: FeatureSize }, where: Where): Wanted {
  const { of, feature, nominal, lower, upper } = size
  const remark = REMARK[of]
  return {
    ...where,
    name: featureWords(size),
    kind: KIND[of],
    unit: 'mm',
    nominal,
    lower,
    upper,
    feature,
    written: isOver(of) ? 'shaft' : 'hole',
    weight:
      of === 'pin bore'
        ? 'critical'
        : of === 'groove' || of === 'along the pin' || of === 'floor' || of === 'floor in the bore'
          ? 'major'
          : 'minor',
    ...(remark !== undefined && { remark }),
  }
}

/** What of a feature is no size: roughness, squareness, where it stands round the part, its corners. */
export const featuresWanted = (features: readonly PlannedFeature[], where: Where): readonly Wanted[] =>
  features.flatMap(feature => [
    ...surfaceWanted(feature, where),
    ...placeWanted(feature, where),
    ...undercutLeft(feature, where),
  ])

function surfaceWanted({ name, roughness, square, kind, middle }: PlannedFeature, where: Where): readonly Wanted[] {
  return [
    ...(roughness === undefined
      ? []
      : [
          kind === 'groove'
            ? toLookAt({
                name: `${name} floor and flanks, Ra ${roughness} at most`,
                feature: name,
                weight: 'minor',
                where,
                remark: 'against a roughness specimen: no stylus goes in; no chatter, no step in the floor',
              })
            : ({
                ...where,
                name: `${name} roughness Ra`,
                kind: 'roughness',
                unit: 'µm',
                upper: roughness,
                feature: name,
                weight: 'minor',
              } as const),
        ]),
    ...(square === undefined
      ? []
      : [
          {
            ...where,
            name: `${name} square to the band below`,
            kind: 'form',
            unit: 'mm',
            upper: square,
            ...(middle && { reach: 2 * middle.radius }),
            feature: name,
            weight: 'major',
            remark: 'turned on the band below, indicator on the face',
          } as const,
        ]),
  ]
}

function placeWanted({ name, at = [], kind, corner }: PlannedFeature, where: Where): readonly Wanted[] {
  if (at.length === 0 || kind === 'pin bore') return []
  const hours = at.map(azimuth => clockPosition(azimuth)).join(', ')
  return [
    toLookAt({
      name: `${name}: ${at.length === 1 ? 'one' : String(at.length)} at ${hours} o’clock, seen from the head`,
      feature: name,
      weight: 'minor',
      where,
      remark:
        kind === 'cut-out'
          ? `corners ${corner ?? 0} at least; every edge broken, inside too`
          : 'through; edges broken inside and out',
    }),
  ]
}

/** Its sizes are those that it is turned to: what the wheel leaves is looked at. */
const undercutLeft = ({ kind, name }: PlannedFeature, where: Where): readonly Wanted[] =>
  kind !== 'undercut' || where.stage !== 'final'
    ? []
    : [
        toLookAt({
          name: `${name} still there all round`,
          feature: name,
          weight: 'minor',
          where,
          remark: 'no step of the wheel in its floor or in the corner',
        }),
      ]
