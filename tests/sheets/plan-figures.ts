import type { Plan } from '../../src/plan/plan.ts'

/** What a sheet may say: the numbers and the words of the part of the Plan that it is about. */
export type Pool = { readonly numbers: ReadonlySet<number>; readonly words: ReadonlySet<string> }

/** Words with a figure in them, their punctuation off: `42CrMo4`, `0.03`, `H6`. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .split(/[\s\u00a0/,;:()×–]+/)
    .map(word => word.replace(/^[^\p{L}\d±+−-]+|[^\p{L}\d%]+$/gu, ''))
    .filter(word => /\d/.test(word))

/** `-0.5` of `±-0.5`, `-46` of `−46` with a true minus, `48` of `48H6`. */
export const numbersIn = (text: string): readonly string[] =>
  (text.replaceAll('−', '-').match(/(?:(?<![\p{L}\d])-)?\d+(?:\.\d+)?/gu) ?? []).map(number =>
    Number(number) === 0 ? number.replace('-', '') : number,
  )

export function poolOf(...parts: readonly unknown[]): Pool {
  const numbers = new Set<number>()
  const words = new Set<string>()
  const see = (value: unknown): void => {
    if (typeof value === 'number') numbers.add(value)
    else if (typeof value === 'string') for (const word of wordsOf(value)) words.add(word)
    else if (typeof value === 'object' && value !== null) for (const one of Object.values(value)) see(one)
  }
  for (const part of parts) see(part)
  return { numbers, words }
}

/** Numbers that name, or that say how to write. */
const NAMES: ReadonlySet<string> = new Set(['number', 'operation', 'operations', 'places'])

/**
 * The plan as it is given away, through text, with every number a hair off by a law that is not straight: twice a number is
 * then no number of the plan, nor is a sum or a difference of two, however round they were.
 */
export function twinOf(plan: Plan): Plan {
  const twin = (value: unknown, name: string): unknown => {
    if (typeof value === 'number') return NAMES.has(name) ? value : value * (1 + 1e-6 * Math.sqrt(Math.abs(value)))
    if (Array.isArray(value)) return value.map(one => twin(one, name))
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, twin(one, key)]))
  }
  return twin(JSON.parse(JSON.stringify(plan)), '') as Plan
}

export type SheetId = { readonly template: string; readonly corner: string; readonly names: readonly string[] }

/** The part of the Plan that a sheet is about. */
export function aboutOf(plan: Plan, { template, corner, names }: SheetId): Pool {
  const { part, shop, batch, material, operations } = plan
  const everywhere = [part, shop.name, batch, material.grade, plan.date, plan.fingerprint, plan.program]
  const here = operations.filter(({ number }) => names.includes(String(number)))
  const routed = operations.map(({ steps: _, shape: __, sizes: ___, ...rest }) => rest)
  const checks = plan.inspection.characteristics
  const checked = checks.filter(({ operation }) => here.some(({ number }) => number === operation))
  const last = Math.max(0, ...here.map(({ number }) => number))
  const worked = [
    everywhere,
    routed,
    here,
    checked,
    plan.ladders.map(({ states }) => states.filter(state => state.operation <= last)),
  ]
  const milled = [plan.ports, plan.setUps, plan.fixture, plan.clocking, plan.millingGrip, shop.fixture]
  const order = plan.orders.find(({ operations: visit }) => visit.join('+') === corner)
  switch (template) {
    case 'route-card':
    case 'calendar':
      return poolOf(everywhere, material, routed, plan.findings)
    case 'material':
      return poolOf(worked, material, plan.kit)
    case 'operation':
      return poolOf(worked, plan.plating)
    case 'bench':
      return poolOf(worked, plan.ports)
    case 'ports-left':
    case 'ports-right':
    case 'ports-cutting':
      return poolOf(worked, milled)
    case 'check-paper':
      return poolOf(everywhere, milled)
    case 'ports-file':
      return poolOf(everywhere, routed, milled, plan.gasExchange)
    case 'stock':
      return poolOf(everywhere, plan.stock, plan.ladders, plan.axial, plan.case, plan.plating)
    case 'matrix':
    case 'characteristics':
      return poolOf(everywhere, routed, checks)
    case 'order':
      return poolOf(
        everywhere,
        order,
        operations.filter(each => order?.operations.includes(each.number)),
        checks.filter(check => order?.operations.includes(check.operation)),
      )
    case 'workings':
      return poolOf(everywhere, plan.workings)
    default:
      throw new Error(`no part of the Plan is known for a sheet of ${template}`)
  }
}
