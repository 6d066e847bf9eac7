import type { Part } from '../part/part.ts'
import type { Plan } from '../plan/plan.ts'
import { type Difference, differencesOf } from './differences.ts'
import { type OnTheWay, piecesInWork } from './pieces-in-work.ts'
import { type SizeChange, sizeChanges, type TimingChange, timingChanges } from './weighed.ts'

export const SECTIONS = [
  'drawing',
  'material',
  'route',
  'sizes',
  'stock and case',
  'timing and areas',
  'set-ups',
  'tools and times',
  'measuring',
  'orders',
  'cost and dates',
  'findings',
] as const
export type Section = (typeof SECTIONS)[number]

export type Comparison = {
  readonly sections: Readonly<Record<Section, readonly Difference[]>>
  /** Sizes that an operation leaves, weighed by the tolerance that they live in. */
  readonly sizes: readonly SizeChange[]
  /** Openings of ports, held against what making varies. */
  readonly timing: readonly TimingChange[]
  /** Visits whose order says something else: to be recalled where it is out. */
  readonly recall: readonly { readonly order: string; readonly firm: string; readonly why: string }[]
  /** After each operation of the old route: whether a piece there can become the new part. */
  readonly pieces: readonly OnTheWay[]
}

const SECTION_OF: Readonly<Record<string, Section>> = {
  part: 'drawing',
  material: 'material',
  batch: 'material',
  stock: 'stock and case',
  ladders: 'sizes',
  axial: 'sizes',
  case: 'stock and case',
  quench: 'stock and case',
  plating: 'stock and case',
  ports: 'timing and areas',
  gasExchange: 'timing and areas',
  features: 'sizes',
  fit: 'sizes',
  setUps: 'set-ups',
  clocking: 'set-ups',
  millingGrip: 'set-ups',
  fixture: 'set-ups',
  inspection: 'measuring',
  kit: 'tools and times',
  orders: 'orders',
  cost: 'cost and dates',
  unpriced: 'cost and dates',
  calendar: 'cost and dates',
  delivery: 'cost and dates',
  shop: 'set-ups',
}

/** Compares two plans; with the parts, as far as they are at hand, the drawing too. Both plans are of one works, quantity and date. */
export function comparePlans(was: Plan, is: Plan, parts?: { readonly was: Part; readonly is: Part }): Comparison {
  const drawing = parts ? differencesOf(parts.was, parts.is) : []
  const planned = differencesOf(plain(was), plain(is))
  const sections = Object.fromEntries(SECTIONS.map(section => [section, [] as Difference[]])) as Record<
    Section,
    Difference[]
  >
  sections.drawing.push(...drawing)
  for (const difference of planned) {
    const section = sectionOf(difference.path)
    // What the part file says of itself has been told by the drawing.
    if (section !== 'drawing' || !parts) sections[section].push(difference)
  }
  sections.findings.push(...findingDifferences(was, is))
  return {
    sections,
    sizes: sizeChanges(was, is),
    timing: timingChanges(was, is),
    recall: recallOf(was, is, sections.orders),
    pieces: piecesInWork(was, is),
  }
}

export const isEmpty = ({ sections }: Comparison): boolean => SECTIONS.every(section => sections[section].length === 0)

/** Without what is told elsewhere, operations called by their names wherever they are pointed at by number. */
function plain({ findings: _, workings: __, operations, date: ___, ...plan }: Plan): object {
  const names = new Map(operations.map(({ number, name }) => [number, name]))
  return { ...(named(plan, names) as object), operations: named(operations, names) }
}

function named(value: unknown, names: ReadonlyMap<number, string>): unknown {
  if (Array.isArray(value)) return value.map(entry => named(entry, names))
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [
      key,
      key === 'operation' && typeof inner === 'number'
        ? (names.get(inner) ?? inner)
        : key === 'operations' && Array.isArray(inner)
          ? inner.map(entry => (typeof entry === 'number' ? (names.get(entry) ?? entry) : entry))
          : named(inner, names),
    ]),
  )
}

function sectionOf([first = '', , second = '']: readonly string[]): Section {
  if (first !== 'operations')
    return first === 'ports' && second === 'windows' ? 'set-ups' : (SECTION_OF[first] ?? 'route')
  return second === 'sizes'
    ? 'sizes'
    : second === 'steps' || second === 'time'
      ? 'tools and times'
      : second === 'chuckings'
        ? 'set-ups'
        : 'route'
}

/** By code and words: what is found of one and not of the other. */
function findingDifferences(was: Plan, is: Plan): readonly Difference[] {
  const [old, now] = [was, is].map(({ findings }) => new Set(findings.map(({ code, message }) => `${code} ${message}`)))
  return [
    ...was.findings
      .filter(({ code, message }) => !now?.has(`${code} ${message}`))
      .map(({ code, message }) => ({ path: [code], was: message })),
    ...is.findings
      .filter(({ code, message }) => !old?.has(`${code} ${message}`))
      .map(({ code, message }) => ({ path: [code], is: message })),
  ]
}

function recallOf(was: Plan, is: Plan, differences: readonly Difference[]): Comparison['recall'] {
  return was.orders.flatMap(({ number, title, firm }) => {
    const order = `order ${number}, ${title}`
    if (!is.orders.some(other => other.title === title && other.firm === firm))
      return [{ order, firm, why: 'the new plan does not have it' }]
    const own = differences.filter(({ path }) => path[1]?.startsWith(title) && !path.includes('revision'))
    const [first] = own
    return first
      ? [
          {
            order,
            firm,
            why: `${own.length} ${own.length === 1 ? 'figure or word' : 'figures or words'} differ: ${first.path.slice(2).join(', ')}`,
          },
        ]
      : []
  })
}
