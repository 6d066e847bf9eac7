/** Manganese phosphate for running in: soft, porous, holds oil. It releases hydrogen: the bake rule holds from 1000 MPa. */
export const MANGANESE_PHOSPHATE = {
  /** µm; about half of it grows inward. */
  film: { least: 3, most: 15 },
  /** Outward, per side, µm. */
  sizeChange: { least: 1, most: 5 },
  /** Forms poorly over this, %: Nevosad et al., J. Mater. Eng. Perform. 30 (2021) 8057. */
  chromium: 1,
  source: 'memory: ISO 9717 practice',
} as const
