import { chamferTolerance } from '../handbook/general-tolerance.ts'
import type { DrawnSize } from '../limits.ts'
import type { Degree, Millimetre } from '../units.ts'
import type { GeneralTolerance } from './part.ts'
import { plainSigns, tidy } from './quantity.ts'
import type { View } from './view.ts'

const NUMBER = String.raw`(\d+(?:\.\d*)?|\.\d+)`
const TIMES = '(?: ?[x×] ?)'
const CHAMFER = new RegExp(`^${NUMBER}(?:${TIMES}${NUMBER} ?(?:°|deg)?)?$`)
const PAIR = new RegExp(`^(?:([EF]) )?${NUMBER}${TIMES}${NUMBER}$`)

/** Longest chamfer that a part of the works has, mm: more is a taper, and is drawn as a band. */
const LONGEST: Millimetre = 30

/** `0.5 x 45°`: length along the axis, and the angle to the surface. A bare length is of 45°. */
export function readChamfer(
  view: View,
  key: string,
  general: GeneralTolerance,
): { readonly length: DrawnSize; readonly angle: Degree; readonly written: string } | undefined {
  const written = writtenAt(view, key)
  if (written === undefined) return undefined
  const [, long, turn] = CHAMFER.exec(written) ?? []
  if (long === undefined) return unreadable(view, key, written, 'a chamfer such as 0.5 x 45°')
  const length = tidy(Number(long))
  const angle = turn === undefined ? 45 : Number(turn)
  if (!(length > 0 && length <= LONGEST)) return outOfRange(view, key, `over 0 up to ${LONGEST} mm long, got ${long}`)
  if (!(angle >= 5 && angle <= 80)) return outOfRange(view, key, `at 5 to 80° to the surface, got ${turn}`)
  const half = chamferTolerance(length, general)
  return {
    length: { nominal: length, lower: tidy(length - half), upper: tidy(length + half), written },
    angle,
    written: `${length} × ${angle}°`,
  }
}

/** `0.3 x 2`, depth and width; or by DIN 509 `F 0.8 x 0.3`, form, radius and depth. */
export function readUndercut(
  view: View,
  key: string,
):
  | { readonly form?: 'E' | 'F'; readonly pair: readonly [Millimetre, Millimetre]; readonly written: string }
  | undefined {
  const written = writtenAt(view, key)
  if (written === undefined) return undefined
  const [, form, first, second] = PAIR.exec(written) ?? []
  if (first === undefined || second === undefined)
    return unreadable(view, key, written, 'depth and width, 0.3 x 2, or a form of DIN 509, F 0.8 x 0.3')
  const pair = [tidy(Number(first)), tidy(Number(second))] as const
  if (!pair.every(length => length > 0 && length <= 10)) return outOfRange(view, key, 'over 0 up to 10 mm each way')
  return { ...(form === 'E' || form === 'F' ? { form } : {}), pair, written: written.replace(/ ?x ?/, ' × ') }
}

function writtenAt(view: View, key: string): string | undefined {
  const text = view.text(key)
  return text === undefined ? undefined : plainSigns(text)
}

function unreadable(view: View, key: string, written: string, wanted: string): undefined {
  view.report(
    { code: 'input/unreadable', message: `${key} cannot be read: "${written}"`, hint: `wanted: ${wanted}` },
    key,
  )
  return undefined
}

function outOfRange(view: View, key: string, must: string): undefined {
  view.report({ code: 'input/out-of-range', message: `${key} must be ${must}` }, key)
  return undefined
}
