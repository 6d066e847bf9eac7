import type { Plan } from '../plan/plan.ts'
import { HARDENING_PROCESSES } from '../process.ts'
import { type Sized, sizesOf } from './weighed.ts'

/** A piece of the old plan that has come as far as an operation, on its way to the new part. */
export type OnTheWay = {
  readonly operation: string
  readonly number: number
  readonly becomes: 'yes' | 'by measuring' | 'cut again' | 'no'
  /** What has to be done, or what stands against it. */
  readonly because: readonly string[]
}

type Obstacle = { readonly becomes: OnTheWay['becomes']; readonly because: string }

const WORST = ['yes', 'by measuring', 'cut again', 'no'] as const
const SLACK = 1e-9

/** After each operation of the old route: whether what is done by then can become the new part, and what it takes. */
export function piecesInWork(was: Plan, is: Plan): readonly OnTheWay[] {
  return was.operations.map(({ name, number }, index) => {
    const done = was.operations.slice(0, index + 1).map(operation => operation.name)
    const cut = [...sizesFor(was, is, done), ...portsFor(was, is, done)]
    const obstacles = [
      ...materialFor(was, is),
      ...routeFor(was, is, done),
      ...softBefore(was, cut, done),
      ...caseFor(was, is, done),
    ]
    const worst = Math.max(0, ...obstacles.map(({ becomes }) => WORST.indexOf(becomes)))
    return {
      operation: name,
      number,
      becomes: WORST[worst] ?? 'no',
      because: [...new Set(obstacles.map(({ because }) => because))],
    }
  })
}

const materialFor = (was: Plan, is: Plan): readonly Obstacle[] => [
  ...(was.material.grade === is.material.grade
    ? []
    : [{ becomes: 'no' as const, because: `it is ${was.material.grade}, and the new part is ${is.material.grade}` }]),
]

/** What the new plan has among what is done, or before it, and the old has not; and what was done for nothing. */
function routeFor(was: Plan, is: Plan, done: readonly string[]): readonly Obstacle[] {
  const old = new Set(was.operations.map(({ name }) => name))
  const now = is.operations.map(({ name }) => name)
  const reached = Math.max(-1, ...done.map(name => now.indexOf(name)))
  const left = now.slice(0, reached + 1).filter(name => !old.has(name))
  const gone = done.filter(name => !now.includes(name))
  return [
    ...left.map(name => ({
      becomes: 'no' as const,
      because: `${name} comes before this in the new route, and was not done`,
    })),
    ...gone.map(name => ({ becomes: 'by measuring' as const, because: `${name} is done and is not in the new route` })),
  ]
}

/** Of every size the last that was made. */
function sizesFor(was: Plan, is: Plan, done: readonly string[]): readonly Obstacle[] {
  const now = sizesOf(is)
  const last = new Map<string, Sized>()
  for (const size of sizesOf(was).values()) if (done.includes(size.operation)) last.set(size.size, size)
  const ports = new Set(was.ports.map(({ name }) => name))
  return [...last.values()].flatMap(size => {
    // Edges of windows are judged as windows.
    if ([...ports].some(port => size.size.startsWith(port))) return []
    const wanted = now.get(`${size.operation}: ${size.size}`)
    return wanted ? becomesOf(size, wanted) : []
  })
}

function becomesOf(was: Sized, is: Sized): readonly Obstacle[] {
  if (was.lower >= is.lower - SLACK && was.upper <= is.upper + SLACK) return []
  const limits = `${is.lower.toFixed(is.places)} to ${is.upper.toFixed(is.places)}`
  const sign = is.written === 'hole' ? 1 : -1
  // Metal left on the old piece at its fullest and its leanest, beyond what the new limits leave.
  const [fullest, leanest] = sign > 0 ? [was.lower, was.upper] : [was.upper, was.lower]
  const [mostMetal, leastMetal] = sign > 0 ? [is.lower, is.upper] : [is.upper, is.lower]
  const tooFull = sign > 0 ? fullest < mostMetal - SLACK : fullest > mostMetal + SLACK
  const tooLean = sign > 0 ? leanest > leastMetal + SLACK : leanest < leastMetal - SLACK
  const apart = was.upper < is.lower || was.lower > is.upper
  const of = `${was.size} after ${was.operation}`
  if (tooLean && apart) return [{ becomes: 'no', because: `${of} is past the new limits ${limits}` }]
  if (tooLean) return [{ becomes: 'by measuring', because: `${of}: those from ${limits}` }]
  return tooFull ? [{ becomes: 'cut again', because: `${of}: to ${limits}` }] : []
}

/** A window that lies inside the new one can be milled on; one that reaches past it cannot be closed. */
function portsFor(was: Plan, is: Plan, done: readonly string[]): readonly Obstacle[] {
  const milled = was.setUps.some(({ operation }) =>
    was.operations.some(({ name, number }) => number === operation && done.includes(name)),
  )
  if (!milled) return []
  const gone = was.ports.filter(({ name }) => !is.ports.some(port => port.name === name))
  const more = is.ports.filter(({ name }) => !was.ports.some(port => port.name === name))
  return [
    ...gone.map(({ name }) => ({ becomes: 'no' as const, because: `${name} is cut, and the new part has none` })),
    ...more.map(({ name }) => ({ becomes: 'cut again' as const, because: `${name} is to be milled too` })),
    ...was.ports.flatMap((old): readonly Obstacle[] => {
      const port = is.ports.find(({ name }) => name === old.name)
      if (!port) return []
      const half = (one: typeof old) => one.arc / 2
      const keys = ['at', 'up', 'back', 'top', 'bottom', 'arc', 'corner', 'cut'] as const
      const other = keys.filter(key =>
        typeof old[key] === 'number' && typeof port[key] === 'number'
          ? Math.abs(Number(old[key]) - Number(port[key])) > 1e-6
          : old[key] !== port[key],
      )
      if (other.length === 0 && old.windows.length === port.windows.length) return []
      const inside =
        old.top >= port.top - 1e-6 &&
        old.bottom <= port.bottom + 1e-6 &&
        Math.abs(old.at - port.at) + half(old) <= half(port) + 1e-6 &&
        (old.corner ?? 0) >= (port.corner ?? 0) &&
        old.up === port.up &&
        old.back === port.back &&
        old.windows.length === port.windows.length
      return inside
        ? [{ becomes: 'cut again' as const, because: `${old.name}: mill on to ${other.join(', ')} of the new setting` }]
        : [{ becomes: 'no' as const, because: `${old.name} is cut past the new window: ${other.join(', ')}` }]
    }),
  ]
}

/** What was cut soft is not cut again once it is hard: small end mills do not live, and the edge would have no case. */
function softBefore(was: Plan, obstacles: readonly Obstacle[], done: readonly string[]): readonly Obstacle[] {
  const at = was.operations.findIndex(({ process }) => HARDENING_PROCESSES.has(process))
  const hard = was.operations[at]
  if (!hard || !done.includes(hard.name)) return obstacles
  const after = was.operations.slice(at + 1).map(({ name }) => name)
  return obstacles.map(obstacle =>
    obstacle.becomes === 'cut again' && !after.some(name => obstacle.because.includes(`after ${name}:`))
      ? { becomes: 'no', because: `${obstacle.because}, and it is hard` }
      : obstacle,
  )
}

function caseFor(was: Plan, is: Plan, done: readonly string[]): readonly Obstacle[] {
  const hardened = was.operations.some(({ name, process }) => HARDENING_PROCESSES.has(process) && done.includes(name))
  if (!hardened || !was.case) return []
  if (is.case?.process !== was.case.process)
    return [{ becomes: 'no', because: `it is hardened by ${was.case.process}` }]
  const [old, now] = [was.case.ordered, is.case.ordered]
  if (old.least >= now.least - SLACK && old.most <= now.most + SLACK) return []
  return old.most < now.least
    ? [
        {
          becomes: 'no',
          because: `its case is ${old.least.toFixed(2)} to ${old.most.toFixed(2)} mm, and ${now.least.toFixed(2)} to ${now.most.toFixed(2)} mm is ordered`,
        },
      ]
    : [
        {
          becomes: 'by measuring',
          because: `case on the coupon: those from ${now.least.toFixed(2)} to ${now.most.toFixed(2)} mm`,
        },
      ]
}
