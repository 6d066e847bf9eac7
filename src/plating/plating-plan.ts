import type { Limits, Spread } from '../limits.ts'
import type { Celsius, Hour, Millimetre, Vickers } from '../units.ts'

/** A plated bore: built up over its drawn size and honed back to it. Layers are per side. */
export type PlatingPlan = {
  readonly process: string
  readonly surface: string
  /** Of what is plated, as the part file has them: they decide on relief and bake. */
  readonly base: { readonly hardness?: Vickers; readonly temper?: Celsius }
  /** As left after honing: what is asked, what the sizes aim at, and what is left at the worst places. */
  readonly asked: { readonly least: Millimetre; readonly most?: Millimetre }
  readonly aim: Millimetre
  readonly left: Spread
  /** As plated, at the worst places, edges apart. */
  readonly layer: Spread
  /** What the plating takes off a side: negative, since metal goes on. */
  readonly stock: Spread
  readonly honeStock: Millimetre
  readonly before: Limits
  readonly plated: Limits
  readonly finished: Limits
  /** Broken on port edges and bore ends before plating. */
  readonly chamfer: { readonly least: Millimetre; readonly most: Millimetre }
  readonly masked: readonly string[]
  readonly relieved: boolean
  /** Nought hours where none is needed. */
  readonly bake: {
    readonly hours: Hour
    readonly least: Celsius
    readonly most: Celsius
    readonly startWithin: Hour
  }
  readonly hardness: {
    readonly asked?: Vickers
    readonly usual: { readonly least: Vickers; readonly most: Vickers }
    readonly testLoad: string
  }
  /** In the bath, where the rate is known. */
  readonly time?: { readonly least: Hour; readonly most: Hour }
  readonly honedWith: string
  readonly ringPartner: string
}
