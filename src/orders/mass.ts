import type { Shape } from '../shape.ts'
import type { Kilogram } from '../units.ts'

type Stretch = Shape['outside'][number]

/**
 * Mass of a piece as it stands, ports and grooves counted as full.
 *
 *     m = ρ · π/4 · (Σ D²·l − Σ d²·l)
 *
 *     ρ     density                                   g/cm³
 *     D, d  diameters of outside and bore, l long      mm
 *
 * Range:   any turned part.
 * Source:  geometry.
 */
export function massOf({ outside, bore, top, bottom }: Shape, density: number): Kilogram {
  const volume = (bands: readonly Stretch[]): number =>
    bands.reduce((sum, { from, to, diameter }) => {
      const length = Math.min(to, bottom) - Math.max(from, top)
      return sum + (Math.PI / 4) * diameter ** 2 * Math.max(0, length)
    }, 0)
  return ((volume(outside) - volume(bore)) * density) / 1e6
}
