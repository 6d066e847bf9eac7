import { HARDENING_PROCESSES, type Process } from '../../process.ts'
import type { RouteRule } from './route-rule.ts'

const COMMON_PRACTICE = 'common practice, no source'
const CHIPS: ReadonlySet<Process> = new Set(['turn', 'drill'])

/** Order of the work done while the part is soft. */
export const SOFT_WORK_RULES: readonly RouteRule[] = [
  {
    name: 'sawn-first',
    because: 'the lathe holds a blank, not the bar',
    otherwise: 'the lathe would have to swing the whole bar, and every piece be parted off it',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'saw' && then.process === 'turn',
  },
  {
    name: 'roughed-first',
    because: 'roughing frees stress and heats the part: what is finished before it moves',
    otherwise:
      'the finished surface moves when the skin beside it comes off: it is out of true before it leaves the lathe',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      first.purpose === 'rough-turn' && (then.purpose === 'finish-turn' || then.purpose === 'turn-inside'),
  },
  {
    name: 'roughed-before-stress-relief',
    because: 'roughing sets up the stress that stress relief takes out',
    otherwise:
      'what roughing sets up stays in, and comes out in the hardening furnace, when it can no longer be turned away',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'rough-turn' && then.purpose === 'stress-relieve',
  },
  {
    name: 'stress-relieved-before-finish-turning',
    because: 'the part moves in stress relief: finish turning trues it again, and nothing but hardening moves it after',
    otherwise: 'the finished sizes move in the furnace, and the stock for grinding is spent on truing',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'stress-relieve' && then.purpose === 'finish-turn',
  },
  {
    name: 'turned-before-ports',
    because: 'port depths are picked up from the finish-turned top face, and turning over open ports hammers the edge',
    otherwise: 'the tool hammers over every open port, chips its edge, and no face is there to measure a depth from',
    source: COMMON_PRACTICE,
    applies: (first, then) => CHIPS.has(first.process) && then.process === 'mill',
  },
  {
    name: 'turned-before-holes',
    because: 'a hole is placed from finished faces, and a tool that turns over it hammers',
    otherwise: 'the hole stands off its place by whatever is turned off after it, and its edge is hammered',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'turn' && then.purpose === 'mill-features',
  },
  {
    name: 'pin-bored-before-lands',
    because: 'the pin bore is bored from the register, and lands and skirt are turned last, drawn down by it',
    otherwise: 'the grooves stand off square to the pin by the error of another holding',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      (first.purpose === 'bore-pin' && then.purpose === 'finish-turn') ||
      (first.purpose === 'turn-inside' && then.purpose === 'bore-pin'),
  },
  {
    name: 'marked-on-a-finished-face',
    because: 'a number cut before finish turning is turned off',
    otherwise: 'the number is turned off, and the piece has no name',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'turn' && then.marks !== undefined,
  },
  {
    name: 'deburred-after-cutting',
    because: 'cutting leaves the burrs',
    otherwise: 'burrs go on with the part: they cut hands, lift it in the next holding, and harden',
    source: COMMON_PRACTICE,
    applies: (first, then) => (CHIPS.has(first.process) || first.process === 'mill') && then.purpose === 'deburr-soft',
  },
  {
    name: 'ports-milled-soft',
    because: 'a small end mill does not survive a hardened surface',
    otherwise:
      'the ports would have to be ground or eroded into a hard wall, at many times the price, and their edges chip',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'mill' && HARDENING_PROCESSES.has(then.process),
  },
  {
    name: 'turned-soft',
    because: 'nothing is cut with a turning tool after hardening: the case is harder than the work is stiff',
    otherwise: 'the tool meets a surface harder than itself: it wears in minutes and the wall springs away from it',
    source: COMMON_PRACTICE,
    applies: (first, then) => CHIPS.has(first.process) && HARDENING_PROCESSES.has(then.process),
  },
  {
    name: 'edges-broken-before-hardening',
    because: 'a sharp edge hardens through and chips',
    otherwise: 'the edges are hard from both sides: they chip under the wheel and the rings',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'deburr-soft' && HARDENING_PROCESSES.has(then.process),
  },
  {
    name: 'marked-before-hardening',
    because: 'each piece must be known by its number when it comes back, and a hard face takes no stamp',
    otherwise: 'nobody knows which piece came back, so no growth can be read from before and after',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.marks !== undefined && HARDENING_PROCESSES.has(then.process),
  },
]
