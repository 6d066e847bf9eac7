import type { Process } from '../../process.ts'
import type { Purpose } from '../operation.ts'
import type { RouteRule } from './route-rule.ts'

const COMMON_PRACTICE = 'common practice, no source'
const BEFORE: ReadonlySet<Purpose> = new Set([
  'check-blanks-before-sending',
  'check-before-sending',
  'check-before-finishing',
  'check-before-plating',
])
const AFTER: ReadonlySet<Purpose> = new Set([
  'check-blanks-on-return',
  'check-on-return',
  'check-after-finishing',
  'check-after-plating',
])
const SOFT_WORK: ReadonlySet<Process> = new Set(['turn', 'drill', 'mill', 'deburr', 'mark'])

/** Checks as work leaves the shop and as it comes back. */
export const CHECK_RULES: readonly RouteRule[] = [
  {
    name: 'blanks-checked-as-roughed',
    because: 'the check sees the blanks as they leave',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'rough-turn' && then.purpose === 'check-blanks-before-sending',
  },
  {
    name: 'soft-work-done-before-check',
    because: 'the check before hardening sees the part as it leaves: a fault found now can still be put right',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      SOFT_WORK.has(first.process) && first.purpose !== 'deburr-ports' && then.purpose === 'check-before-sending',
  },
  {
    name: 'checked-before-leaving',
    because: 'whose fault it is, and whether it pays to send it, is only known of work that was checked when it left',
    source: COMMON_PRACTICE,
    applies: (first, then) => BEFORE.has(first.purpose) && (first.guards ?? []).includes(then.purpose),
  },
  {
    name: 'checked-on-return',
    because: 'a fault made outside is only found, and only argued, before more work is put in',
    source: COMMON_PRACTICE,
    applies: (first, then) => AFTER.has(then.purpose) && (then.guards ?? []).includes(first.purpose),
  },
  {
    name: 'worked-on-after-check-on-return',
    because: 'growth, distortion and hardness as they came back decide how the work is set up',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      (first.purpose === 'check-on-return' &&
        (then.process === 'grind' || then.process === 'hone' || then.process === 'lap')) ||
      (first.purpose === 'check-blanks-on-return' && then.purpose === 'finish-turn'),
  },
]
