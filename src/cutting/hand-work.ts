import { angle, fixed } from '../figures.ts'
import { CRACK_TESTING } from '../handbook/crack-testing.ts'
import { EDGE_BREAK } from '../handbook/edge-break.ts'
import { GAUGING_TIMES } from '../handbook/gauging-times.ts'
import { SHOP_TIMES } from '../handbook/shop-times.ts'
import { chamferOf } from '../route/plating-needs.ts'
import type { CuttingTask, PlannedCuts } from './cutting-task.ts'
import { timeOnly } from './step.ts'

const windows = ({ ports }: CuttingTask): number => ports.reduce((sum, port) => sum + port.windows.length, 0)

/** One visit to the bench: the number, every turned edge and every window inside and out, then the wash. */
export function deburrSoft(task: CuttingTask): PlannedCuts {
  const { after } = task
  const edges = 2 * (after.outside.length + after.bore.length)
  const count = windows(task)
  return {
    steps: [
      timeOnly('marking head', 'mark serial and batch number', SHOP_TIMES.mark),
      timeOnly('scraper', `break ${edges} turned edges`, edges * SHOP_TIMES.deburrEdge),
      ...(count > 0
        ? [
            timeOnly(
              'scraper and abrasive brush',
              `break the edges of ${count} windows`,
              count * SHOP_TIMES.deburrWindow,
              [windowEdges(task), ...timingEdges(task)],
            ),
          ]
        : []),
      timeOnly('washer', 'wash, look with a lens', SHOP_TIMES.wash),
    ],
  }
}

/** A layer that is plated wants more broken than wheel and stones do. */
function windowEdges({ part: { plating } }: CuttingTask): string {
  const chamfer = plating && chamferOf(plating)
  if (!chamfer) {
    const { least, most } = EDGE_BREAK.beforeHardening
    return `from the bore outward; ${least} to ${most} on the bore side but at the timing edges, so that wheel and stones run over it`
  }
  const { least, most } = chamfer
  return `from the bore outward; ${least === most ? least : `${least} to ${most}`} on the bore side, smooth: it is plated`
}

/** Ports whose timing edge is broken alike, in one line. */
function timingEdges({ ports }: CuttingTask): readonly string[] {
  const alike = new Map<string, readonly [names: readonly string[], of: string, figure: string]>()
  for (const { name, edge } of ports) {
    // One that is plated is chamfered like every other.
    if (!edge?.edgeBreak || edge.edgeBreak.layer) continue
    const { of, broken } = edge.edgeBreak
    const figure = `${fixed(broken.least, 2)} to ${fixed(broken.most, 2)}`
    const [names] = alike.get(`${of} ${figure}`) ?? [[]]
    alike.set(`${of} ${figure}`, [[...names, name], of, figure])
  }
  return [...alike.values()].map(
    ([names, of, figure]) => `${of} edge of ${names.join(', ')}: ${figure} along the bore, no more: it times the port`,
  )
}

/** How much sooner a port opens by what is left of the break. */
const soonerEdges = ({ ports }: CuttingTask): readonly string[] =>
  ports.flatMap(({ name, edge }) => {
    const { left, sooner, of } = edge?.edgeBreak ?? {}
    if (!left || !sooner) return []
    return [
      `${name}: ${fixed(left.least, 2)} to ${fixed(left.most, 2)} left on the ${of} edge opens it ${angle(sooner.least)} to ${angle(sooner.most)}° sooner`,
    ]
  })

export const deburrPorts = (task: CuttingTask): PlannedCuts => ({
  steps: [
    timeOnly(
      'fine stone',
      `round the edges of ${windows(task)} windows on the bore`,
      windows(task) * SHOP_TIMES.deburrWindowAgain,
      ['a finger-nail must not catch; too much opens the port sooner', ...soonerEdges(task)],
    ),
    timeOnly('washer', 'scrub with hot detergent and a plastic brush, rinse, oil at once', SHOP_TIMES.wash),
  ],
})

/** Where the works does it itself. */
export const crackTest = (): PlannedCuts => ({
  steps: [
    timeOnly('magnetising bench', 'magnetise in two directions, look under ultraviolet light', CRACK_TESTING.look, [
      'a person qualified for it only; reject any line',
    ]),
    timeOnly('demagnetising coil', 'demagnetise singly, lengthwise', CRACK_TESTING.demagnetise),
    timeOnly('washer', 'wash off the ink, dry, oil', SHOP_TIMES.wash),
  ],
})

/** Every size of the operation, or else every surface: each diameter and the length. The readings' minutes are the inspection's. */
export function inspect({ sizes, operation, after, part }: CuttingTask): PlannedCuts {
  const surfaces =
    operation.surfaces.length > 0 ? operation.surfaces.length : after.outside.length + after.bore.length + 1
  const looked = Math.max(sizes.length, surfaces)
  const { washed, soaked, oiledAndWrapped } = GAUGING_TIMES
  return {
    steps: [
      timeOnly('washer', 'wash and dry, let it come to 20 °C', washed + soaked, [
        ...(part.ports.length === 0 && after.bore.length > 0
          ? [
              'a honed bore is scrubbed with a plastic brush and hot detergent until a white cloth stays white, and oiled at once',
            ]
          : []),
      ]),
      timeOnly('gauges', `measure ${looked} features, oil and wrap`, oiledAndWrapped),
    ],
  }
}
