import { stringify } from 'yaml'
import { SHOPS } from './bases.ts'
import { DRAWN_GRADES, type DrawnGrade, type Kind, type Treatment } from './drawn-grades.ts'
import type { Case } from './judge.ts'
import { bodyOf, clamped, featuresOf, type Made, rounded, type Sizes } from './plausible-body.ts'
import { plausiblePorts } from './plausible-ports.ts'
import { type Random, randomOf } from './random.ts'

type Json = Record<string, unknown>

export type Share = {
  /** Of the cases whose whole packet is printed, and of those that have the demo works' shop file beside them. */
  readonly paper: number
  readonly shop?: number
}

/** A part that a works could be asked for: a kind with the sizes, tolerances, material and treatment that go together. */
export function plausibleOf(seed: number, number: number, { paper, shop = 0 }: Share): Case {
  const random = randomOf(seed, number)
  const kind: Kind = random.pick(['liner', 'liner', 'liner', 'sleeve', 'sleeve', 'pin', 'piston'])
  const part = partOf(random, kind, number)
  return {
    files: { 'part.yaml': stringify(part), ...(random.chance(shop) && { 'shop.yaml': SHOPS[0] ?? '' }) },
    commands: [
      ['plan', 'part.yaml', '--json', '--quantity', String(random.pick([1, 4, 12, 18, 40, 150]))],
      ...(random.chance(paper) ? [['traveller', 'part.yaml', '--format', random.pick(['html', 'html', 'both'])]] : []),
    ],
  }
}

/** What a liner, a sleeve, a pin of an engine or a pump measures, in its own proportions. */
function sizesOf(random: Random, kind: Kind): Sizes & { readonly stroke: number } {
  if (kind === 'pin') {
    const outside = rounded(random.between(8, 45), random.pick([1, 1, 2]))
    const bore = random.chance(0.8) ? rounded(outside * random.between(0.4, 0.65), 0.5) : 0
    const length = rounded(outside * random.between(2, 5), random.pick([1, 1, 0.5]))
    return { bore, length, wall: (outside - bore) / 2, flange: 0, stroke: 0 }
  }
  const bore = rounded(random.between(15, 120), random.pick([1, 1, 0.5]))
  const stroke = rounded(bore * random.between(0.8, 1.25), 1)
  const share = { liner: [1.45, 1.9], sleeve: [0.6, 2.4], piston: [0.7, 1.1] } as const
  const [least, most] = share[kind]
  const length = rounded(
    Math.min(250, (kind === 'liner' ? stroke : bore) * random.between(least, most)),
    random.pick([1, 1, 0.5]),
  )
  const wall = rounded(clamped(random.between(bore * 0.05, 3 + bore / 10), 2.5, 12), 0.5)
  return { bore, length, wall, flange: rounded(random.between(2, clamped(bore * 0.07, 2.5, 6)), 0.5), stroke }
}

function partOf(random: Random, kind: Kind, number: number): Json {
  const sizes = sizesOf(random, kind)
  const { bore, length, wall, stroke } = sizes
  const flanged = kind === 'liner' && random.chance(0.8)
  const section = kind === 'piston' ? bore : bore + 2 * wall + (flanged ? 2 * sizes.flange : 0)
  const sold = DRAWN_GRADES.filter(({ kinds, upTo }) => kinds.includes(kind) && section + 3 <= upTo)
  const often = random.any(sold.flatMap(grade => grade.kinds.filter(known => known === kind).map(() => grade)))
  const common = random.chance(0.4) ? sold.find(({ names }) => names.includes(COMMON[kind])) : undefined
  const grade = common ?? often ?? DRAWN_GRADES[0]
  if (!grade) throw new Error('no grade is listed')
  const engine = kind === 'liner' && random.chance(0.65)
  const ported = engine || (kind === 'sleeve' && random.chance(0.45))
  const treatment = random.chance(0.8) ? treatmentFor(random, grade, { kind, wall, bore, ported }) : undefined
  const plating = kind === 'liner' && !treatment ? platingFor(random, grade) : undefined
  const body: Json = {
    ...bodyOf(random, kind, sizes, { flanged, treated: madeOf(treatment), soft: SOFT.test(grade.names[0]) }),
    ...featuresOf(random, sizes, kind),
  }
  return {
    part: { number: `OX-9-${number}`, title: `Oxmere ${kind}`, revision: 'A', kind },
    ...(engine && {
      engine: {
        stroke,
        rod: rounded(stroke * random.between(1.6, 2.2), 1),
        'crown-below-top': random.pick([0, 0, 0.4]),
        ...(random.chance(0.7) && { speed: rounded(random.between(2000, 11000), 100) }),
      },
    }),
    material: materialOf(random, grade, madeOf(treatment)),
    body,
    ...(treatment && { hardening: hardeningOf(random, treatment, { kind, wall, flanged, bore }) }),
    ...(plating && { plating: { ...plating, ...(Array.isArray(body['bore']) && { surface: 'running bore' }) } }),
    ...(ported && { ports: plausiblePorts(random, { bore, length, wall, stroke: engine ? stroke : undefined }) }),
  }
}

/** What most parts of a kind are made of. */
const COMMON: Readonly<Record<Kind, string>> = {
  liner: '42CrMo4',
  sleeve: '42CrMo4',
  pin: '16MnCr5',
  piston: 'EN AW-6082',
}

const THIN = /^(nitrocarburising|salt-bath nitriding)$/
const QUENCHED = /^(carburising|through hardening)$/
const madeOf = (treatment: Treatment | undefined): Made =>
  treatment === undefined
    ? 'soft'
    : THIN.test(treatment.process)
      ? 'thin layer'
      : QUENCHED.test(treatment.process)
        ? 'quenched'
        : 'cased'

/** Bushes of bronze and parts of aluminium are not drawn as fine as hardened steel. */
const SOFT = /^(Cu|EN AW|AlSi)/

function materialOf(random: Random, { names, bar, tempered }: DrawnGrade, made: Made): Json {
  const name = random.chance(0.6) ? names[0] : (random.any(names) ?? names[0])
  const steel = !SOFT.test(names[0]) && !names[0].startsWith('EN-')
  return {
    grade: name,
    // A drawing gives the hardness of the bar for steel; of a casting or a light alloy the grade says enough.
    ...((steel || random.chance(0.3)) && { hardness: `${rounded(random.between(...bar), 5)} HV` }),
    ...(tempered &&
      random.chance(0.8) && {
        // What is treated at 570 °C is bought tempered hotter.
        temper: rounded(random.between(made === 'thin layer' ? 610 : 580, 660), 10),
      }),
  }
}

/** A treatment that goes on the part: no deep case on a thin wall, none that the wall cannot carry. */
function treatmentFor(
  random: Random,
  { names, treatments }: DrawnGrade,
  { kind, wall, bore, ported }: { kind: Kind; wall: number; bore: number; ported: boolean },
): Treatment | undefined {
  if (kind === 'piston') return undefined
  const fits = treatments.filter(({ process }) => {
    if (process === 'induction hardening') return wall >= 6 && !ported && (kind === 'pin' || bore >= 25)
    if (process === 'carburising') return wall >= 3
    if (process === 'through hardening') return wall <= (names[0] === 'C60' ? 6 : 10) && !ported
    return true
  })
  return random.any(fits)
}

function platingFor(random: Random, { names, platings }: DrawnGrade): Json | undefined {
  const process = random.any(platings ?? [])
  if (!process || !(names[0].startsWith('EN AW') || random.chance(0.4))) return undefined
  return { process, thickness: random.pick<unknown>([0.05, 0.06, 0.075, '0.08 ±0.02', 'min 0.05']) }
}

function hardeningOf(
  random: Random,
  { process, hardness, depth }: Treatment,
  { kind, wall, flanged, bore }: { kind: Kind; wall: number; flanged: boolean; bore: number },
): Json {
  const carburised = process === 'carburising'
  // What each side of a wall is usually given: about an eleventh of it carburised, a tenth nitrided, an eighth by induction.
  const share = carburised ? wall / 11 : process === 'induction hardening' ? wall / 8 : wall / 10
  const least = depth && clamped(rounded(random.between(...depth), 0.05), depth[0], Math.max(depth[0], share))
  const masks =
    process === 'induction hardening' && kind !== 'pin'
      ? [flanged ? 'seat' : 'outside', ...(flanged ? ['flange'] : []), 'top', 'bottom']
      : process === 'induction hardening'
        ? [...(bore > 0 ? ['bore'] : []), 'top', 'bottom']
        : process !== 'through hardening' && random.chance(0.06)
          ? [random.any(kind === 'pin' ? (bore > 0 ? ['bore'] : ['top']) : ['bottom', flanged ? 'seat' : 'outside'])]
          : []
  return {
    process,
    hardness: `min ${rounded(random.between(...hardness), 10)} HV`,
    ...(least !== undefined && { depth: `min ${rounded(least, 0.01)}` }),
    ...(masks.length > 0 && { masked: masks }),
  }
}
