/** Work as the grinding table tells it apart. */
export type GroundWork =
  | 'plain carbon steel, annealed'
  | 'plain carbon steel, hardened'
  | 'alloy steel, annealed'
  | 'alloy steel, hardened'
  | 'tool steel, hardened'
  | 'copper alloys'
  | 'aluminium alloys'

export type GrindingRow = {
  readonly work: GroundWork
  /** m/min. */
  readonly workSpeed: number
  /** Infeed for each pass, mm. The handbook does not say on what: taken on diameter, the careful reading. */
  readonly roughInfeed: number
  readonly finishInfeed: readonly [number, number]
  /** Traverse for each turn of the work, in wheel widths. */
  readonly roughTraverse: number
  readonly finishTraverse: number
}

/** Outside grinding with traverse; the handbook calls the values conservative. Source: Machinery's Handbook, 31st ed., p. 1318. */
export const GRINDING_ROWS: readonly GrindingRow[] = [
  row({
    work: 'plain carbon steel, annealed',
    workSpeed: 30.5,
    finishInfeed: [0.013, 0.013],
    roughTraverse: 1 / 2,
    finishTraverse: 1 / 6,
  }),
  row({
    work: 'plain carbon steel, hardened',
    workSpeed: 21,
    finishInfeed: [0.007, 0.013],
    roughTraverse: 1 / 4,
    finishTraverse: 1 / 8,
  }),
  row({
    work: 'alloy steel, annealed',
    workSpeed: 30.5,
    finishInfeed: [0.013, 0.013],
    roughTraverse: 1 / 2,
    finishTraverse: 1 / 6,
  }),
  row({
    work: 'alloy steel, hardened',
    workSpeed: 21,
    finishInfeed: [0.005, 0.013],
    roughTraverse: 1 / 4,
    finishTraverse: 1 / 8,
  }),
  row({
    work: 'tool steel, hardened',
    workSpeed: 15,
    finishInfeed: [0.003, 0.013],
    roughTraverse: 1 / 4,
    finishTraverse: 1 / 8,
  }),
  row({
    work: 'copper alloys',
    workSpeed: 30.5,
    finishInfeed: [0, 0.013],
    roughTraverse: 1 / 3,
    finishTraverse: 1 / 6,
  }),
  row({
    work: 'aluminium alloys',
    workSpeed: 45.7,
    finishInfeed: [0, 0.013],
    roughTraverse: 1 / 3,
    finishTraverse: 1 / 6,
  }),
]

function row({
  work,
  workSpeed,
  finishInfeed,
  roughTraverse,
  finishTraverse,
}: {
  readonly work: GroundWork
  readonly workSpeed: number
  readonly finishInfeed: readonly [number, number]
  readonly roughTraverse: number
  readonly finishTraverse: number
}): GrindingRow {
  return { work, workSpeed, roughInfeed: 0.05, finishInfeed, roughTraverse, finishTraverse }
}

/** Infeed of a plunge for each turn of the work, mm. Source: Machinery's Handbook, 31st ed., p. 1318; on diameter as above. */
export const PLUNGE_INFEED = {
  'soft steel': { rough: 0.013, finish: 0.005 },
  'carbon steel, hardened': { rough: 0.005, finish: 0.0013 },
  'alloy or tool steel, hardened': { rough: 0.003, finish: 0.00064 },
} as const

/**
 * Thin-walled liners with a hard skin, infeed radial, mm; the ranges are 0.005 to 0.010 rough and 0.002 to 0.005 finish,
 * of which a bore takes the lower end. Source: common practice, no source.
 */
export const THIN_HARD_LINER = {
  outside: { rough: 0.01, finish: 0.005, sparkOut: 3 },
  bore: { rough: 0.005, finish: 0.0025, sparkOut: 4 },
  /** Each port edge strikes the wheel and the quill springs out over the ports. */
  portedBore: { rough: 0.005, finish: 0.0025, sparkOut: 6 },
  /** On diameter: what the finishing passes take. */
  finishStock: 0.02,
  /** m/min, in a ported bore 15 to 20. */
  boreWorkSpeed: 20,
  portedWorkSpeed: 18,
} as const

/** m/s. Source: common practice, no source: alumina 25 to 35 outside, 33 typical, 20 to 30 in a bore. */
export const WHEEL_SPEED = { outside: 33, bore: 25, face: 25 } as const

/** Wheel over bore diameter: under `weak` it is frail, from `burns` the coolant is starved. Source: common practice, no source. */
export const WHEEL_IN_BORE = { weak: 0.5, least: 0.6, most: 0.8, burns: 0.9 } as const

/** Quill, overhang over diameter. Source: common practice, no source. */
export const LONGEST_QUILL = { steel: 4, carbide: 6 } as const

/** Of a wheel in a ported bore. Source: common practice, no source. */
export const PORTED_BORE: {
  readonly wheelOverPort: number
  readonly reversalFromPort: number
  readonly overrun: number
} = {
  /** Wheel width over the tallest port. */
  wheelOverPort: 2,
  /** From any port edge to where the wheel turns back, mm. */
  reversalFromPort: 3,
  /** Overrun at each end, in wheel widths. */
  overrun: 1 / 3,
}

/** Starting wheels, in the order of marking of ISO 525: abrasive, grit, grade, bond. */
export const STARTING_WHEELS: readonly { readonly job: string; readonly wheel: string; readonly source: string }[] = [
  { job: 'nitriding steel before nitriding', wheel: 'A60-K5V', source: "Machinery's Handbook, 31st ed., p. 1317" },
  {
    job: 'nitrided steel, commercial finish',
    wheel: 'special fused alumina, 60-I8V',
    source: "Machinery's Handbook, 31st ed., p. 1317 (the letter I read as 1 in the copy)",
  },
  {
    job: 'hardened steel up to 25 mm',
    wheel: 'special fused alumina, 80-L8V',
    source: "Machinery's Handbook, 31st ed., p. 1317",
  },
  {
    job: 'hardened steel over 25 mm',
    wheel: 'special fused alumina, 60-K5V',
    source: "Machinery's Handbook, 31st ed., p. 1317",
  },
  { job: 'cast-iron bushings', wheel: 'C36-JV', source: "Machinery's Handbook, 31st ed., p. 1317" },
  {
    job: 'aluminium pistons',
    wheel: 'special fused alumina, 46-I8V',
    source: "Machinery's Handbook, 31st ed., p. 1317",
  },
  { job: 'nitrided or case-hardened bore', wheel: 'A60 to A80, I to K, open, V', source: 'common practice, no source' },
]
