import type { SurfaceKind } from '../place.ts'
import type { Part } from './part.ts'

/** Hard from skin to skin: there is no case, nothing can be masked, and every size moves. */
export const hardensThrough = ({ hardening }: Pick<Part, 'hardening'>): boolean =>
  hardening?.process === 'through hardening'

/** Neither masked by its own name nor with its whole side. */
export const takesCase = (part: Part, kind: SurfaceKind, surface: string): boolean =>
  !hardensThrough(part) && comesHard(part, kind, surface)

/** By a case or through. */
export const comesHard = ({ hardening }: Part, kind: SurfaceKind, surface: string): boolean =>
  hardening !== undefined && !hardening.masked.includes(surface) && !hardening.masked.includes(kind)
