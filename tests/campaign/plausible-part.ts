import { stringify } from 'yaml'
import { MATERIALS } from '../../src/handbook/materials.ts'
import schema from '../../src/part/part.schema.json' with { type: 'json' }
import { SHOPS } from './bases.ts'
import type { Case } from './judge.ts'
import { plausiblePorts } from './plausible-ports.ts'
import { type Random, randomOf } from './random.ts'

type Json = Record<string, unknown>
type Kind = 'liner' | 'sleeve' | 'pin' | 'piston'

/** What most parts of a kind are made of; the others are of any grade that the handbook lists. */
const USUAL: Readonly<Partial<Record<Kind, readonly string[]>>> = {
  liner: ['42CrMo4', 'EN-GJL-250', '34CrAlNi7-10'],
  sleeve: ['42CrMo4', '31CrMoV9', '16MnCr5'],
  pin: ['16MnCr5', '42CrMo4'],
}

/** Processes that the trade gives each group of materials; the part is asked for one of them, or for none. */
const HARDENED: Readonly<Record<string, readonly string[]>> = {
  'heat-treatable steel': [
    'gas nitriding',
    'plasma nitriding',
    'salt-bath nitriding',
    'nitrocarburising',
    'induction hardening',
    'through hardening',
  ],
  'nitriding steel': ['gas nitriding', 'plasma nitriding', 'salt-bath nitriding', 'nitrocarburising'],
  'case-hardening steel': ['carburising', 'nitrocarburising'],
  'unalloyed steel': ['induction hardening', 'salt-bath nitriding', 'nitrocarburising'],
  'microalloyed steel': ['induction hardening', 'nitrocarburising'],
  'bearing steel': ['through hardening'],
}

/** Depth asked for and hardness asked for, mm and HV, least and most. */
const CASES: Readonly<
  Record<string, { readonly depth: readonly [number, number]; readonly hardness: readonly [number, number] }>
> = {
  'gas nitriding': { depth: [0.1, 0.35], hardness: [450, 750] },
  'plasma nitriding': { depth: [0.1, 0.35], hardness: [450, 750] },
  'salt-bath nitriding': { depth: [0.1, 0.2], hardness: [400, 650] },
  nitrocarburising: { depth: [0.1, 0.2], hardness: [350, 600] },
  carburising: { depth: [0.3, 1.2], hardness: [600, 700] },
  'induction hardening': { depth: [0.5, 2], hardness: [450, 600] },
  'through hardening': { depth: [0.3, 0.3], hardness: [500, 650] },
}

const FEATURES = schema.properties.body.properties as Json

/** A part that a works could be asked for: a kind with the sizes, tolerances, material and treatment that go together. */
export function plausibleOf(seed: number, number: number, options: { readonly paper: number }): Case {
  const random = randomOf(seed, number)
  const kind: Kind = random.pick(['liner', 'liner', 'liner', 'sleeve', 'sleeve', 'pin', 'piston'])
  const part = partOf(random, kind, number)
  const shop = SHOPS[0] ?? ''
  return {
    files: { 'part.yaml': stringify(part), ...(random.chance(0.4) && { 'shop.yaml': shop }) },
    commands: [
      ['plan', 'part.yaml', '--json', '--quantity', String(random.pick([1, 4, 12, 18, 40, 150]))],
      ...(random.chance(options.paper)
        ? [['traveller', 'part.yaml', '--format', random.pick(['html', 'html', 'both'])]]
        : []),
    ],
  }
}

const rounded = (value: number, to: number): number => Number((Math.round(value / to) * to).toFixed(6))

function partOf(random: Random, kind: Kind, number: number): Json {
  const usual = random.chance(0.6) ? (USUAL[kind] ?? []) : []
  const entry = random.any(
    MATERIALS.filter(({ grade, group }) =>
      usual.length > 0 ? usual.includes(grade) : kind !== 'piston' || group === 'wrought aluminium',
    ),
  )
  const grade = entry?.grade ?? '42CrMo4'
  const group = entry?.group ?? ''
  const processes = kind === 'piston' ? [] : (HARDENED[group] ?? [])
  const process = random.chance(0.75) ? random.any(processes) : undefined
  const bore = rounded(kind === 'pin' ? random.between(5, 30) : random.between(15, 120), random.pick([1, 1, 0.5, 0.1]))
  const length = rounded(
    kind === 'pin' ? random.between(20, 120) : Math.min(250, bore * random.between(0.6, 2.6)),
    random.pick([1, 1, 0.5]),
  )
  const wall = rounded(random.between(2.5, 3 + bore / 8), 0.5)
  const engine = kind === 'liner' && random.chance(0.6)
  const hardened = process !== undefined
  const stroke = rounded(bore * random.between(0.8, 1.3), 1)
  const ported = (kind === 'liner' && engine) || (kind === 'sleeve' && random.chance(0.6))
  return {
    part: { number: `OX-9-${number}`, title: `Oxmere ${kind}`, revision: 'A', kind },
    ...(engine && {
      engine: {
        stroke,
        rod: rounded(stroke * random.between(1.6, 2.2), 1),
        'crown-below-top': random.pick([0, 0, 0.4, -0.3]),
        ...(random.chance(0.7) && { speed: rounded(random.between(2000, 11000), 100) }),
      },
    }),
    material: {
      grade,
      ...(random.chance(0.85) && {
        hardness: `${rounded(group.startsWith('case') ? random.between(150, 200) : random.between(220, 340), 10)} HV`,
      }),
      ...(random.chance(0.8) && group === 'heat-treatable steel' && { temper: rounded(random.between(560, 660), 10) }),
    },
    body: { ...bodyOf(random, { kind, bore, length, wall, hardened }), ...featuresOf(random, { bore, length, wall }) },
    ...(process && { hardening: hardeningOf(random, process, kind) }),
    ...(kind === 'liner' &&
      !hardened &&
      random.chance(0.3) && {
        plating: {
          process: random.pick(['hard chrome', 'nickel silicon carbide']),
          thickness: random.pick<unknown>([0.05, 0.06, 0.075, '0.08 ±0.015', 'min 0.05']),
        },
      }),
    ...(random.chance(0.15) && {
      stock: { outside: rounded(random.between(0.08, 0.3), 0.01), bore: rounded(random.between(0.08, 0.3), 0.01) },
    }),
    ...(ported && { ports: plausiblePorts(random, { bore, length, wall, stroke: engine ? stroke : undefined }) }),
  }
}

type Sizes = { readonly bore: number; readonly length: number; readonly wall: number }

function bodyOf(
  random: Random,
  { kind, bore, length, wall, hardened }: Sizes & { kind: Kind; hardened: boolean },
): Json {
  const outside = rounded(kind === 'pin' ? bore + 2 * random.between(2, 8) : bore + 2 * wall, 0.5)
  const fine = hardened ? ['g6', 'h6', 'f7', 'h5'] : ['g6', 'h7', 'h7', 'f7', 'h8']
  const seat = {
    size: `${outside} ${random.any(fine)}`,
    ...(random.chance(0.8) && { Ra: random.pick([0.2, 0.4, 0.8, 0.8, 1.6]) }),
    ...(random.chance(0.3) && { runout: random.pick([0.01, 0.015, 0.03]) }),
    ...(kind === 'pin' && random.chance(0.5) && { roundness: random.pick([0.001, 0.002, 0.003]) }),
  }
  const flange = random.between(3, 8)
  const flanged = kind === 'liner' && random.chance(0.8)
  const to = rounded(flange, 0.5)
  const running = {
    size: `${bore} ${random.pick(['H6', 'H7', 'H7', 'H8'])}`,
    Ra: random.pick([0.2, 0.3, 0.4, 0.6, 0.8]),
    ...(random.chance(0.6) && { cylindricity: random.pick([0.005, 0.006, 0.01, 0.015]) }),
    ...(random.chance(0.08) && { taper: random.pick([0.02, 0.04, 0.06]) }),
  }
  const recess = rounded(random.between(1, 6), 0.5)
  const plain = random.chance(0.85)
  return {
    length: `${length} ${random.pick(['±0.05', '±0.1', '±0.2', '+0/-0.1', 'h11'])}`,
    outside: flanged
      ? [
          {
            to,
            size: `${rounded(outside + 2 * random.between(2, 6), 0.5)} ${random.pick(['h9', 'h11'])}`,
            name: 'flange',
          },
          { to: length, name: 'seat', ...seat },
        ]
      : kind === 'piston'
        ? [
            { to: rounded(length * 0.3, 1), size: `${rounded(bore - 0.2, 0.01)} ±0.03`, name: 'crown land' },
            { to: length, size: `${rounded(bore - 0.06, 0.01)} ±0.025`, Ra: 1.6, name: 'skirt' },
          ]
        : seat,
    ...(kind === 'pin' && random.chance(0.8) && { bore: random.chance(0.7) ? `${bore} ±0.1` : running }),
    ...((kind === 'liner' || kind === 'sleeve') && {
      bore: plain
        ? running
        : [
            { to: recess, size: `${rounded(bore + random.between(0.5, wall), 0.5)} H9`, name: 'recess' },
            { to: length, name: 'running bore', ...running },
          ],
    }),
    ...(random.chance(0.5) &&
      kind !== 'piston' && { top: { Ra: random.pick([0.8, 1.6]), ...(random.chance(0.4) && { flatness: 0.01 }) } }),
  }
}

function hardeningOf(random: Random, process: string, kind: Kind): Json {
  const { depth, hardness } = CASES[process] ?? { depth: [0.2, 0.2], hardness: [500, 500] }
  const masks = kind === 'pin' ? ['outside', 'bore', 'bottom'] : ['bore', 'top', 'bottom', 'seat', 'outside']
  return {
    process,
    ...(random.chance(0.9) && { hardness: `min ${rounded(random.between(...hardness), 10)} HV` }),
    ...(process !== 'through hardening' &&
      random.chance(0.95) && { depth: `min ${rounded(random.between(...depth), 0.05)}` }),
    ...(random.chance(0.12) && { masked: [random.any(masks)] }),
  }
}

/** What a drawing may have beside its bands, as far as the part file has words for it. */
function featuresOf(random: Random, { bore, length, wall }: Sizes): Json {
  if (!random.chance(0.2)) return {}
  const outside = bore + 2 * wall
  return {
    ...('grooves' in FEATURES && {
      grooves: [
        {
          name: 'O-ring',
          on: 'outside',
          at: rounded(length * 0.8, 1),
          width: '2.4 +0.2/0',
          size: `${rounded(outside - Math.min(3, wall), 0.1)} h11`,
        },
      ],
    }),
    ...('holes' in FEATURES &&
      random.chance(0.5) && {
        holes: [{ name: 'oil', at: 90, depth: rounded(length * 0.9, 1), size: '3 H12', through: 'wall' }],
      }),
  }
}
