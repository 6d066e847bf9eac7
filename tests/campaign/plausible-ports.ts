import type { Random } from './random.ts'

type Json = Record<string, unknown>
type Liner = {
  readonly bore: number
  readonly length: number
  readonly wall: number
  /** Without a crank the ports are given by depth. */
  readonly stroke: number | undefined
}

const rounded = (value: number, to: number): number => Number((Math.round(value / to) * to).toFixed(6))

/** The ports of a two-stroke liner in its own proportions, or one or two rows of plain windows round a sleeve. */
export function plausiblePorts(random: Random, { bore, length, stroke }: Liner): readonly Json[] {
  return stroke === undefined ? rows(random, bore, length) : engine(random, bore, stroke)
}

function engine(random: Random, bore: number, stroke: number): readonly Json[] {
  // Corners grow with the bore: 1 mm in a small engine, 4 in a large one.
  const corner = () => rounded(Math.min(4, Math.max(1, bore * random.between(0.03, 0.06))), 0.5)
  const exhaust = random.whole(100, 112)
  const transfer = exhaust + random.whole(12, 18)
  const height = (opens: number) =>
    rounded(stroke * (0.5 + 0.5 * Math.cos((opens * Math.PI) / 180)) * random.between(0.85, 0.95), 0.1)
  return [
    {
      name: 'exhaust',
      at: 0,
      opens: exhaust,
      height: height(exhaust),
      width: rounded(bore * random.between(0.45, 0.65), 0.5),
      corner: corner(),
      ...(bore >= 40 && random.chance(0.5) && { bridge: rounded(Math.max(2, bore * 0.05), 0.1) }),
    },
    {
      name: 'main transfer',
      at: random.whole(72, 85),
      mirror: true,
      opens: transfer,
      height: height(transfer),
      width: rounded(bore * random.between(0.28, 0.38), 0.5),
      corner: corner(),
      up: random.pick([0, 5, 10, 15]),
      back: bore < 40 ? random.pick([0, 10]) : random.pick([0, 20, 32]),
    },
    ...(random.chance(0.4)
      ? [
          {
            name: 'rear transfer',
            at: random.whole(122, 135),
            mirror: true,
            opens: transfer,
            height: height(transfer),
            width: rounded(bore * 0.2, 0.5),
            corner: corner(),
            up: random.pick([0, 10]),
          },
        ]
      : []),
    ...(random.chance(0.6)
      ? [
          {
            name: 'boost',
            at: 180,
            opens: transfer + 1,
            height: height(transfer + 1),
            width: rounded(bore * random.between(0.2, 0.3), 0.5),
            corner: { cut: bore < 40 ? 1 : 1.5 },
            up: random.pick([30, 40, 45]),
          },
        ]
      : []),
  ]
}

function rows(random: Random, bore: number, length: number): readonly Json[] {
  const count = random.pick([1, 1, 2])
  const windows = random.pick([2, 3, 4, 6])
  return Array.from({ length: count }, (_, row) => {
    const top = rounded(length * (0.3 + 0.3 * row), 0.5)
    const height = rounded(Math.min(length * 0.12, bore * 0.3), 0.5)
    const width = rounded(Math.min(bore * 0.3, (bore * 1.8) / windows), 0.5)
    return Array.from({ length: windows }, (_, index) => ({
      name: `${row === 0 ? 'upper' : 'lower'} ${index + 1}`,
      at: rounded((360 / windows) * index + (row * 180) / windows - 150, 0.1),
      top,
      height,
      width,
      // Two corners and a straight between them go into the shorter side.
      corner: Math.min(bore < 30 ? 1 : random.pick([1.5, 2]), rounded(Math.min(height, width) / 2 - 0.25, 0.25)),
    }))
  }).flat()
}
