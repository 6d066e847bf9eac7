import type { Millimetre } from '../../units.ts'
import { BREAK_THROUGH } from '../plan-window.ts'
import type { PortWindow } from '../port.ts'
import { deepestOf, type Floor, roughFloors, roughLoops, shallowestOf, slugOf } from './floors.ts'
import type { Slug } from './tool-path.ts'

/** Left under the slot until the cut through, so that the slug stays where it is. Common practice, no source: 0.1 to 0.2. */
const SKIN: Millimetre = 0.2

export type RoughLevels = {
  readonly wallStock: Millimetre
  readonly slug: Slug
  readonly levels: number
  /** The last ones, which part the slug from the wall. */
  readonly throughLevels: number
  /** Greatest depth of a level. */
  readonly depth: Millimetre
}

/** Even levels from the curved outside down to past the bore, none deeper than a limit; nothing where the cutter does not fit in. */
export function roughLevels(
  window: PortWindow,
  { cutter, wallStock: wanted, most }: { cutter: Millimetre; wallStock: Millimetre; most: Millimetre },
): RoughLevels | undefined {
  const wallStock = [1, 0.5, 0.25, 0.125, 0]
    .map(share => share * wanted)
    // A window hardly larger than its cutter has no way round with the whole stock left on its wall.
    .find(stock => roughLoops(window, cutter, stock).length > 0)
  if (wallStock === undefined) return undefined
  const slug = slugOf(window, cutter, wallStock)
  const floors = roughFloors(window, cutter, wallStock, slug)
  const deepest = deepestOf(floors)
  const levels = levelsFor(deepest, most)
  // Without a slug only the break-through itself is slow.
  const last = BREAK_THROUGH + (slug === 'kept' ? SKIN : 0)
  const skin = Math.ceil((levels * last) / shallowestOf(floors) - 1e-9)
  const throughLevels = Math.min(levels, Math.max(1, skin))
  return { wallStock, slug, levels, throughLevels, depth: deepest / levels }
}

export type WallLevels = { readonly levels: number; readonly depth: Millimetre }

/** Even levels along the wall, or in corners; nothing where there is none to go along. */
export function wallLevels(floors: readonly Floor[], most: Millimetre): WallLevels | undefined {
  const deepest = deepestOf(floors.map(({ loop }) => ({ lead: [], loop })))
  if (deepest === 0) return undefined
  const levels = levelsFor(deepest, most)
  return { levels, depth: deepest / levels }
}

const levelsFor = (deepest: Millimetre, most: Millimetre): number => Math.max(1, Math.ceil(deepest / most - 1e-6))
