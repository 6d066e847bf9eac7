import { type Band, bandAt } from '../band.ts'
import type { CutOut, Feature, Groove, Hole } from '../feature.ts'
import type { DrawnSize } from '../limits.ts'
import { present } from './open-document.ts'
import type { GeneralTolerance } from './part.ts'
import { azimuthsOf } from './read-azimuths.ts'
import { readBandFeatures } from './read-band-features.ts'
import { readEnds } from './read-ends.ts'
import { readPiston } from './read-piston.ts'
import type { View } from './view.ts'

type Body = { readonly outside: readonly Band[]; readonly bore: readonly Band[]; readonly length: DrawnSize }

/** All that the drawing gives beside bands, faces and ports. */
export function readFeatures(body: View, bands: Body, general: GeneralTolerance): readonly Feature[] {
  return [
    ...readBandFeatures(body, bands, general),
    ...readEnds(body, bands, general),
    ...readPiston(body, { ...bands, general }),
    ...body.each('grooves').flatMap((view, index) => grooveOf(view, index, bands, general) ?? []),
    ...body.each('holes').flatMap((view, index) => holeOf(view, index, bands, general) ?? []),
    ...(body.into('bottom')?.each('skirt-cut-outs') ?? []).flatMap(
      (view, index) => cutOutOf(view, index, bands, general) ?? [],
    ),
  ]
}

const numbered = (what: string, index: number): string => (index === 0 ? what : `${what} ${index + 1}`)

/** By the name of the side, or of one of its bands. */
function grooveOf(view: View, index: number, bands: Body, general: GeneralTolerance): Groove | undefined {
  const name = view.text('name') ?? numbered('groove', index)
  const on = view.text('on') ?? 'outside'
  const side = on === 'bore' || bands.bore.some(band => band.name === on) ? 'bore' : 'outside'
  const at = view.size('at', { name: `at of ${name}`, of: 'length', general })
  const width = view.size('width', { name: `width of ${name}`, of: 'hole', general })
  const floor = view.size('size', { name, of: side === 'bore' ? 'hole' : 'shaft', general })
  const own = present({
    roughness: view.quantity('Ra', 'roughness', { over: 0, upTo: 50 }),
    corner: view.quantity('corner', 'length', { over: 0, upTo: 5 }),
  })
  if (!at || !width || !floor) return undefined
  const band = bandAt(bands[side], at.nominal)
  const known = on === side || bands[side].some(one => one.name === on)
  if (!known) {
    const message = `${name}: the part has no band "${on}"`
    view.report({ code: 'input/unknown-surface', message, hint: 'on: outside, bore, or the name of a band' }, 'on')
    return undefined
  }
  if (!band || (on !== side && band.name !== on)) {
    const message = `${name} at ${at.nominal} mm does not lie on ${on}`
    view.report({ code: 'input/feature', message, hint: 'at is the depth of its upper flank below the top face' }, 'at')
    return undefined
  }
  const written = `${width.written} wide, floor Ø${floor.written}`
  return { kind: 'groove', name, written, side, band: band.name, at, width, floor, ...own, path: view.path }
}

function holeOf(view: View, index: number, { outside }: Body, general: GeneralTolerance): Hole | undefined {
  const name = view.text('name') ?? numbered('hole', index)
  const through = view.text('through') === 'flange' ? 'flange' : 'wall'
  const size = view.size('size', { name, of: 'hole', general })
  const depth = view.size('depth', { name: `depth of ${name}`, of: 'length', general })
  const circle = view.size('circle', { name: `circle of ${name}`, of: 'length', general })
  const at = azimuthsOf(view)
  if (!size) return undefined
  const needed = through === 'wall' ? 'depth' : 'circle'
  if (!(through === 'wall' ? depth : circle)) {
    if (!view.has(needed)) {
      const message = `${name}: a hole through the ${through} needs ${needed}:`
      const hint = through === 'wall' ? 'depth: its middle below the top face' : 'circle: the diameter it stands on'
      view.report({ code: 'input/missing-key', message, hint })
    }
    return undefined
  }
  const band = through === 'wall' ? depth && bandAt(outside, depth.nominal) : outside.find(isFlange)
  if (!band) {
    const message =
      through === 'wall'
        ? `${name} at ${depth?.nominal} mm lies beyond the part`
        : `${name}: no band stands over the others as a flange`
    view.report({ code: 'input/feature', message, hint: 'depths count down from the top face' }, needed)
    return undefined
  }
  const many = at.length > 1 ? `${at.length} × ` : ''
  return {
    kind: 'hole',
    name,
    written: `${many}Ø${size.written}`,
    through,
    band: band.name,
    at,
    size,
    ...(through === 'wall' && depth ? { depth } : {}),
    ...(through === 'flange' && circle ? { circle } : {}),
    path: view.path,
  }
}

const isFlange = (band: Band, _: number, all: readonly Band[]): boolean =>
  all.length > 1 && all.every(other => other === band || other.size.nominal < band.size.nominal)

/** Corner of a cut-out that the drawing leaves to the cutter: as large as an ordinary one. Common practice, no source. */
const USUAL_CORNER = 3

function cutOutOf(view: View, index: number, { outside }: Body, general: GeneralTolerance): CutOut | undefined {
  const name = view.text('name') ?? numbered('skirt cut-out', index)
  const width = view.size('width', { name: `width of ${name}`, of: 'length', general })
  const height = view.size('height', { name: `height of ${name}`, of: 'length', general })
  const corner = view.quantity('corner', 'length', { over: 0, upTo: 50 }) ?? USUAL_CORNER
  const band = outside.at(-1)
  if (!width || !height || !band) return undefined
  const at = azimuthsOf(view)
  const many = at.length > 1 ? `${at.length} × ` : ''
  const written = `${many}${width.nominal} wide, ${height.nominal} high`
  return { kind: 'cut-out', name, written, band: band.name, at, width, height, corner, path: view.path }
}
