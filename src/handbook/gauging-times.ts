/**
 * Minutes that one reading takes, taking up and putting down the gauge included, and what is done around readings. Source:
 * common practice, no source.
 */
export const GAUGING_TIMES = {
  /** Whatever the kind, by a caliper or a gauge that reads no finer. */
  coarse: { resolution: 0.01, each: 0.2 },
  /** Of form, on an instrument that turns the part. */
  turned: { resolution: 0.0001, each: 2 },
  /** To bring a size in: stop, wipe, measure, correct; by the tolerance, mm. */
  sizing: { closeTo: 0.05, close: 0.9, wide: 0.4 },
  /** A figure written down. */
  record: 0.08,
  washed: 2,
  soaked: 0.5,
  oiledAndWrapped: 1,
  /** For rest and trouble, of the sum. */
  allowance: 0.1,
} as const

/** Minutes a reading, and readings of a size at the final inspection: a bore at four heights each three ways, an outside at six places. */
export const READING = {
  outside: { each: 0.4, final: 1.5 },
  bore: { each: 0.6, final: 3 },
  depth: { each: 0.35 },
  length: { each: 0.4 },
  form: { each: 0.5 },
  // Two places.
  roughness: { each: 0.7, final: 1.4 },
  hardness: { each: 1.2 },
  angle: { each: 0.5 },
  contour: { each: 0.3 },
  edge: { each: 0.35 },
  groove: { each: 0.25 },
  visual: { each: 0.3 },
} as const
