import type { Band } from '../band.ts'
import { FINE_BORED, FINE_GROUND } from '../handbook/distortion.ts'
import { materialOf } from '../handbook/materials.ts'
import { hardenedLayerToRemove, layerToRemove } from '../handbook/stock-at-worst-place.ts'
import { QUENCHED_SKIN, QUENCHED_SOURCE } from '../handbook/through-hardening.ts'
import { layerOf } from '../hardening/case-cycle.ts'
import { type Figure, fromHandbook, fromPart, type Known, known, named, none, worked } from '../known.ts'
import { between, type DrawnSize, type Limits, middleOf, toleranceOf } from '../limits.ts'
import type { Part, StockChoice } from '../part/part.ts'
import { comesHard, hardensThrough, takesCase } from '../part/takes-case.ts'
import type { SurfaceKind } from '../place.ts'
import { platingSizes } from '../plating/plating-sizes.ts'
import { FINISHING_PROCESSES } from '../process.ts'
import { drilledBore } from '../route/drilled-bore.ts'
import type { AxialLocator, Operation } from '../route/operation.ts'
import { habit } from '../shop/habit.ts'
import type { Shop } from '../shop/shop.ts'
import { millimetres } from '../units.ts'
import { type About, type Notebook, reckoned, SCRATCH } from '../working.ts'
import { setUpError } from './set-up-error.ts'
import { type Told, toldOf } from './told.ts'

/** One finishing operation on one surface, with what it must reckon with. */
export type Finish = {
  readonly operation: Operation
  /** Where the part file may fix its stock. */
  readonly stockKey: keyof StockChoice
  /** Where the part file fixes it: on diameter, of a face twice what comes off it. */
  readonly fixed?: Known<'mm'>
  readonly eccentricity: Known<'mm'>
  readonly form: Known<'mm'>
  readonly needed: Known<'mm'>
  /** Width of the limits it leaves, where they are not the drawing's. */
  readonly tolerance: Known<'mm'>
  /** What its gauge can tell, a side. */
  readonly told: Told
  /** What the errors and what must go rest on, as they were chosen. */
  readonly rests: readonly Figure[]
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
  /** Width of those limits. */
  readonly finalTolerance: Known<'mm'>
  /** Width of the limits of the last soft size. */
  readonly softTolerance: Known<'mm'>
  /** Takes case, so it grows and has a case to keep. */
  readonly cased: boolean
  /** Comes hard from the furnace, by a case or through: it grows and burns. */
  readonly hard: boolean
  /** Left as drilled in roughing. */
  readonly drilled?: true
  /** In the order of the route; none when it is left as turned. */
  readonly finishes: readonly Finish[]
  readonly band?: Band
}

/** Every diameter of the part, and its top face when that is ground. */
export function finishChains(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  operations: readonly Operation[],
): readonly FinishChain[] {
  const plating = platingSizes(SCRATCH, part, shop)
  const chain = ({
    kind,
    surface,
    path,
    final,
    more: { band, tolerance = known(toleranceOf(final), 'mm', fromPart(path)) },
  }: {
    readonly kind: SurfaceKind
    readonly surface: string
    readonly path: string
    readonly final: Limits
    readonly more: { band?: Band; tolerance?: Known<'mm'> }
  }): FinishChain => {
    const cased = takesCase(part, kind, surface)
    const isPlated = plating?.band.name === surface
    // A plated bore goes as far as the plating; what is honed off the layer is a chain of its own.
    const finishing = operations.filter(
      ({ process, purpose, surfaces }) =>
        FINISHING_PROCESSES.has(process) && surfaces.includes(surface) && !(isPlated && purpose === 'hone-bore'),
    )
    const left = kind === 'outside' ? FINE_GROUND_TOLERANCE : habit(shop, 'boreGrindingTolerance', 'mm')
    const finishes = finishing.map((operation, index): Finish => {
      const { rests, ...error } = setUpError({ notebook, part, shop, operations, operation, kind, surface })
      const stockKey = stockKeyOf(kind, operation)
      const own = part.stock[stockKey]
      const layer =
        index === 0
          ? softLayer({ notebook, part, shop, operation, kind, surface, cased })
          : groundLayer(notebook, shop, operation, surface)
      return {
        operation,
        stockKey,
        ...(own !== undefined && {
          fixed: known(kind === 'face' ? 2 * own : own, 'mm', fromPart(`/stock/${stockKey}`)),
        }),
        tolerance: left,
        told: toldOf(shop, kind, final, index === finishing.length - 1 ? tolerance.value : left.value),
        ...error,
        needed: layer.needed,
        rests: [...rests, ...layer.rests],
      }
    })
    return {
      surface,
      kind,
      path,
      final: isPlated ? plating.before : final,
      finalTolerance: isPlated ? plating.beforeTolerance : tolerance,
      softTolerance: softTolerance(shop, kind, finishes),
      cased,
      hard: comesHard(part, kind, surface),
      finishes,
      ...(band && { band }),
      ...(band && band === drilledBore(part) && { drilled: true as const }),
    }
  }
  return [
    ...part.outside.map(band =>
      chain({ kind: 'outside', surface: band.name, path: band.path, final: band.size, more: { band } }),
    ),
    ...part.bore.map(band =>
      chain({ kind: 'bore', surface: band.name, path: band.path, final: taperedLimits(band), more: { band } }),
    ),
    ...operations.flatMap(({ axialLocator }) => {
      if (!axialLocator) return []
      const { limits, tolerance } = groundLength(lengthToTop(part, axialLocator), shop)
      return [chain({ kind: 'face', surface: 'top', path: part.top.path, final: limits, more: { tolerance } })]
    }),
  ]
}

function stockKeyOf(kind: SurfaceKind, { process, purpose }: Operation): keyof StockChoice {
  if (kind === 'face') return 'top'
  if (purpose === 'hone-for-plating') return 'preplate'
  return process === 'hone' || process === 'lap' ? process : kind
}

/** A bore closer at the top runs from the smallest size at its top to the largest at its bottom. */
const taperedLimits = ({ size, taper = 0 }: Band): Limits =>
  taper === 0 ? size : { nominal: size.nominal, lower: size.lower - taper, upper: size.upper }

/** The length between the face that locates and the top face, as the drawing has it. */
function lengthToTop(part: Part, locator: AxialLocator): DrawnSize {
  const drawn = locator.face === 'bottom' ? part.length : part.outside.find(({ name }) => name === locator.band)?.to
  return drawn ?? part.length
}

/** Held as closely as a ground face is, or as the drawing asks where that is closer. */
function groundTolerance(size: DrawnSize, shop: Shop): Known<'mm'> {
  const drawn = toleranceOf(size)
  const held = habit(shop, 'faceGrindingTolerance', 'mm')
  return drawn < held.value ? known(drawn, 'mm', fromPart('/body/length')) : held
}

/** The length between the face that locates and the top face, about the middle of the drawing's limits. */
function groundLength(size: DrawnSize, shop: Shop): { readonly limits: Limits; readonly tolerance: Known<'mm'> } {
  const tolerance = groundTolerance(size, shop)
  const half = tolerance.value / 2
  return { limits: { ...between(middleOf(size) - half, middleOf(size) + half), nominal: size.nominal }, tolerance }
}

const FINE_GROUND_TOLERANCE = known(FINE_GROUND.tolerance, 'mm', fromHandbook(FINE_GROUND.source))

const isFineBored = (operation: Operation | undefined): boolean =>
  operation?.process === 'hone' && operation.locatedAs === 'turned'

function softTolerance(shop: Shop, kind: SurfaceKind, [first]: readonly Finish[]): Known<'mm'> {
  if (kind === 'face') return habit(shop, 'faceTurningTolerance', 'mm')
  return isFineBored(first?.operation)
    ? known(FINE_BORED.tolerance, 'mm', fromHandbook(FINE_BORED.source))
    : habit(shop, 'finishTurningTolerance', 'mm')
}

/** What a finishing cut must go through, and what that rests on. */
type Layer = { readonly needed: Known<'mm'>; readonly rests: readonly Figure[] }

/** A lap, as polishing and superfinishing, takes the ridges alone. */
function groundLayer(notebook: Notebook, shop: Shop, operation: Operation, surface: string): Layer {
  const lapped = operation.process === 'lap'
  const Rz = lapped
    ? known(FINE_GROUND.roughness, 'µm', fromHandbook(FINE_GROUND.source))
    : habit(shop, 'groundRoughness', 'µm')
  const T = lapped ? noLayer('a lap takes the ridges alone') : habit(shop, 'groundLayer', 'µm')
  return damagedLayer(notebook, Rz, T, { operation: operation.number, about: surface })
}

const noLayer = (why: string): Known<'µm'> => known(0, 'µm', worked(why))

const damagedLayer = (notebook: Notebook, Rz: Known<'µm'>, T: Known<'µm'>, about: About): Layer => ({
  needed: reckoned(notebook, layerToRemove, { Rz, T }, about),
  rests: [named('roughness before', Rz), named('damaged layer before', T)],
})

/**
 * What the first finishing cut must go through. Iron has no damaged layer worth counting after its first cut, and what
 * turning damaged the quench has made anew.
 */
function softLayer({
  notebook,
  part,
  shop,
  operation,
  kind,
  surface,
  cased,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly shop: Shop
  readonly operation: Operation
  readonly kind: SurfaceKind
  readonly surface: string
  readonly cased: boolean
}): Layer {
  const about = { operation: operation.number, about: surface }
  const bored = isFineBored(operation)
  const fineBored = (value: number) => known(value, 'µm', fromHandbook(FINE_BORED.source))
  const Rz = bored ? fineBored(FINE_BORED.roughness) : habit(shop, 'turnedRoughness', 'µm')
  const layer = cased ? layerOf(part, shop) : undefined
  if (layer) {
    // Nothing slides on a face: compound layer may stay on it, as long as the face is ground all over.
    const C =
      kind === 'face'
        ? none('nothing slides on a face: the layer may stay')
        : known(millimetres(layer.ordered), 'mm', fromHandbook(layer.source))
    const m = habit(shop, 'cleanUpAllowance', 'mm')
    return {
      needed: reckoned(notebook, hardenedLayerToRemove, { Rz, C, m }, about),
      rests: [named('roughness before', Rz), named('compound layer', C), named('cut beyond the layer', m)],
    }
  }
  if (hardensThrough(part)) {
    const skin = known(QUENCHED_SKIN, 'mm', fromHandbook(QUENCHED_SOURCE))
    return { needed: skin, rests: [named('skin of the quench, with the roughness before', skin)] }
  }
  const group = materialOf(part.material.grade)?.group
  const iron = group === 'grey iron' || group === 'ductile iron'
  if (iron || (cased && part.hardening !== undefined))
    return damagedLayer(notebook, Rz, noLayer(iron ? 'iron has none to count' : 'the quench has made it anew'), about)
  return damagedLayer(notebook, Rz, bored ? fineBored(FINE_BORED.layer) : habit(shop, 'turnedLayer', 'µm'), about)
}
