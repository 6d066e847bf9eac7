import { FINISHING_PROCESSES, HARDENING_PROCESSES } from '../../process.ts'
import type { RouteRule, Task } from './route-rule.ts'

const COMMON_PRACTICE = 'common practice, no source'
const finishesBore = ({ purpose }: Task): boolean =>
  purpose === 'grind-bore' || purpose === 'hone-for-plating' || purpose === 'hone-bore'

/** Order of the work done when the part is hard, or has been turned to its last soft size. */
export const FINISHING_RULES: readonly RouteRule[] = [
  {
    name: 'finished-after-turning',
    because: 'grinding and honing start from the finish-turned size',
    otherwise: 'turning leaves nothing to size: what was ground is turned off again',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'turn' && FINISHING_PROCESSES.has(then.process),
  },
  {
    name: 'ports-before-finishing',
    because: 'milling a port pushes the bore out of round and raises its edges',
    otherwise: 'the bore that was to size is out of round by what milling pushed, and burrs stand into it',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'mill' && FINISHING_PROCESSES.has(then.process),
  },
  {
    name: 'deburred-before-finishing',
    because: 'a burr lifts the part off the face that locates it',
    otherwise: 'the part stands on a burr, and is ground out of square by it',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'deburr-soft' && FINISHING_PROCESSES.has(then.process),
  },
  {
    name: 'finished-after-hardening',
    because: 'hardening makes the part grow and warp: only what is finished after it is true',
    otherwise: 'growth and bow of the furnace stand in the finished size, and there is no stock left to take them out',
    source: COMMON_PRACTICE,
    applies: (first, then) => HARDENING_PROCESSES.has(first.process) && FINISHING_PROCESSES.has(then.process),
  },
  {
    name: 'locator-finished-first',
    because: 'the surface that locates must be true before another is made from it',
    otherwise:
      'the error of the soft surface is copied into the finished one, and what is ground after it no longer runs with it',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      first.process === 'grind' &&
      then.locatedAs === 'ground' &&
      first.surfaces.some(surface => then.locatedBy.includes(surface)),
  },
  {
    name: 'bore-last',
    because: 'the bore is what the part is for: no clamping, grinding or face work may disturb it once it is to size',
    otherwise:
      'the finished bore is clamped, warmed and wetted again: it goes out of round, and nothing is left to take that out',
    source: COMMON_PRACTICE,
    applies: (first, then) => FINISHING_PROCESSES.has(first.process) && !finishesBore(first) && finishesBore(then),
  },
  {
    name: 'honed-after-grinding',
    because: 'a hone follows the bore and cannot bring it back to centre',
    otherwise: 'the hone follows the bore where it stands: grinding after it takes the cross-hatch off',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'grind' && then.process === 'hone',
  },
  {
    name: 'lapped-after-grinding',
    because: 'a lap smooths: it takes off a few micrometres, moves nothing and follows the lobes it finds',
    otherwise: 'the wheel takes the lapped surface off again',
    source: 'common practice, no source',
    applies: (first, then) => first.process === 'grind' && then.process === 'lap',
  },
  {
    name: 'crack-tested-after-grinding-and-lapping',
    because: 'grinding is what cracks a hard surface, and what is lapped or honed after may uncover one',
    otherwise: 'a crack that grinding makes is found by the engine',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      FINISHING_PROCESSES.has(first.process) &&
      first.purpose !== 'hone-bore' &&
      first.purpose !== 'hone-for-plating' &&
      then.purpose === 'crack-test',
  },
  {
    name: 'washed-after-crack-test',
    because: 'ink and magnetised dust are washed off before the edges are touched up and the part is measured',
    otherwise: 'magnetised dust stays in the ports and laps the rings',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'crack-test' && then.purpose === 'deburr-ports',
  },
  {
    name: 'port-edges-broken-again',
    because: 'grinding and honing leave the port edges sharp, and a sharp edge catches what slides over it',
    otherwise: 'the rings catch on sharp edges, and scuff or break',
    source: COMMON_PRACTICE,
    applies: (first, then) => FINISHING_PROCESSES.has(first.process) && then.purpose === 'deburr-ports',
  },
  {
    name: 'inspected-last',
    because: 'what is inspected must not be worked on again',
    otherwise: 'the report is of a part that is no more',
    source: COMMON_PRACTICE,
    applies: (first, then) => then.purpose === 'final-inspection' && first.purpose !== 'final-inspection',
  },
]
