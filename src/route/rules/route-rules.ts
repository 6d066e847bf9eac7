import { FINISHING_RULES } from './finishing.ts'
import { PLATING_RULES } from './plating.ts'
import type { RouteRule } from './route-rule.ts'
import { SOFT_WORK_RULES } from './soft-work.ts'

/** Every rule of the trade that the order of operations keeps. A new rule is one entry in one of these lists. */
export const ROUTE_RULES: readonly RouteRule[] = [...SOFT_WORK_RULES, ...FINISHING_RULES, ...PLATING_RULES]
