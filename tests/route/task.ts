import type { Process } from '../../src/process.ts'
import type { Purpose } from '../../src/route/operation.ts'
import type { Task } from '../../src/route/rules/route-rule.ts'

const PROCESS: Readonly<Record<Purpose, Process>> = {
  'saw-blanks': 'saw',
  'rough-turn': 'turn',
  'stress-relieve': 'stress-relieve',
  'finish-turn': 'turn',
  turn: 'turn',
  'mill-features': 'mill',
  'turn-inside': 'turn',
  'bore-pin': 'drill',
  'mill-ports': 'mill',
  'deburr-soft': 'deburr',
  nitride: 'nitride',
  'case-harden': 'case-harden',
  'induction-harden': 'induction-harden',
  'hone-for-plating': 'hone',
  'relieve-for-plating': 'stress-relieve',
  plate: 'plate',
  'bake-after-plating': 'stress-relieve',
  'grind-outside': 'grind',
  'grind-bore': 'grind',
  'grind-top': 'grind',
  'hone-bore': 'hone',
  'lap-outside': 'lap',
  'crack-test': 'crack-test',
  'deburr-ports': 'deburr',
  'final-inspection': 'inspect',
}

/** A task of the given purpose, with whatever else a rule looks at. */
export const task = (purpose: Purpose, more: Partial<Task> = {}): Task => ({
  purpose,
  name: purpose,
  process: PROCESS[purpose],
  place: 'house',
  workCentre: 'bench',
  holding: 'Hold it',
  locatedBy: [],
  surfaces: [],
  cautions: [],
  why: [],
  ...more,
})
