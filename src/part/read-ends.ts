import type { Band } from '../band.ts'
import type { Chamfer, TurnedSide } from '../feature.ts'
import { degrees } from '../units.ts'
import type { GeneralTolerance } from './part.ts'
import { tidy } from './quantity.ts'
import { readChamfer } from './read-edge.ts'
import type { View } from './view.ts'

type Body = { readonly outside: readonly Band[]; readonly bore: readonly Band[] }
const ENDS = ['upper', 'lower'] as const

/** Both ends of a pin alike: a chamfer outside, and a taper in the bore that saves weight. */
export function readEnds(body: View, { outside, bore }: Body, general: GeneralTolerance): readonly Chamfer[] {
  const view = body.into('ends')
  if (!view) return []
  const edge = readChamfer(view, 'chamfer', general)
  const [first, last] = [outside[0], outside.at(-1)]
  const chamfers =
    edge && first && last
      ? ENDS.map((end): Chamfer => {
          const band = end === 'upper' ? first : last
          return {
            kind: 'chamfer',
            name: `chamfer, ${end} end`,
            side: 'outside',
            band: band.name,
            end,
            ...edge,
            path: view.pathOf('chamfer'),
          }
        })
      : []
  return [...chamfers, ...tapersOf(view.into('taper-bore'), bore, general)]
}

function tapersOf(view: View | undefined, bore: readonly Band[], general: GeneralTolerance): readonly Chamfer[] {
  if (!view) return []
  const size = view.size('size', { name: 'mouth of the taper bore', of: 'hole', general })
  const depth = view.size('depth', { name: 'depth of the taper bore', of: 'length', general })
  const [first, last] = [bore[0], bore.at(-1)]
  if (!size || !depth) return []
  if (!first || !last || size.nominal <= Math.max(first.size.nominal, last.size.nominal)) {
    const message = `taper-bore: its mouth of ${size.nominal} mm is no larger than the bore`
    view.report({ code: 'input/feature', message, hint: 'size is the diameter at the end face' }, 'size')
    return []
  }
  const side: TurnedSide = 'bore'
  return ENDS.map(end => {
    const band = end === 'upper' ? first : last
    const angle = tidy(degrees(Math.atan2((size.nominal - band.size.nominal) / 2, depth.nominal)))
    return {
      kind: 'lead',
      name: `taper bore, ${end} end`,
      written: `Ø${size.written} to the bore over ${depth.written}`,
      side,
      band: band.name,
      end,
      length: depth,
      angle,
      path: view.path,
    }
  })
}
