import type { Band } from '../band.ts'
import { compoundLayer } from '../handbook/compound-layer.ts'
import { FINE_BORED, FINE_GROUND } from '../handbook/distortion.ts'
import { materialOf } from '../handbook/materials.ts'
import type { Plating } from '../handbook/plating.ts'
import { hardenedLayerToRemove, layerToRemove } from '../handbook/stock-at-worst-place.ts'
import { takesCase } from '../hardening/case-surfaces.ts'
import { between, type Limits, middleOf, toleranceOf } from '../limits.ts'
import type { Part, StockChoice } from '../part/part.ts'
import { platingSizes } from '../plating/plating-sizes.ts'
import type { Process } from '../process.ts'
import { axialLocator } from '../route/axial-locator.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import type { Operation } from '../route/operation.ts'
import type { Shop } from '../shop/shop.ts'
import type { Millimetre } from '../units.ts'
import { type Notebook, SCRATCH } from '../working.ts'
import { setUpError } from './set-up-error.ts'

export type SurfaceKind = 'outside' | 'bore' | 'face'

/** One finishing operation on one surface, with what it must reckon with. */
export type Finish = {
  readonly operation: Operation
  /** Where the part file may fix its stock. */
  readonly stockKey: keyof StockChoice
  readonly eccentricity: Millimetre
  readonly form: Millimetre
  readonly needed: Millimetre
  /** Width of the limits it leaves, where they are not the drawing's. */
  readonly tolerance: Millimetre
}

/**
 * One surface from its last soft size to the drawing. For a face the limits are those of the length that its working
 * dimension spans, and one side of it is cut.
 */
export type FinishChain = {
  readonly surface: string
  readonly kind: SurfaceKind
  readonly path: string
  /** Limits when all is done; a tapered bore from its smallest to its largest. */
  readonly final: Limits
  /** Width of the limits of the last soft size. */
  readonly softTolerance: Millimetre
  /** Takes case, so it grows and has a case to keep. */
  readonly cased: boolean
  /** Left as drilled in roughing. */
  readonly drilled?: true
  /** In the order of the route; none when it is left as turned. */
  readonly finishes: readonly Finish[]
  readonly band?: Band
  /** Of a plated bore from its plated size on: what it is plated with. */
  readonly plated?: Plating
}

/** Every diameter of the part, and its top face when that is ground. */
export function finishChains(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
): readonly FinishChain[] {
  const plating = platingSizes(SCRATCH, part, shop)
  const chain = (kind: SurfaceKind, surface: string, path: string, final: Limits, band?: Band): FinishChain => {
    const cased = takesCase(part, kind, surface)
    const isPlated = plating?.band.name === surface
    // A plated bore goes as far as the plating; what is honed off the layer is a chain of its own.
    const finishing = operations.filter(
      ({ process, purpose, surfaces }) =>
        FINISHING.has(process) && surfaces.includes(surface) && !(isPlated && purpose === 'hone-bore'),
    )
    const finishes = finishing.map((operation, index): Finish => {
      const error = setUpError(notebook, part, shop, operations, operation, kind, surface)
      const first = index === 0
      const needed = first
        ? softLayer(notebook, part, shop, operation, kind, surface, cased)
        : notebook.use(
            layerToRemove,
            operation.process === 'lap'
              ? // A lap, as polishing and superfinishing, takes the ridges alone.
                { Rz: FINE_GROUND.roughness, T: 0 }
              : { Rz: shop.habits.groundRoughness, T: shop.habits.groundLayer },
            { operation: operation.number, about: surface },
          )
      return {
        operation,
        stockKey: stockKeyOf(kind, operation),
        tolerance: kind === 'outside' ? FINE_GROUND.tolerance : shop.habits.boreGrindingTolerance,
        needed,
        ...error,
      }
    })
    return {
      surface,
      kind,
      path,
      final: isPlated ? plating.before : final,
      softTolerance: softTolerance(shop, kind, finishes),
      cased,
      finishes,
      ...(band && { band }),
      ...(band && band === drilledBore(part) && { drilled: true as const }),
    }
  }
  return [
    ...part.outside.map(band => chain('outside', band.name, band.path, band.size, band)),
    ...part.bore.map(band => chain('bore', band.name, band.path, taperedLimits(band), band)),
    ...(operations.some(({ process, surfaces }) => process === 'grind' && surfaces.includes('top'))
      ? [chain('face', 'top', part.top.path, groundLength(part, shop))]
      : []),
  ]
}

const FINISHING: ReadonlySet<Process> = new Set(['grind', 'hone', 'lap'])

function stockKeyOf(kind: SurfaceKind, { process, purpose }: Operation): keyof StockChoice {
  if (kind === 'face') return 'top'
  if (purpose === 'hone-for-plating') return 'preplate'
  return process === 'hone' || process === 'lap' ? process : kind
}

/** A bore closer at the top runs from the smallest size at its top to the largest at its bottom. */
const taperedLimits = ({ size, taper = 0 }: Band): Limits =>
  taper === 0 ? size : { nominal: size.nominal, lower: size.lower - taper, upper: size.upper }

/** The length between the face that locates and the top face, held as closely as a ground face is. */
export function groundLength(part: Part, shop: Shop): Limits {
  const locator = axialLocator(part)
  const drawn = locator.face === 'bottom' ? part.length : part.outside.find(({ name }) => name === locator.band)?.to
  const size = drawn ?? part.length
  const half = Math.min(toleranceOf(size), shop.habits.faceGrindingTolerance) / 2
  return { ...between(middleOf(size) - half, middleOf(size) + half), nominal: size.nominal }
}

function softTolerance({ habits }: Shop, kind: SurfaceKind, [first]: readonly Finish[]): Millimetre {
  if (kind === 'face') return habits.faceTurningTolerance
  return first?.operation.process === 'hone' && first.operation.locatedAs === 'turned'
    ? FINE_BORED.tolerance
    : habits.finishTurningTolerance
}

/**
 * What the first finishing cut must go through. Iron has no damaged layer worth counting after its first cut, and what
 * turning damaged the quench has made anew.
 */
function softLayer(
  notebook: Notebook,
  part: Part,
  { habits }: Shop,
  operation: Operation,
  kind: SurfaceKind,
  surface: string,
  cased: boolean,
): Millimetre {
  const about = { operation: operation.number, about: surface }
  const bored = operation.process === 'hone' && operation.locatedAs === 'turned'
  const Rz = bored ? FINE_BORED.roughness : habits.turnedRoughness
  const layer = cased && part.hardening ? compoundLayer(part.hardening.process) : undefined
  if (layer) {
    // Nothing slides on a face: compound layer may stay on it, as long as the face is ground all over.
    const C = kind === 'face' ? 0 : layer.most / 1000
    return notebook.use(hardenedLayerToRemove, { Rz, C, m: habits.cleanUpAllowance }, about)
  }
  const group = materialOf(part.material.grade)?.group
  const sound = group === 'grey iron' || group === 'ductile iron' || (cased && part.hardening !== undefined)
  const damaged = sound ? 0 : bored ? FINE_BORED.layer : habits.turnedLayer
  return notebook.use(layerToRemove, { Rz, T: damaged }, about)
}
