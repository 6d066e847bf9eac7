import type { Units } from '../figures.ts'
import type { Plan, PlannedOperation } from '../plan/plan.ts'
import type { Purpose } from '../route/operation.ts'
import { drawAreaCurves, hasAreaCurves } from './area-curves.ts'
import { drawEdges } from './edge-curves.ts'
import { milledShape } from './finished-part.ts'
import { drawFixture } from './fixture-elevation.ts'
import { drawHardnessCurve } from './hardness-curve.ts'
import { drawLifeStrip } from './life-strip.ts'
import { measureText } from './measure-text.ts'
import { drawOperation, drawOperationSmaller, type Room } from './operation-drawing.ts'
import { type Measure, onPaper, type Picture } from './picture.ts'
import { drawPlanView } from './plan-view.ts'
import { drawPortMap } from './port-map.ts'
import { fixtureName, setUpsOf } from './set-up.ts'
import { drawLadders } from './size-ladder.ts'
import { drawTimingCircle } from './timing-circle.ts'

/** Between the filing margin and the right margin of A4; Letter is wider. */
const WIDTH = onPaper(180)
const OPERATION_ROOM: Room = { width: WIDTH, height: onPaper(115) }
/** Where nothing is cut to a size on this sheet the drawing only tells the part, and leaves the page to the tables. */
const TELLING_ROOM: Room = { width: WIDTH, height: onPaper(85) }
/** Half the width of a sheet, and seven and five of its twelve columns. */
const HALF = onPaper(88)
const SEVEN = onPaper(103)
const FIVE = onPaper(72)
/** Where that saves a page: the first of them that does. What is narrower than a sheet stands beside the text. */
const SMALLER_ROOMS: readonly Room[] = [
  { width: WIDTH, height: onPaper(85) },
  { width: SEVEN, height: onPaper(92) },
  { width: HALF, height: onPaper(76) },
  { width: WIDTH, height: onPaper(60) },
  { width: FIVE, height: onPaper(64) },
  { width: FIVE, height: onPaper(48) },
]
/** The map of the ports is drawn smaller only where smaller elevations do not help. */
const SMALLER_MAP = 3
const SMALLER_FIXTURES = [64, 56, 48, 38].map(onPaper)
/** Beside the sizes that an order tells of. */
const ORDER_ROOM: Room = { width: HALF, height: onPaper(76) }
/** Two beside each other. */
const PLAN_VIEW_ROOM: Room = { width: HALF, height: onPaper(72) }
const CHART_ROOM: Room = { width: WIDTH, height: onPaper(85) }
const FIXTURE_ROOM: Room = { width: HALF, height: onPaper(74) }
const AREA_ROOM: Room = { width: WIDTH, height: onPaper(80) }
const TIMING_ROOM: Room = { width: onPaper(150), height: onPaper(90) }

/** What draws a picture, by its name. */
type Named = readonly [string, () => Picture]

/** Pictures of which each is drawn when it is first asked for, and once. */
export type Pictures = Pick<ReadonlyMap<string, Picture>, 'get'> & { readonly names: readonly string[] }

/**
 * Every picture of the packet by name, each drawn from the Plan alone, its lengths in the units of the sheets around it.
 * `measure` says how wide a text is, where the typeface is not that of our paper.
 */
export function drawPictures(
  plan: Plan,
  measure: Measure = measureText,
  units: Units = 'mm',
): ReadonlyMap<string, Picture> {
  return new Map(everyPicture(plan, measure, units).map(([name, draw]) => [name, draw()]))
}

/** The same for whoever needs only some of them. */
export function openPictures(plan: Plan, measure: Measure, units: Units): Pictures {
  const drawers = new Map(everyPicture(plan, measure, units))
  return { names: [...drawers.keys()], get: drawnOnce(name => drawers.get(name)?.()) }
}

function drawnOnce(draw: (name: string) => Picture | undefined): (name: string) => Picture | undefined {
  const drawn = new Map<string, Picture | undefined>()
  return name => {
    if (!drawn.has(name)) drawn.set(name, draw(name))
    return drawn.get(name)
  }
}

function everyPicture(plan: Plan, measure: Measure, units: Units): readonly Named[] {
  const { case: hardened } = plan
  return [
    ...plan.operations.flatMap((operation): readonly Named[] => [
      [`strip-${operation.number}`, () => drawLifeStrip(plan, operation, WIDTH)],
      [
        `operation-${operation.number}`,
        () => drawOperation({ plan, operation, room: roomOf(operation), measure, units }),
      ],
    ]),
    ...orderPictures(plan, measure, units),
    ...portPictures(plan, measure, units),
    ...(plan.ladders.length > 0 ? [['ladder', () => drawLadders(plan, WIDTH, measure, units)] as const] : []),
    ...(hardened
      ? [['hardness', () => drawHardnessCurve({ plan, hardened, room: CHART_ROOM, measure, units })] as const]
      : []),
  ]
}

/** One for an order: of the operation that is asked most of; a furnace, which makes no size, is shown by what goes into it. */
function orderPictures(plan: Plan, measure: Measure, units: Units): readonly Named[] {
  return plan.orders.flatMap(({ number, operations, finish }): readonly Named[] => {
    const asked = (number: number) => finish.filter(({ operation }) => operation === number).length
    const most = operations.reduce((best, number) => (asked(number) > asked(best) ? number : best), operations[0] ?? 0)
    const operation = plan.operations.find(one => one.number === most)
    return operation
      ? [[`order-${number}`, () => drawOperation({ plan, operation, room: ORDER_ROOM, measure, units })]]
      : []
  })
}

/** Drawings again with less and less room, for a sheet that would otherwise run over. */
export function drawSmaller(
  plan: Plan,
  measure: Measure,
  units: Units = 'mm',
): readonly ((name: string) => Picture | undefined)[] {
  return SMALLER_ROOMS.map((room, index) => {
    const height = SMALLER_FIXTURES[index] ?? SMALLER_FIXTURES.at(-1) ?? 0
    const fixtures = new Map(fixturePictures(plan, measure, units, { width: HALF, height }))
    return drawnOnce(name => {
      const operation = plan.operations.find(({ number }) => name === `operation-${number}`)
      if (operation) return drawOperationSmaller({ plan, operation, room, measure, units })
      if (name === 'map' && index >= SMALLER_MAP && plan.ports.length > 0)
        return drawPortMap({ plan, kind: 'bore', width: SEVEN, measure, units })
      return fixtures.get(name)?.()
    })
  })
}

const TELLING: ReadonlySet<Purpose> = new Set([
  'saw-blanks',
  'stress-relieve',
  'deburr-soft',
  'relieve-for-plating',
  'bake-after-plating',
  'deburr-ports',
])
const roomOf = ({ purpose }: PlannedOperation): Room => (TELLING.has(purpose) ? TELLING_ROOM : OPERATION_ROOM)

function portPictures(plan: Plan, measure: Measure, units: Units): readonly Named[] {
  if (plan.ports.length === 0) return []
  const { gasExchange } = plan
  return [
    ['plan-view', () => drawPlanView(plan, PLAN_VIEW_ROOM, measure, units)],
    ['map', () => drawPortMap({ plan, kind: 'bore', width: WIDTH, measure, units })],
    ['map-true-size', () => drawPortMap({ plan, kind: 'bore at true size', width: WIDTH, measure, units })],
    ['map-outside-true-size', () => drawPortMap({ plan, kind: 'outside at true size', width: WIDTH, measure, units })],
    ['edges', () => drawEdges(plan, WIDTH, measure, units)],
    ...fixturePictures(plan, measure, units),
    ...(plan.ports.some(({ opens }) => opens !== undefined)
      ? [['timing', () => drawTimingCircle(plan, TIMING_ROOM, measure)] as const]
      : []),
    ...(gasExchange && hasAreaCurves(plan)
      ? [['areas', () => drawAreaCurves(plan, gasExchange, AREA_ROOM, measure)] as const]
      : []),
  ]
}

function fixturePictures(plan: Plan, measure: Measure, units: Units, room = FIXTURE_ROOM): readonly Named[] {
  const { fixture } = plan.shop
  const shape = milledShape(plan)
  const { fixture: planned } = plan
  if (!fixture || !planned || !shape) return []
  return setUpsOf(plan).map(setUp => [
    fixtureName(setUp),
    () => drawFixture({ fixture, planned, shape, setUp, room, measure, units }),
  ])
}
