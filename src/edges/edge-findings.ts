import { fixed, percent } from '../figures.ts'
import type { Finding } from '../finding.ts'
import { CLOSEST_MILLED } from '../handbook/port-edge-making.ts'
import type { Part, Port } from '../part/part.ts'
import type { EdgePlan } from '../ports/edge-plan.ts'
import { portFinding } from '../ports/port-finding.ts'
import type { Resultant } from '../stock/axial-chart.ts'
import type { Millimetre } from '../units.ts'
import { roomIn } from './edge-chain.ts'

/** An edge that does not close at the worst: what it costs, and what would close it. */
export function openEdge(part: Part, port: Port, edge: EdgePlan, found: Resultant): readonly Finding[] {
  const { allowed, nominal, worstCase, rootSumSquare, outside, weighed } = edge
  if (roomIn(found, allowed) >= -1e-9) return []
  const half = { ...found, worstCase: rootSumSquare }
  const [closer, ground, wider] = weighed
  return [
    portFinding(part, port, {
      // Limits that nobody drew are the works' own to widen: they warn, and do not stop the part.
      severity: allowed.from === 'drawing' && roomIn(half, allowed) < -1e-9 ? 'error' : 'warning',
      code: 'stock/chain-open',
      key: port.opens === undefined ? 'top' : 'opens',
      message: `the top edge comes out at ${fixed(nominal, 3)} ±${fixed(worstCase, 3)} mm at the worst (±${fixed(rootSumSquare, 3)} root sum of squares); the ${allowed.from} allows ${fixed(allowed.lower, 3)} to ${fixed(allowed.upper, 3)} mm: ${percent(outside.bellShaped, 1)} % of pieces fall outside where sizes are bell-shaped in their limits, ${percent(outside.even, 1)} % where spread evenly`,
      hint: [
        ...(allowed.from === 'works' ? ['write the limits that the engine bears on the port'] : []),
        `limits of ±${fixed(wider?.figure ?? worstCase, 2)} mm would close it`,
        closerWords(closer?.figure ?? 0),
        ...(ground?.because ? [`the top face ground to the measured edge does not serve: ${ground.because}`] : []),
      ].join('; '),
    }),
  ]
}

/** Where the other sizes fill the limits by themselves, no milling closes the chain. */
const closerWords = (fit: Millimetre): string =>
  fit < 0.001
    ? 'no milling closes it, for the other sizes in the chain fill the limits without it'
    : `milling would have to hold ±${fixed(fit / 2, 3)} mm, ±${fixed(CLOSEST_MILLED.tolerance / 2, 3)} is the closest`
