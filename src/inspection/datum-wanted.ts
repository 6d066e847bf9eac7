import type { ClockingDatum } from '../cutting/clocking-datum.ts'
import { fixed } from '../figures.ts'
import { generalTolerance } from '../handbook/general-tolerance.ts'
import { DATUM_SIZES } from '../handbook/timing-datums.ts'
import { toLookAt, type Wanted, type Where } from './wanted.ts'

/** A drawn datum, when it has been made. The place of every port is measured from it. */
export function datumMade(datum: ClockingDatum | undefined, where: Where): readonly Wanted[] {
  if (!datum?.drawn || !datum.place) return []
  const { kind, name: feature, depth = 0, place } = datum
  const half = generalTolerance(depth, 'm') ?? 0.1
  if (kind === 'flat') {
    const over = place.diameter - depth
    return [
      {
        ...where,
        name: `${feature}, over it to the far side`,
        kind: 'outside',
        unit: 'mm',
        nominal: over,
        lower: over - half,
        upper: over + half,
        feature,
        weight: 'minor',
        remark: `the flat is then ${fixed(depth, 2)} deep`,
      },
    ]
  }
  const deep: Wanted = {
    ...where,
    name: `${feature}, depth`,
    kind: 'depth',
    unit: 'mm',
    nominal: depth,
    lower: depth - half,
    upper: depth + half,
    feature,
    written: 'hole',
    weight: 'minor',
  }
  const size = kind === 'notch' ? `${DATUM_SIZES.notch} H9` : `Ø${DATUM_SIZES['dowel hole']} H7`
  return [
    toLookAt({
      name: `${feature}, ${size}: the ${kind === 'notch' ? 'key' : 'pin'} of the fixture goes in and does not shake`,
      feature,
      weight: 'major',
      where,
      remark: `limit gauge ${size.replace('Ø', '')}: one end goes, the other does not`,
    }),
    deep,
  ]
}
