/** A last soft cut taken with care: what it holds, leaves, and how true it runs to the surface that locates the part next. */
export const FINE_TURNED = {
  /** On diameter: IT7 at 60 mm. */
  tolerance: 0.03,
  /** Roughness height, µm. */
  roughness: 6.3,
  /** Radial, outside to bore: turned on a mandrel in the finished bore, or both in one chucking. */
  outsideToBore: 0.01,
  source:
    'memory: Kosilova & Meshcheryakov, vol. 1: fine turning IT 6 to 8, Rz 3 to 6.3; truth to the bore common practice, no source',
} as const
