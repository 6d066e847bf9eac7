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
export const peakMillingForce = ({ axialDepth, ...cut }: MillingCut): number => peakByDepth(cut)(axialDepth)

/** The same for every axial depth: what is summed along the flute is the same for all. */
export function peakByDepth(cut: Omit<MillingCut, 'axialDepth'>): (axialDepth: number) => number {
  const { kc11, mc, feedPerTooth, teeth, diameter, radialDepth, helix, radialShare } = cut
  const engaged = Math.acos(1 - (2 * radialDepth) / diameter)
  const force = kc11 * feedPerTooth ** (1 - mc)
  const lagPerDepth = (2 * Math.tan((helix * Math.PI) / 180)) / diameter
  const pitch = (2 * Math.PI) / teeth

  // Force for each mm of flute at an angle, in the frame of the cutter's centre; the angle runs from where the chip is thin.
  const tangentialAt = (angle: number): number => force * Math.sin(Math.min(Math.max(angle, 0), engaged)) ** (1 - mc)
  const alongAt = (angle: number, tangential: number): number =>
    tangential * (Math.cos(angle) + radialShare * Math.sin(angle))
  const intoAt = (angle: number, tangential: number): number =>
    tangential * (Math.sin(angle) - radialShare * Math.cos(angle))
  const step = engaged / NODES
  const along = new Float64Array(NODES + 2)
  const into = new Float64Array(NODES + 2)
  for (let node = 1; helix > 0 && node <= NODES; node++) {
    const angle = (node - 0.5) * step
    const tangential = tangentialAt(angle)
    along[node] = (along[node - 1] ?? 0) + alongAt(angle, tangential) * step
    into[node] = (into[node - 1] ?? 0) + intoAt(angle, tangential) * step
  }
  const summedTo = (sums: Float64Array, angle: number): number => {
    const place = Math.min(Math.max(angle / step, 0), NODES)
    const node = Math.min(Math.floor(place), NODES - 1)
    const from = sums[node] ?? 0
    return from + (place - node) * ((sums[node + 1] ?? 0) - from)
  }

  return axialDepth => {
    const lag = lagPerDepth * axialDepth
    /** Of a turned cutter, its leading tooth at an angle. */
    const forceAt = (leading: number): number => {
      let [x, y] = [0, 0]
      for (let tooth = leading; tooth <= engaged + lag + 1e-12; tooth += pitch) {
        if (lag < 1e-9) {
          if (tooth > engaged) break
          const tangential = tangentialAt(tooth)
          x += alongAt(tooth, tangential) * axialDepth
          y += intoAt(tooth, tangential) * axialDepth
        } else {
          x += ((summedTo(along, tooth) - summedTo(along, tooth - lag)) * axialDepth) / lag
          y += ((summedTo(into, tooth) - summedTo(into, tooth - lag)) * axialDepth) / lag
        }
      }
      return Math.sqrt(x * x + y * y)
    }
    // A tooth is at its heaviest as it leaves or enters the cut, which no even step need hit.
    let greatest = Math.max(forceAt(engaged % pitch), forceAt(lag % pitch))
    for (let turn = 0; turn <= TURNS; turn++) greatest = Math.max(greatest, forceAt((turn / TURNS) * pitch))
    return greatest
  }
}
