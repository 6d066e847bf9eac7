import Toolpath from 'gcode-toolpath'
import type { SetUp } from '../../src/cutting/set-up.ts'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { Plan } from '../../src/plan/plan.ts'
import { cutPath } from '../../src/ports/path/cut-path.ts'
import { SHOP } from '../ports/proof/at-the-door.ts'

/** A move in thousandths of a millimetre, with its feed where it is one at feed. */
export type GeneralMove = { readonly to: readonly [number, number, number]; readonly feed?: number }

const thousandths = (value: number): number => Math.round(value * 1000) + 0

/** Moves from the first window on, as a reader of ISO 6983 that knows nothing of us follows them. */
export function readGenerally(text: string): readonly GeneralMove[] {
  const moves: GeneralMove[] = []
  let feed = 0
  const reader = new Toolpath({
    position: { x: 0, y: 0, z: 0 },
    addLine: ({ motion, units, distance }, _, { x, y, z }) => {
      if (units !== 'G21' || distance !== 'G90') throw new Error(`${units} ${distance} at ${x} ${y} ${z}`)
      moves.push({ to: [thousandths(x), thousandths(y), thousandths(z)], ...(motion === 'G1' && { feed }) })
    },
    addArcCurve: () => {
      throw new Error('an arc that the plan does not have')
    },
  })
  for (const line of text.split('\n')) {
    // The reader follows places, and leaves the feed to us.
    const word = line.startsWith('(') ? undefined : /(?:^| )F(\d+)/.exec(line)?.[1]
    if (word !== undefined) feed = Number(word)
    reader.loadFromStringSync(line)
  }
  return withoutStanding(moves)
}

export function wholePlanOf(text: string): Plan {
  const { plan } = readAndPlan(text)
  if (!plan) throw new Error('the part has no plan')
  return plan
}

export function readAndPlan(text: string): ReturnType<typeof makePlan> {
  const { part } = readPart(text, 'part.yaml')
  const { shop } = readShop(SHOP, 'shop.yaml')
  if (!part || !shop) throw new Error('the part has errors')
  return makePlan({
    part,
    shop,
    batch: { number: '1', quantity: 12 },
    issue: { date: '2026-01-01', fingerprint: '0', program: 'test' },
  })
}

/** Safe height of a program: its first move goes there. */
export const safeOf = (text: string): number => Number(/^G0 Z(-?[\d.]+)/m.exec(text)?.[1])

/** The same of the Plan's own paths, from the head of the program to its end. */
export function wayOf(plan: Plan, setUp: SetUp, safe: number): readonly GeneralMove[] {
  const moves: GeneralMove[] = []
  let [x, y, z] = [0, 0, 0]
  const go = (to: { x?: number; y?: number; z?: number }, feed?: number): void => {
    ;[x, y, z] = [to.x ?? x, to.y ?? y, to.z ?? z]
    const at = [thousandths(x), thousandths(y), thousandths(z)] as const
    moves.push({ to: at, ...(feed !== undefined && { feed: Math.max(1, Math.round(feed)) }) })
  }
  go({ z: safe })
  for (const item of setUp.windows) {
    const window = plan.ports.find(({ name, at }) => name === item.port && at === item.at)?.windows[item.window - 1]
    if (!window) throw new Error(`no window ${item.name}`)
    for (const cut of item.cuts) {
      const { entry, from, follow } = cutPath(window, cut.shape)
      go(entry)
      go({ z: from })
      follow((at, share) => go(at, share * cut.feed))
      go({ z: safe })
    }
  }
  const { tilting } = plan.fixture ?? {}
  if (tilting) go({ z: Math.max(tilting.tip, safe) })
  return withoutStanding(moves)
}

const withoutStanding = (moves: readonly GeneralMove[]): readonly GeneralMove[] =>
  moves.filter(({ to }, i) => String(to) !== String(moves[i - 1]?.to ?? [0, 0, 0]))
