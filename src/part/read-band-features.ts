import type { Band } from '../band.ts'
import type { Chamfer, Feature, TurnedSide, Undercut } from '../feature.ts'
import { UNDERCUT_TOLERANCES, undercutOf } from '../handbook/undercuts.ts'
import type { DrawnSize } from '../limits.ts'
import type { Millimetre } from '../units.ts'
import type { GeneralTolerance } from './part.ts'
import { tidy } from './quantity.ts'
import { readChamfer, readUndercut } from './read-edge.ts'
import type { View } from './view.ts'

/** Chamfer, lead, undercut and underside, which are written at the band that they belong to. */
export function readBandFeatures(
  body: View,
  { outside, bore }: { readonly outside: readonly Band[]; readonly bore: readonly Band[] },
  general: GeneralTolerance,
): readonly Feature[] {
  return [...sideFeatures(body, 'outside', outside, general), ...sideFeatures(body, 'bore', bore, general)]
}

function sideFeatures(
  body: View,
  side: TurnedSide,
  bands: readonly Band[],
  general: GeneralTolerance,
): readonly Feature[] {
  const whole = body.into(side)
  const views = whole ? [whole] : body.each(side)
  return bands.flatMap((band, index) => {
    const view = views.find(({ path }) => path === band.path)
    if (!view) return []
    return [
      ...edgeOf({ view, side, bands, index, kind: 'chamfer', general }),
      ...edgeOf({ view, side, bands, index, kind: 'lead', general }),
      ...(side === 'outside' ? [...undercutAt(view, bands, index), ...undersideOf(view, bands, index)] : []),
    ]
  })
}

/** Whether the band stands free at an end: at a face of the part, or over the band that follows. */
function isFree(side: TurnedSide, bands: readonly Band[], index: number, end: Chamfer['end']): boolean {
  const [band, next] = [bands[index], bands[end === 'upper' ? index - 1 : index + 1]]
  if (!band || !next) return true
  const over = band.size.nominal - next.size.nominal
  return side === 'outside' ? over > 0 : over < 0
}

/** A chamfer stands at the upper end where that is free, else at the lower; a lead at the lower. */
function edgeOf({
  view,
  side,
  bands,
  index,
  kind,
  general,
}: {
  readonly view: View
  readonly side: TurnedSide
  readonly bands: readonly Band[]
  readonly index: number
  readonly kind: Chamfer['kind']
  readonly general: GeneralTolerance
}): readonly Feature[] {
  const read = readChamfer(view, kind, general)
  const band = bands[index]
  if (!read || !band) return []
  const ends = kind === 'chamfer' ? (['upper', 'lower'] as const) : (['lower'] as const)
  const end = ends.find(one => isFree(side, bands, index, one))
  if (!end) {
    const message = `${band.name} has no free edge ${kind === 'lead' ? 'at its lower end ' : ''}to chamfer: the bands beside it stand over it`
    view.report({ code: 'input/feature', message, hint: 'write it at the band that has the edge' }, kind)
    return []
  }
  return [{ kind, name: `${kind} of ${band.name}`, side, band: band.name, end, ...read, path: view.pathOf(kind) }]
}

/** Depth with the deviations of DIN 509, where the drawing gives none. */
const over = (nominal: Millimetre, by: Millimetre): DrawnSize => ({
  nominal,
  lower: nominal,
  upper: tidy(nominal + by),
  written: `${nominal} +${by}/0`,
})

/** An undercut by two figures has a corner as large as fits: two thirds of its depth, and no less than an insert has. */
const PLAIN_RADIUS = 0.2

function undercutAt(view: View, bands: readonly Band[], index: number): readonly Feature[] {
  const read = readUndercut(view, 'undercut')
  const band = bands[index]
  if (!read || !band) return []
  const below = bands[index + 1]
  if (!below || below.size.nominal >= band.size.nominal) {
    const message = `undercut: no smaller band follows ${band.name}, so there is no shoulder below it`
    view.report(
      { code: 'input/feature', message, hint: 'write it at the band that stands over the shoulder' },
      'undercut',
    )
    return []
  }
  const { form, pair, written } = read
  const row = form && undercutOf(...pair)
  if (form && !row) {
    const message = `undercut: DIN 509 has no ${written}`
    view.report({ code: 'input/feature', message, hint: 'for 18 to 80 mm: F 0.8 x 0.3' }, 'undercut')
    return []
  }
  const [first, second] = pair
  const undercut: Undercut = {
    kind: 'undercut',
    name: `undercut below ${band.name}`,
    written: row ? `DIN 509 – ${written}` : written,
    side: 'outside',
    band: below.name,
    shoulder: band.name,
    depth: over(row?.depth ?? first, UNDERCUT_TOLERANCES.depth),
    width: over(row?.width ?? second, UNDERCUT_TOLERANCES.width),
    radius: row?.radius ?? PLAIN_RADIUS,
    ...(row && form === 'F' ? { face: row.face } : {}),
    path: view.pathOf('undercut'),
  }
  return [undercut]
}

function undersideOf(view: View, bands: readonly Band[], index: number): readonly Feature[] {
  const face = view.into('underside')
  const [band, below] = [bands[index], bands[index + 1]]
  if (!face || !band) return []
  if (!below || below.size.nominal >= band.size.nominal) {
    const message = `underside: no smaller band follows ${band.name}, so it has none`
    view.report({ code: 'input/feature', message, hint: 'write it at a flange' }, 'underside')
    return []
  }
  const roughness = face.quantity('Ra', 'roughness', { over: 0, upTo: 50 })
  const square = face.quantity('square', 'length', { over: 0, upTo: 2 })
  return [
    {
      kind: 'underside',
      name: `underside of ${band.name}`,
      written: [roughness === undefined ? '' : `Ra ${roughness}`, square === undefined ? '' : `square within ${square}`]
        .filter(Boolean)
        .join(', '),
      side: 'outside',
      band: band.name,
      ...(roughness !== undefined && { roughness }),
      ...(square !== undefined && { square }),
      path: face.path,
    },
  ]
}
