export type HoningGrit = {
  readonly grit: number
  /** Ra that new stones leave on hard steel, µm: alumina and silicon carbide, and CBN. */
  readonly alumina: readonly [number, number]
  readonly cbn: readonly [number, number]
}

/**
 * Spread ±40 %. Source: memory: honing-tool guides, interpolated. Makers' charts, as remembered, put alumina on hard steel
 * near 0.6 at grit 80, so the two coarsest rows may read half as high again to twice as high. 400 grit is used for a last
 * pass in two-stroke practice, 600 for a plateau.
 */
export const HONING_GRITS: readonly HoningGrit[] = [
  { grit: 80, alumina: [1, 1.6], cbn: [1.2, 1.8] },
  { grit: 120, alumina: [0.7, 1.1], cbn: [0.9, 1.4] },
  { grit: 150, alumina: [0.5, 0.8], cbn: [0.7, 1.1] },
  { grit: 220, alumina: [0.35, 0.6], cbn: [0.5, 0.8] },
  { grit: 280, alumina: [0.25, 0.4], cbn: [0.35, 0.6] },
  { grit: 400, alumina: [0.15, 0.3], cbn: [0.25, 0.45] },
  { grit: 500, alumina: [0.08, 0.15], cbn: [0.15, 0.25] },
  { grit: 600, alumina: [0.04, 0.1], cbn: [0.1, 0.2] },
]

/**
 * What a hone alone makes good after nitriding: ovality as hardened and stock a side, most, mm, and length over bore.
 * Diamond or CBN: grit D91 to D126 through the compound layer, D46 or silicon carbide to finish.
 */
export const HONED_ALONE = {
  ovality: 0.04,
  stock: 0.06,
  lengthOverBore: 3,
  source: 'common practice/estimate',
} as const

/** m/min. Source: common practice, no source: 20 to 35 hard steel, 25 to 60 cast iron, 30 to 60 CBN. */
export const HONING_SPEED = { hardSteel: 30, castIron: 40, cbn: 45 } as const

/** µm/min on diameter. Source: common practice, no source: alumina 5 to 15, finishing 4 to 8, CBN 15 to 40. */
export const HONING_RATE = { rough: 10, finish: 6, roughCbn: 25, roughIron: 20 } as const

/** mm on diameter that the last stone takes. Source: common practice, no source: finish only 0.005 to 0.02. */
export const LAST_STONE_STOCK = 0.006

/**
 * Degrees, included. Source: the instructions of one 1050 cc two-stroke top-end kit, and "about 45°" in two-stroke notes;
 * over 60 the rings spin and the charge bleeds, under 25 little oil stays at a bridge: common practice, no source.
 */
export const CROSS_HATCH_ANGLE = 45

/** N/mm². Source: memory. */
export const HONING_PRESSURE = { rough: [0.6, 1.5], finish: [0.2, 0.5] } as const

/** Source: common practice, no source. */
export const STONE_RULES: {
  readonly overrun: number
  readonly overTallestPort: number
  readonly beyondBelt: number
  readonly overPortWidth: number
  readonly shortestStroke: number
  readonly retraces: number
} = {
  /** Overrun beyond each end, in stone lengths; never over a half. */
  overrun: 1 / 3,
  /** Stone over the tallest port, so that half of it always lies on land. */
  overTallestPort: 2,
  /** Stone beyond the belt of ports at each side, in stone lengths. */
  beyondBelt: 1 / 4,
  /** Stone width over port width, else guide shoes or half the pressure. */
  overPortWidth: 1.3,
  shortestStroke: 12,
  /** Turns for each double stroke nearer to a whole number than this retrace their own grooves. */
  retraces: 0.03,
}
