import type { Gauge, GaugeKind } from './shop.ts'

type Made = {
  readonly name: string
  readonly kind: GaugeKind
  /** Ends of the sizes that it is sold in, mm. */
  readonly ends: readonly number[]
  readonly resolution: number
  /** Expanded uncertainty, k = 2: at the small end, and for each mm over it. */
  readonly uncertainty: readonly [number, number]
}

/**
 * Gauges that any dealer has or lends, by the sizes that they are sold in. Uncertainties: common practice, no source, those of
 * the built-in gauges, more with the size for what the hand's warmth and the frame's bend do.
 */
const MADE: readonly Made[] = [
  {
    name: 'outside micrometer',
    kind: 'outside',
    ends: [0, 25, 50, 75, 100, 125, 150, 175, 200, 225, 250],
    resolution: 0.001,
    uncertainty: [0.005, 0.00002],
  },
  {
    name: 'comparator set on a master disc',
    kind: 'outside',
    ends: [5, 100, 200, 300],
    resolution: 0.0005,
    uncertainty: [0.0015, 0.00001],
  },
  {
    name: 'two-point bore gauge set on a ring',
    kind: 'bore',
    ends: [4, 6, 10, 18, 35, 60, 100, 160, 250],
    resolution: 0.001,
    uncertainty: [0.003, 0.00001],
  },
  {
    name: 'air plug with two setting rings',
    kind: 'bore',
    ends: [4, 10, 18, 35, 60, 100, 160],
    resolution: 0.0001,
    uncertainty: [0.0015, 0.000005],
  },
  {
    name: 'outside micrometer, length',
    kind: 'length',
    ends: [0, 25, 50, 75, 100, 125, 150, 175, 200, 225, 250, 275],
    resolution: 0.001,
    uncertainty: [0.005, 0.00002],
  },
  {
    name: 'height instrument with probe',
    kind: 'depth',
    ends: [0, 300, 600],
    resolution: 0.001,
    uncertainty: [0.0045, 0],
  },
  { name: 'lever indicator', kind: 'form', ends: [0, 300], resolution: 0.002, uncertainty: [0.0035, 0] },
  {
    name: 'roundness instrument, hired or at a measuring room',
    kind: 'form',
    ends: [2, 300],
    resolution: 0.00001,
    uncertainty: [0.0002, 0],
  },
  { name: 'gauge pins', kind: 'contour', ends: [0.5, 20], resolution: 0.01, uncertainty: [0.01, 0] },
  { name: "toolmaker's microscope", kind: 'contour', ends: [0, 150], resolution: 0.001, uncertainty: [0.007, 0] },
]

export const GAUGES_TO_GET: readonly Gauge[] = MADE.flatMap(
  ({ name, kind, ends, resolution, uncertainty: [least, more] }) =>
    ends.slice(1).map((to, index) => {
      const from = ends[index] ?? 0
      const uncertainty = Number((least + more * from).toFixed(5))
      return { name: `${name} ${from} to ${to}`, kind, from, to, resolution, uncertainty }
    }),
)
