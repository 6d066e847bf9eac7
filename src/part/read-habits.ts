import type { Process } from '../process.ts'
import { habitKey } from '../shop/habit-key.ts'
import type { Habits } from '../shop/shop.ts'
import type { QuantityKind, Range } from './quantity.ts'
import type { View } from './view.ts'

type Figure = Exclude<keyof Habits, 'yields' | 'setupPieces' | 'couponPieces'>

const SMALL = { over: 0, upTo: 10 }
/** What comes before or after hardening: the stock between is never more. */
const FINE = { over: 0, upTo: 1 }
const RUNOUT = { from: 0, upTo: 2 }
const LAYER = { from: 0, upTo: 500 }
const SHARE = { over: 0, upTo: 1 }

/** Quantity and range of every habit that is one figure. */
const FIGURES: Readonly<Record<Figure, readonly [QuantityKind, Range]>> = {
  roughTurningTolerance: ['length', SMALL],
  finishTurningTolerance: ['length', FINE],
  boreGrindingTolerance: ['length', FINE],
  faceTurningTolerance: ['length', SMALL],
  faceGrindingTolerance: ['length', FINE],
  roughingAllowance: ['length', SMALL],
  portEdgeTolerance: ['length', SMALL],
  portFloorTolerance: ['length', SMALL],
  portWidthTolerance: ['length', SMALL],
  leastGrip: ['length', { over: 0, upTo: 200 }],
  tiltChange: ['minutes', { from: 0, upTo: 240 }],
  stockStep: ['length', { over: 0, upTo: 1 }],
  turnedOutsideToBore: ['length', RUNOUT],
  mandrelRunout: ['length', RUNOUT],
  chuckRunout: ['length', RUNOUT],
  boreGrindingRunout: ['length', RUNOUT],
  turnedRoughness: ['roughness', { from: 0.1, upTo: 500 }],
  turnedLayer: ['roughness', LAYER],
  groundRoughness: ['roughness', LAYER],
  groundLayer: ['roughness', LAYER],
  ovality: ['length', { from: 0, upTo: 0.5 }],
  bow: ['length', { from: 0, upTo: 0.5 }],
  cleanUpAllowance: ['length', { from: 0, upTo: 0.1 }],
  nitridingTemperature: ['temperature', { from: 300, upTo: 700 }],
  nitridingTimeLimit: ['hours', { over: 0, upTo: 1000 }],
  sawKerf: ['length', SMALL],
  facingAllowance: ['length', { from: 0, upTo: 50 }],
  barLength: ['length', { from: 100, upTo: 20_000 }],
  barRemnant: ['length', { from: 0, upTo: 2000 }],
  confidence: ['ratio', { over: 0, under: 1 }],
}

/** The works' own habits, laid over the given ones key by key. */
export function readHabits(root: View, built: Habits): Habits {
  const view = root.into('habits')
  if (!view) return built
  const own = Object.entries(FIGURES).flatMap(([name, [kind, range]]) => {
    const value = view.quantity(habitKey(name), kind, range)
    return value === undefined ? [] : [[name, value] as const]
  })
  const yields = view.into('yields')
  const ownYields = (yields?.keys ?? []).flatMap(process => {
    const value = yields?.quantity(process, 'ratio', SHARE)
    return value === undefined ? [] : [[process as Process, value] as const]
  })
  return {
    ...built,
    ...Object.fromEntries(own),
    yields: { ...built.yields, ...Object.fromEntries(ownYields) },
    setupPieces: view.count('setup-pieces') ?? built.setupPieces,
    couponPieces: view.count('coupon-pieces') ?? built.couponPieces,
  }
}
