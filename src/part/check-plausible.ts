import { fixed } from '../figures.ts'
import { platingOf } from '../handbook/plating.ts'
import { geometricRatio, sweptVolume } from '../handbook/port-area.ts'
import { cubicCentimetres, cubicMillimetres } from '../units.ts'
import type { Part } from './part.ts'
import type { PartFault } from './part-fault.ts'

/** Two lengths of a part that stand in a known proportion: common practice, no source. The bounds are generous. */
type Proportion = {
  readonly name: string
  readonly value: number
  readonly path: string
  readonly to: string
  readonly reference: number
  readonly referencePath: string
  readonly from: number
  readonly upTo: number
  readonly severity?: 'warning'
}

const INCH = 25.4

/**
 * An inch figure where a millimetre is wanted: two lengths out of all proportion that fit once one of them is taken for
 * inches. A strange proportion that inches do not explain is the designer's business.
 */
export function checkPlausible(part: Part): readonly PartFault[] {
  const odd = [
    ...new Map(
      proportionsOf(part)
        .flatMap(inchFault)
        .map(fault => [fault.path, fault]),
    ).values(),
  ]
  const largest = Math.max(...part.outside.map(({ size }) => size.nominal))
  const roundBore = part.bore.every(({ size }) => size.nominal < largest)
  if (odd.length > 0) return odd
  if (largest >= SMALLEST_OUTSIDE || !roundBore) return headFault(part)
  const message = `the largest outside diameter is ${largest} mm: are the figures inches?`
  return [
    {
      code: 'input/implausible',
      severity: 'warning',
      message,
      hint: 'write in after an inch figure',
      path: '/body/outside',
    },
  ]
}

/** mm; a pin or sleeve smaller than this is rarer than a file in inches. */
const SMALLEST_OUTSIDE = 6

/** Compression ratios over the whole stroke that engines have; far outside, the volume is in another unit. */
const RATIOS = { from: 3, upTo: 40 }

function headFault({ engine, bore: [bore] }: Part): readonly PartFault[] {
  if (engine?.headVolume === undefined || !bore) return []
  const swept = sweptVolume.value({ B: bore.size.nominal, S: engine.stroke })
  const ratio = geometricRatio.value({ V_s: swept, V_c: cubicMillimetres(engine.headVolume) })
  if (ratio >= RATIOS.from && ratio <= RATIOS.upTo) return []
  return [
    {
      code: 'input/implausible',
      severity: 'warning',
      message: `a head volume of ${engine.headVolume} cm³ over ${fixed(cubicCentimetres(swept), 1)} cm³ swept is a compression ratio of ${fixed(ratio, 1)}`,
      hint: 'it is the volume above the crown at top dead centre, in cm³; write mm³, in³ after it where it is one of those',
      path: '/engine/head-volume',
    },
  ]
}

function proportionsOf({ kind, bore, outside, length, engine, ports, plating }: Part): readonly Proportion[] {
  // The bore of a pin only saves weight, and may be as small as a drill.
  const [hole] = kind === 'pin' ? outside : bore
  const against = hole && { to: hole.name, reference: hole.size.nominal, referencePath: sizePath(hole.path) }
  const stroke = engine && { to: 'stroke', reference: engine.stroke, referencePath: '/engine/stroke' }
  const lengthEntry = { name: 'length', value: length.nominal, path: '/body/length' }
  return [
    ...(hole && stroke && kind !== 'pin'
      ? [{ name: hole.name, value: hole.size.nominal, path: sizePath(hole.path), ...stroke, from: 0.3, upTo: 3 }]
      : []),
    ...(engine && stroke
      ? [{ name: 'rod', value: engine.rod, path: '/engine/rod', ...stroke, from: 0.6, upTo: 6 }]
      : []),
    ...platingProportion(plating),
    ...(against ? [{ ...lengthEntry, ...against, from: 0.3, upTo: 15 }] : []),
    ...(against
      ? outside.map(band => ({
          name: band.name,
          value: band.size.nominal,
          path: sizePath(band.path),
          ...against,
          from: 0,
          upTo: 4,
        }))
      : []),
    ...(against
      ? ports.flatMap(({ name, width, height, path }) => [
          ...(width === undefined
            ? []
            : [
                {
                  ...windowSide(`width of ${name}`, width, `${path}/width`),
                  ...against,
                  from: 0.03,
                  upTo: Number.POSITIVE_INFINITY,
                },
              ]),
          ...(height === undefined
            ? []
            : [
                {
                  ...windowSide(`height of ${name}`, height, `${path}/height`),
                  ...against,
                  from: 0.03,
                  upTo: Number.POSITIVE_INFINITY,
                },
              ]),
        ])
      : []),
  ]
}

/** Thickness against what is usual: far under it, it may be an inch figure. */
function platingProportion(plating: Part['plating']): readonly Proportion[] {
  const usual = plating && platingOf(plating.process)?.thickness.usual
  if (!plating || usual === undefined) return []
  const path = `${plating.path}/thickness`
  const { aim, least } = plating.thickness
  const to = `the usual ${plating.process},`
  return [
    {
      name: 'thickness',
      value: aim ?? least,
      path,
      to,
      reference: usual,
      referencePath: path,
      from: 0.2,
      upTo: Infinity,
    },
  ]
}

const windowSide = (name: string, value: number, path: string) => ({ name, value, path, severity: 'warning' as const })
/** A band has its size one level down; a plain surface is its size. `placeOf` finds the nearest of the two. */
const sizePath = (path: string): string => `${path}/size`

function inchFault(proportion: Proportion): readonly PartFault[] {
  const { name, value, path, to, reference, referencePath, from, upTo, severity = 'error' } = proportion
  const ratio = value / reference
  const fits = (r: number) => r >= from && r <= upTo
  const fault = (figure: number, path: string): PartFault => ({
    code: 'input/implausible',
    severity,
    message: `${name} ${value} mm does not go with ${to} ${reference} mm: is ${figure} in inches?`,
    hint: `${figure} in is ${Number((figure * INCH).toFixed(4))} mm: if it is inches, write in after it`,
    path,
  })
  if (ratio < from && fits(ratio * INCH)) return [fault(value, path)]
  if (ratio > upTo && fits(ratio / INCH)) return [fault(reference, referencePath)]
  return []
}
