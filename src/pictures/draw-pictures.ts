import type { Plan } from '../plan/plan.ts'
import { drawLifeStrip } from './life-strip.ts'
import { drawOperation, type Room } from './operation-drawing.ts'
import { type Measure, onPaper, type Picture } from './picture.ts'

/** Between the filing margin and the right margin of A4; Letter is wider. */
const WIDTH = onPaper(180)
const OPERATION_ROOM: Room = { width: WIDTH, height: onPaper(115) }

/** Every picture of the packet by name, each drawn from the Plan alone. */
export function drawPictures(plan: Plan, measure: Measure): ReadonlyMap<string, Picture> {
  return new Map<string, Picture>([
    ...plan.operations.map((operation): [string, Picture] => [
      `strip-${operation.number}`,
      drawLifeStrip(plan, operation, WIDTH),
    ]),
    ...plan.operations.map((operation): [string, Picture] => [
      `operation-${operation.number}`,
      drawOperation(plan, operation, OPERATION_ROOM, measure),
    ]),
  ])
}
