import { length, type Units, unitOf } from '../figures.ts'
import type { Wrap } from '../ports/wrap.ts'
import type { Millimetre } from '../units.ts'
import { barWords } from './map-scales.ts'
import { scaleWritten } from './scale.ts'

export type MapKind = 'bore' | 'bore at true size' | 'outside at true size'

/** Of the bar by which a print is checked, in millimetres whatever the units: a rule lies on round figures. */
export const barLength = (kind: MapKind): Millimetre => (kind === 'bore' ? 10 : 50)

/** What a map says of itself, in the words of whoever holds it. */
export function mapCaptions({
  kind,
  scale,
  strips: count,
  wrap,
  units,
}: {
  readonly kind: MapKind
  readonly scale: number
  /** Of paper, to go round once. */
  readonly strips: number
  readonly wrap: Wrap | undefined
  readonly units: Units
}): readonly string[] {
  const strips = count > 1 ? ` ${count} strips: cut, and glue together in this order.` : ''
  const depths = units === 'inch' ? ' Depths in inches.' : ''
  const print = `Scale 1:1, print without fitting to the page, and measure the bar: it is ${barWords(barLength(kind), units)}.${depths}${strips}`
  switch (kind) {
    case 'bore':
      return [
        `Bore seen from inside, head up: the angle round the liner runs to the left. Scale ${scaleWritten(scale)}. Full line: finished edge. Dashed: edge as cut, and entry hole.`,
        `Depths in ${units === 'mm' ? 'mm' : 'inches'}: finished from the finished top face, as cut from the top face as it then stands.`,
      ]
    case 'bore at true size':
      return [
        print,
        'Finished bore seen from inside. Full line: finished edge. Dashed circle: where the entry hole comes through. Roll into the bore, print toward the axis, heavy edge level with the finished top face.',
      ]
    case 'outside at true size':
      return [
        print,
        `Outside as the ports are milled. Full line: edge outside. Dashed circle: entry hole, its cross the punch mark. Wrap round the part, print outward, ${startWords(wrap, units)}, and glue the tab under the next end. Depths from the top face as it then stands.`,
      ]
  }
}

function startWords({ below }: Pick<Wrap, 'below'> = { below: 0 }, units: Units): string {
  return below > 1e-6
    ? `heavy edge against the underside of the flange, ${length(below, units, 2)} ${unitOf(units)} below the top face`
    : 'heavy edge level with the top face'
}
