import { type Band, bandAt } from '../../band.ts'
import type { Millimetre } from '../../units.ts'
import type { CheckedWindow, Ported } from './port-check.ts'

/** The land that a window leaves on the outside, up or down, to another band. */
export type LandToBand = Pick<CheckedWindow, 'port'> & { readonly name: string; readonly land: Millimetre }

/** From every window to the bands of the outside that differ in one way from its own. */
export const landsToBands = (
  { part, windows }: Ported,
  differs: (other: Band, own: Band) => boolean,
): readonly LandToBand[] =>
  windows.flatMap(({ port, window }) => {
    const depths = window.outline.outside.map(({ depth }) => depth)
    const [high, low] = [Math.min(...depths), Math.max(...depths)]
    const own = bandAt(part.outside, (high + low) / 2)
    const others = own ? part.outside.filter(other => differs(other, own)) : []
    return others
      .map(({ name, from, to }) => ({ port, name, land: to.nominal <= high ? high - to.nominal : from - low }))
      .filter(({ land }) => land >= 0)
  })
