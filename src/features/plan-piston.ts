import type { Dome, Inside, Oval, PinBore } from '../feature.ts'
import { materialOf } from '../handbook/materials.ts'
import {
  CLIP,
  clipFloor,
  domeRadius,
  ovalDiameter,
  ovalOffset,
  ovalToolRadius,
  PISTON_SOURCE,
  RELIEF_FADES,
} from '../handbook/piston.ts'
import { fromHandbook, fromPart, told } from '../known.ts'
import { type Limits, middleOf } from '../limits.ts'
import type { OperationSize } from '../operation-size.ts'
import type { LinePoint } from './feature-plan.ts'
import type { FeaturesGiven } from './given.ts'
import type { MadeFeature } from './made-feature.ts'

const limitsOf = ({ nominal, lower, upper }: Limits): Limits => ({ nominal, lower, upper })

/** The inside of a piston, up to its crown. */
export function planInside({ part }: FeaturesGiven, feature: Inside, operation: number): MadeFeature {
  const { name, band, size, deep, corner } = feature
  const crown = part.length.nominal - deep.nominal
  const radius = middleOf(size) / 2
  const sizes: readonly OperationSize[] = [
    { ...limitsOf(size), feature: name, measure: 'diameter', of: 'inside', drawn: size.written },
    { ...limitsOf(deep), feature: name, measure: 'depth', of: 'up', drawn: deep.written },
  ]
  return {
    planned: {
      name,
      kind: 'inside',
      band,
      operation,
      written: feature.written,
      side: 'bore',
      corner,
      deep: radius,
      // The corner under the crown in four steps of a quarter circle.
      line: [
        ...[0, 1, 2, 3, 4].map(step => {
          const turn = (step * Math.PI) / 8
          const at: LinePoint = {
            depth: crown + corner * (1 - Math.sin(turn)),
            radius: radius - corner * (1 - Math.cos(turn)),
          }
          return at
        }),
      ]
        .toReversed()
        .concat([{ depth: part.length.nominal + BEYOND, radius }]),
    },
    cut: sizes,
    finished: sizes,
  }
}

/** The part may stand longer than it is drawn while the inside is turned, mm. */
const BEYOND = 5

/** A sphere on the crown land: its edge lies as deep as the dome is high. */
export function planDome({ part, notebook, turning }: FeaturesGiven, feature: Dome): MadeFeature {
  const { name, band, height } = feature
  const D = part.outside[0]?.size.nominal ?? 0
  const R = notebook.use(
    domeRadius,
    { ...told(fromPart(band), { D }), ...told(fromPart(name), { h: height }) },
    { operation: turning, about: name },
  )
  const line = Array.from({ length: 13 }, (_, step): LinePoint => {
    const radius = (D / 2) * (step / 12)
    return { depth: R - Math.sqrt(Math.max(0, R ** 2 - radius ** 2)), radius }
  })
  return {
    planned: {
      name,
      kind: 'dome',
      band,
      operation: turning,
      written: `${feature.written}, radius ${R.toFixed(1)}`,
      side: 'outside',
      sphere: R,
      line,
    },
    cut: [],
    finished: [],
  }
}

/** Bored through both bosses in one pass; the grooves of its clips with it. */
export function planPinBore({ notebook }: FeaturesGiven, feature: PinBore, operation: number): MadeFeature {
  const { name, band, size, depth, clip, offset, at, roughness } = feature
  const floor =
    clip === undefined
      ? undefined
      : notebook.use(
          clipFloor,
          {
            ...told(fromPart(name), { b: size.nominal, d: clip }),
            ...told(fromHandbook('memory: usual share'), { k: CLIP.share }),
          },
          { operation, about: `clip grooves of ${name}` },
        )
  const sizes: readonly OperationSize[] = [
    {
      ...limitsOf(size),
      feature: name,
      measure: 'diameter',
      of: 'pin bore',
      drawn: size.written,
      ...(roughness !== undefined && { roughness }),
    },
    ...(floor === undefined
      ? []
      : [
          {
            feature: name,
            measure: 'diameter',
            of: 'clip',
            nominal: floor,
            lower: floor,
            upper: floor + CLIP.tolerance,
          } as const,
        ]),
    { ...limitsOf(depth), feature: name, measure: 'depth', of: 'place', drawn: depth.written },
  ]
  return {
    planned: {
      name,
      kind: 'pin bore',
      band,
      operation,
      written: feature.written,
      at,
      offset,
      ...(clip !== undefined && { clip }),
      ...(roughness !== undefined && { roughness }),
      middle: { depth: depth.nominal, radius: 0 },
      across: { width: size.nominal, height: size.nominal },
    },
    cut: sizes,
    finished: sizes,
  }
}

/** Turned round in the thrust direction; each side then relieved with the axis moved, where no lathe follows an oval. */
export function planOval({ part, notebook, turning }: FeaturesGiven, feature: Oval): MadeFeature | undefined {
  const { name, band, ovality, taper } = feature
  const skirt = part.outside.find(one => one.name === band)
  if (!skirt) return undefined
  const about = { operation: turning, about: name }
  const D = skirt.size.nominal
  const across = notebook.use(
    ovalDiameter,
    {
      ...told(fromPart(band), { D }),
      ...told(fromPart(name), { ov: ovality }),
      ...told(fromPart('along the pin'), { phi: 90 }),
    },
    about,
  )
  const phi0 = told(fromHandbook(PISTON_SOURCE), { phi0: RELIEF_FADES })
  const e =
    ovality > 0
      ? notebook.use(ovalOffset, { ...told(fromPart(name), { delta: ovality / 2 }), ...phi0 }, about)
      : undefined
  const tool =
    e === undefined
      ? undefined
      : notebook.use(ovalToolRadius, { ...told(fromPart(band), { R: D / 2 }), e, ...phi0 }, about)
  const least = across - (skirt.size.nominal - skirt.size.lower)
  const most = across + (skirt.size.upper - skirt.size.nominal)
  const sizes: readonly OperationSize[] = [
    ...(ovality > 0
      ? [
          {
            feature: name,
            measure: 'diameter',
            of: 'along the pin',
            nominal: across,
            lower: least,
            upper: most,
            drawn: feature.written,
          } as const,
        ]
      : []),
    ...(taper > 0
      ? [
          {
            feature: name,
            measure: 'diameter',
            of: 'skirt top',
            nominal: D - taper,
            lower: skirt.size.lower - taper,
            upper: skirt.size.upper - taper,
            drawn: feature.written,
          } as const,
        ]
      : []),
  ]
  return {
    planned: {
      name,
      kind: 'oval',
      band,
      operation: turning,
      written: feature.written,
      side: 'outside',
      ...(e !== undefined && tool !== undefined && { relief: { offset: e, radius: tool, fades: RELIEF_FADES } }),
    },
    cut: sizes,
    finished: sizes,
  }
}

/** Whether a piston of this grade is turned to a shape: iron stays round. */
export const isIron = (grade: string): boolean => /iron/.test(materialOf(grade)?.group ?? '')
