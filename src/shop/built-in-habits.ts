import type { Firm } from './firm.ts'
import type { Habits } from './shop.ts'

/** What a works holds and leaves, before it has measured its own. Where nothing else is said: common practice, no source. */
export const BUILT_IN_HABITS: Habits = {
  // About IT12 at 55 mm.
  roughTurningTolerance: 0.3,
  // Between IT8 and IT9 at 55 mm.
  finishTurningTolerance: 0.05,
  boreGrindingTolerance: 0.015,
  // The working dimensions of turned faces are held to ±0.03, of ground faces to ±0.01.
  faceTurningTolerance: 0.06,
  faceGrindingTolerance: 0.02,
  // 1 to 2 mm a side stays on for finish turning after stress relief.
  roughingAllowance: 1,
  // Timing edges ±0.05, floors ±0.10.
  portEdgeTolerance: 0.1,
  portFloorTolerance: 0.2,
  portWidthTolerance: 0.2,
  // Bored soft jaws or a collet: about a fifth of the diameter, 10 and more.
  leastGrip: 10,
  // With a sine bar and blocks: 6 to 10.
  tiltChange: 8,
  stockStep: 0.01,
  turnedOutsideToBore: 0.015,
  mandrelRunout: 0.005,
  chuckRunout: 0.0075,
  boreGrindingRunout: 0.005,
  // Memory: Kosilova vol. 1 and older tables after Kovan give Rz 20 to 32 and T 30 for finish turning, 3 to 6 and 0 to 15
  // for fine turning; the two values lie between.
  turnedRoughness: 20,
  turnedLayer: 10,
  // Memory: Kosilova vol. 1, fine grinding, Rz 0.8 to 3.2 and T 2 to 6.
  groundRoughness: 3,
  groundLayer: 4,
  cleanUpAllowance: 0.005,
  // Gas nitriding runs at 510 to 520 °C.
  nitridingTemperature: 520,
  // Longer cycles are possible and dear.
  nitridingTimeLimit: 100,
  // 1.5 to 3 mm.
  sawKerf: 2,
  // For each end: 0.5 to 1.5 mm.
  facingAllowance: 1,
  barLength: 3000,
  // Chuck grip: 50 to 100 mm.
  barRemnant: 60,
  yields: {
    turn: 0.98,
    mill: 0.97,
    'stress-relieve': 1,
    nitride: 0.97,
    'case-harden': 0.95,
    'induction-harden': 0.95,
    plate: 0.95,
    grind: 0.98,
    hone: 0.98,
    lap: 0.98,
  },
  confidence: 0.95,
  setupPieces: 1,
  couponPieces: 1,
}

/** A works without a furnace, a bath or an internal grinder sends its parts out. The names are descriptions, not firms; lead times: common practice, no source. */
export const BUILT_IN_FIRMS: readonly Firm[] = [
  {
    name: 'a licensed hardener',
    processes: ['nitride', 'stress-relieve', 'case-harden', 'induction-harden'],
    leadTime: 10,
  },
  { name: 'a grinding firm', processes: ['grind', 'hone', 'lap'], leadTime: 10 },
  { name: 'a licensed plater', processes: ['plate'], leadTime: 15 },
  { name: 'a crack-testing firm', processes: ['crack-test'], leadTime: 5 },
]
