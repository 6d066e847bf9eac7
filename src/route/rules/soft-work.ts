import { HARDENING_PROCESSES, type Process } from '../../process.ts'
import type { RouteRule } from './route-rule.ts'

const COMMON_PRACTICE = 'common practice, no source'
const CHIPS: ReadonlySet<Process> = new Set(['turn', 'drill'])

/** Order of the work done while the part is soft. */
export const SOFT_WORK_RULES: readonly RouteRule[] = [
  {
    name: 'sawn-first',
    because: 'the lathe holds a blank, not the bar',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'saw' && then.process === 'turn',
  },
  {
    name: 'roughed-first',
    because: 'roughing frees stress and heats the part: what is finished before it moves',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'rough-turn' && then.purpose === 'finish-turn',
  },
  {
    name: 'roughed-before-stress-relief',
    because: 'roughing sets up the stress that stress relief takes out',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'rough-turn' && then.purpose === 'stress-relieve',
  },
  {
    name: 'stress-relieved-before-finish-turning',
    because: 'the part moves in stress relief: finish turning trues it again, and nothing but hardening moves it after',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'stress-relieve' && then.purpose === 'finish-turn',
  },
  {
    name: 'turned-before-ports',
    because: 'port depths are picked up from the finish-turned top face, and turning over open ports hammers the edge',
    source: COMMON_PRACTICE,
    applies: (first, then) => CHIPS.has(first.process) && then.process === 'mill',
  },
  {
    name: 'turned-before-holes',
    because: 'a hole is placed from finished faces, and a tool that turns over it hammers',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'turn' && then.purpose === 'mill-features',
  },
  {
    name: 'pin-bored-before-lands',
    because: 'the pin bore is bored from the register, and lands and skirt are turned last, drawn down by it',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      (first.purpose === 'bore-pin' && then.purpose === 'finish-turn') ||
      (first.purpose === 'turn-inside' && then.purpose === 'bore-pin'),
  },
  {
    name: 'marked-on-a-finished-face',
    because: 'a number cut before finish turning is turned off',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'turn' && then.marks !== undefined,
  },
  {
    name: 'deburred-after-cutting',
    because: 'cutting leaves the burrs',
    source: COMMON_PRACTICE,
    applies: (first, then) => (CHIPS.has(first.process) || first.process === 'mill') && then.purpose === 'deburr-soft',
  },
  {
    name: 'ports-milled-soft',
    because: 'a small end mill does not survive a hardened surface',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.process === 'mill' && HARDENING_PROCESSES.has(then.process),
  },
  {
    name: 'turned-soft',
    because: 'nothing is cut with a turning tool after hardening: the case is harder than the work is stiff',
    source: COMMON_PRACTICE,
    applies: (first, then) => CHIPS.has(first.process) && HARDENING_PROCESSES.has(then.process),
  },
  {
    name: 'edges-broken-before-hardening',
    because: 'a sharp edge hardens through and chips',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'deburr-soft' && HARDENING_PROCESSES.has(then.process),
  },
  {
    name: 'marked-before-hardening',
    because: 'each piece must be known by its number when it comes back, and a hard face takes no stamp',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.marks !== undefined && HARDENING_PROCESSES.has(then.process),
  },
]
