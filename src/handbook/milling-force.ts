/** A cut of an end mill as the force on it is worked out: mm, degrees, N/mm². */
export type MillingCut = {
  /** With every factor in it. */
  readonly kc11: number
  readonly mc: number
  readonly feedPerTooth: number
  readonly teeth: number
  readonly diameter: number
  readonly axialDepth: number
  /** Radial depth; the diameter itself in a slot. */
  readonly radialDepth: number
  /** Helix of the flutes; 0 for straight ones, where the whole edge enters at once. */
  readonly helix: number
  /** Radial over tangential force. Source: memory: Altintas, 0.3 to 0.7. */
  readonly radialShare: number
}

const NODES = 240
const TURNS = 60

/**
 * Greatest resultant force across an end mill over a revolution.
 *
 *     F = max | Σ over teeth of ∫ kc11·h^(1-mc)·(t + k·n) da |,   h = fz·sin φ
 *
 *     F     force across the cutter            N
 *     h     chip thickness at the angle φ      mm
 *     t, n  unit vectors along and into the cut
 *     k     radial over tangential force
 *     a     height along the flute; the flute lags by 2·a·tan(helix)/D
 *
 * Down milling; the peak of an up-milled cut is the same. The integrals along the flute are summed once over the angle of
 * engagement, so that a turned cutter only looks up two ends for each tooth.
 *
 * Range:   radial depth up to the diameter.
 * Source:  derived: geometry, tangential force after Kienzle; ratio of forces: memory: Altintas.
 *
 * @example peakMillingForce({ kc11: 1775, mc: 0.24, feedPerTooth: 0.01, teeth: 4, diameter: 2, axialDepth: 0.2, radialDepth: 2, helix: 0, radialShare: 0.5 }) // 13.03
 */
export function peakMillingForce(cut: MillingCut): number {
  const { kc11, mc, feedPerTooth, teeth, diameter, axialDepth, radialDepth, helix, radialShare } = cut
  const engaged = Math.acos(1 - (2 * radialDepth) / diameter)
  const force = kc11 * feedPerTooth ** (1 - mc)
  const lag = (2 * axialDepth * Math.tan((helix * Math.PI) / 180)) / diameter
  const pitch = (2 * Math.PI) / teeth

  // Force for each mm of flute at an angle, in the frame of the cutter's centre; the angle runs from where the chip is thin.
  const at = (angle: number): readonly [number, number] => {
    const tangential = force * Math.sin(Math.min(Math.max(angle, 0), engaged)) ** (1 - mc)
    const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
    return [tangential * (cos + radialShare * sin), tangential * (sin - radialShare * cos)]
  }
  const step = engaged / NODES
  const sums: (readonly [number, number])[] = [[0, 0]]
  for (let node = 1; node <= NODES; node++) {
    const [x, y] = at((node - 0.5) * step)
    const [sumX, sumY] = sums[node - 1] ?? [0, 0]
    sums.push([sumX + x * step, sumY + y * step])
  }
  const summedTo = (angle: number): readonly [number, number] => {
    const place = Math.min(Math.max(angle / step, 0), NODES)
    const node = Math.min(Math.floor(place), NODES - 1)
    const [fromX, fromY] = sums[node] ?? [0, 0]
    const [toX, toY] = sums[node + 1] ?? [0, 0]
    const share = place - node
    return [fromX + share * (toX - fromX), fromY + share * (toY - fromY)]
  }

  let greatest = 0
  const turns = Array.from({ length: TURNS + 1 }, (_, turn) => (turn / TURNS) * pitch)
  // A tooth is at its heaviest as it leaves or enters the cut, which no even step need hit.
  for (const leading of [...turns, engaged % pitch, lag % pitch]) {
    let [x, y] = [0, 0]
    for (let tooth = leading; tooth <= engaged + lag + 1e-12; tooth += pitch) {
      if (lag < 1e-9) {
        if (tooth > engaged) break
        const [toothX, toothY] = at(tooth)
        x += toothX * axialDepth
        y += toothY * axialDepth
      } else {
        const [toX, toY] = summedTo(tooth)
        const [fromX, fromY] = summedTo(tooth - lag)
        x += ((toX - fromX) * axialDepth) / lag
        y += ((toY - fromY) * axialDepth) / lag
      }
    }
    greatest = Math.max(greatest, Math.hypot(x, y))
  }
  return greatest
}
