import type { Band } from '../band.ts'
import { bandAt } from '../band.ts'
import type { CutOut, Dome, Feature, Groove, Hole, Inside, Oval, PinBore } from '../feature.ts'
import type { DrawnSize } from '../limits.ts'
import { present } from './open-document.ts'
import type { GeneralTolerance } from './part.ts'
import { tidy } from './quantity.ts'
import { azimuthsOf } from './read-azimuths.ts'
import type { View } from './view.ts'

type Given = { readonly outside: readonly Band[]; readonly length: DrawnSize; readonly general: GeneralTolerance }

/** What makes a turned body a piston: crown, ring grooves with pegs, inside, pin bore, windows, the shape of the skirt. */
export function readPiston(body: View, given: Given): readonly Feature[] {
  return [
    ...(domeOf(body.into('crown'), given) ?? []),
    ...body.each('ring-grooves').flatMap((view, index) => ringGroove(view, index, given)),
    ...(insideOf(body.into('inside'), given) ?? []),
    ...(pinBoreOf(body.into('pin-bore'), given) ?? []),
    ...body.each('windows').flatMap((view, index) => windowOf(view, index, given)),
    ...(ovalOf(body.into('skirt'), given) ?? []),
  ]
}

function domeOf(view: View | undefined, { outside }: Given): readonly Dome[] | undefined {
  const height = view?.quantity('dome', 'length', { over: 0, upTo: 50 })
  const band = outside[0]
  if (!view || height === undefined || !band) return undefined
  return [
    {
      kind: 'dome',
      name: 'crown dome',
      written: `dome ${height} high`,
      side: 'outside',
      band: band.name,
      height,
      path: view.path,
    },
  ]
}

/** The pegs of rings stand in the middle of the groove. Common practice, no source: as wide as most of the groove. */
const PEG = 1.5

function ringGroove(view: View, index: number, { outside, general }: Given): readonly (Groove | Hole)[] {
  const name = view.text('name') ?? `ring groove ${index + 1}`
  const at = view.size('at', { name: `at of ${name}`, of: 'length', general })
  const width = view.size('width', { name: `width of ${name}`, of: 'hole', general })
  const floor = view.size('size', { name, of: 'shaft', general })
  const own = present({
    roughness: view.quantity('Ra', 'roughness', { over: 0, upTo: 50 }),
    corner: view.quantity('corner', 'length', { over: 0, upTo: 5 }),
    ring: view.quantity('ring', 'length', { over: 0, upTo: 10 }),
  })
  const band = at && bandAt(outside, at.nominal)
  if (!at || !width || !floor || !band) return []
  const groove: Groove = {
    kind: 'groove',
    name,
    written: `${width.written} wide, floor Ø${floor.written}`,
    side: 'outside',
    band: band.name,
    at,
    width,
    floor,
    ...own,
    path: view.path,
  }
  const peg = view.into('peg')
  if (!peg) return [groove]
  const size = peg.size('size', { name: `peg hole of ${name}`, of: 'hole', general: 'f' }) ?? {
    nominal: PEG,
    lower: PEG - 0.02,
    upper: PEG - 0.005,
    written: `${PEG} -0.005/-0.02`,
  }
  const middle = tidy(at.nominal + width.nominal / 2)
  const hole: Hole = {
    kind: 'hole',
    name: `peg hole of ${name}`,
    written: `Ø${size.written}`,
    through: 'groove floor',
    band: band.name,
    at: azimuthsOf(peg),
    size,
    depth: { nominal: middle, lower: tidy(middle - 0.05), upper: tidy(middle + 0.05), written: `${middle} ±0.05` },
    path: peg.path,
  }
  return [groove, hole]
}

/** Corner inside a crown that the drawing leaves to the tool. Common practice, no source. */
const INSIDE_CORNER = 3

function insideOf(view: View | undefined, { outside, length, general }: Given): readonly Inside[] | undefined {
  if (!view) return undefined
  const size = view.size('size', { name: 'inside', of: 'hole', general })
  const deep = view.size('depth', { name: 'depth of the inside', of: 'length', general })
  const corner = view.quantity('corner', 'length', { over: 0, upTo: 50 }) ?? INSIDE_CORNER
  const band = outside.at(-1)
  if (!size || !deep || !band) return []
  if (deep.nominal >= length.nominal) {
    const message = `inside is ${deep.nominal} mm deep, and the part ${length.nominal} mm long`
    view.report({ code: 'input/feature', message, hint: 'depth is measured up from the lower end' }, 'depth')
    return []
  }
  const written = `Ø${size.written}, ${deep.written} from the lower end`
  return [
    { kind: 'inside', name: 'inside', written, side: 'bore', band: band.name, size, deep, corner, path: view.path },
  ]
}

function pinBoreOf(view: View | undefined, { outside, general }: Given): readonly PinBore[] | undefined {
  if (!view) return undefined
  const size = view.size('size', { name: 'pin bore', of: 'hole', general })
  const depth = view.size('height', { name: 'height of the pin bore', of: 'length', general })
  const offset = view.quantity('offset', 'length', { from: -10, upTo: 10 }) ?? 0
  const band = depth && bandAt(outside, depth.nominal)
  if (!size || !depth || !band) return []
  const own = present({
    roughness: view.quantity('Ra', 'roughness', { over: 0, upTo: 50 }),
    clip: view.quantity('circlip', 'length', { over: 0, upTo: 5 }),
  })
  const off = offset === 0 ? '' : `, ${Math.abs(offset)} toward ${offset > 0 ? 'the thrust side' : 'the other side'}`
  return [
    {
      kind: 'pin bore',
      name: 'pin bore',
      written: `Ø${size.written}, ${depth.written} below the crown's edge${off}`,
      band: band.name,
      at: [90],
      size,
      depth,
      offset,
      ...own,
      path: view.path,
    },
  ]
}

function windowOf(view: View, index: number, { outside, general }: Given): readonly CutOut[] {
  const name = view.text('name') ?? (index === 0 ? 'window' : `window ${index + 1}`)
  const from = view.size('top', { name: `top of ${name}`, of: 'length', general })
  const width = view.size('width', { name: `width of ${name}`, of: 'length', general })
  const height = view.size('height', { name: `height of ${name}`, of: 'length', general })
  const corner = view.quantity('corner', 'length', { over: 0, upTo: 50 }) ?? 2
  const band = from && bandAt(outside, from.nominal)
  if (!from || !width || !height || !band) return []
  const at = azimuthsOf(view)
  const written = `${at.length > 1 ? `${at.length} × ` : ''}${width.nominal} wide, ${height.nominal} high`
  return [{ kind: 'cut-out', name, written, band: band.name, at, width, height, from, corner, path: view.path }]
}

function ovalOf(view: View | undefined, { outside }: Given): readonly Oval[] | undefined {
  const band = outside.at(-1)
  if (!view || !band) return undefined
  const ovality = view.quantity('ovality', 'length', { from: 0, upTo: 1 }) ?? 0
  const taper = view.quantity('taper', 'length', { from: 0, upTo: 0.5 }) ?? 0
  if (ovality === 0 && taper === 0) return []
  const written = [ovality > 0 ? `oval by ${ovality}` : '', taper > 0 ? `smaller by ${taper} at its top` : '']
    .filter(Boolean)
    .join(', ')
  return [
    {
      kind: 'oval',
      name: `shape of ${band.name}`,
      written,
      side: 'outside',
      band: band.name,
      ovality,
      taper,
      path: view.path,
    },
  ]
}
