import type { Band, Surface } from '../band.ts'
import { MOST_HONED_TAPER } from '../handbook/process-limits.ts'
import type { DrawnSize } from '../limits.ts'
import { present } from './open-document.ts'
import type { Face, GeneralTolerance, Part } from './part.ts'
import type { View } from './view.ts'

export type Body = Pick<Part, 'length' | 'outside' | 'bore' | 'top' | 'bottom'>

/** A tolerance zone wider than this is a slip of the decimal point. */
const ZONE = { over: 0, upTo: 2 }
const ROUGHNESS = { over: 0, upTo: 50 }

export function readBody(body: View, general: GeneralTolerance): Body | undefined {
  const length = body.size('length', { name: 'length', of: 'length', general })
  const outside = readBands(body, 'outside', length, general)
  const bore = readBands(body, 'bore', length, general)
  const top = readFace(body, 'top')
  const bottom = readFace(body, 'bottom')
  return length && { length, outside, bore, top, bottom }
}

/** One size for the whole length, a mapping with a size in it, or a list of bands. Empty without a length to end at. */
function readBands(
  body: View,
  key: 'outside' | 'bore',
  length: DrawnSize | undefined,
  general: GeneralTolerance,
): readonly Band[] {
  const of = key === 'bore' ? 'hole' : 'shaft'
  const plain = body.size(key, { name: key, of, general })
  if (plain) return !length ? [] : [{ name: key, size: plain, from: 0, to: length, path: body.pathOf(key) }]

  const whole = body.into(key)
  if (whole) {
    const name = whole.text('name') ?? key
    const size = whole.size('size', { name, of, general })
    const surface = surfaceOf(whole)
    return !size || !length ? [] : [{ name, size, from: 0, to: length, path: whole.path, ...surface }]
  }

  const listed = body.each(key)
  const bands: Band[] = []
  for (const [index, view] of listed.entries()) {
    const name = view.text('name') ?? (listed.length > 1 ? `${key} ${index + 1}` : key)
    const size = view.size('size', { name, of, general })
    const end = view.size('to', { name: `to of ${name}`, of: 'length', general })
    const surface = surfaceOf(view)
    if (!size || !end || !length) continue
    const from = bands.at(-1)?.to.nominal ?? 0
    // The last band ends at the bottom face, whose tolerance is the length's.
    const to = index === listed.length - 1 && end.nominal === length.nominal ? length : end
    if (to.nominal <= from) {
      const message = `${name} ends at ${to.nominal} mm, but the band above ends at ${from} mm`
      view.report({ code: 'input/bands', message, hint: 'list the bands from the top face down' }, 'to')
    }
    if (index === listed.length - 1 && to !== length) {
      const message = `the last band of the ${key} ends at ${to.nominal} mm, but the length is ${length.nominal} mm`
      view.report({ code: 'input/bands', message, hint: `to: ${length.nominal}` }, 'to')
    }
    bands.push({ name, size, from, to, path: view.path, ...surface })
  }
  return bands
}

function surfaceOf(view: View): Surface & Pick<Band, 'taper'> {
  return present({
    roughness: view.quantity('Ra', 'roughness', ROUGHNESS),
    cylindricity: view.quantity('cylindricity', 'length', ZONE),
    roundness: view.quantity('roundness', 'length', ZONE),
    runout: view.quantity('runout', 'length', ZONE),
    flatness: view.quantity('flatness', 'length', ZONE),
    perpendicularity: view.quantity('perpendicularity', 'length', ZONE),
    taper: view.quantity('taper', 'length', { over: 0, upTo: MOST_HONED_TAPER }),
  })
}

function readFace(body: View, key: 'top' | 'bottom'): Face {
  const face = body.into(key)
  return { ...(face && surfaceOf(face)), path: body.pathOf(key) }
}
