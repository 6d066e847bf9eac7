import type { SurfaceKind } from '../place.ts'
import type { Part } from './part.ts'

/** Neither masked by its own name nor with its whole side. */
export const takesCase = ({ hardening }: Part, kind: SurfaceKind, surface: string): boolean =>
  hardening !== undefined && !hardening.masked.includes(surface) && !hardening.masked.includes(kind)
