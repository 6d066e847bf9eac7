import type { Millimetre } from './units.ts'

/** The part as it leaves an operation, at the middle of its sizes: what drawings show. Depths from the finished top face. */
export type Shape = {
  /** Where the top face stands: negative when it still has stock. */
  readonly top: Millimetre
  readonly bottom: Millimetre
  readonly outside: readonly {
    readonly name: string
    readonly from: Millimetre
    readonly to: Millimetre
    readonly diameter: Millimetre
  }[]
  readonly bore: readonly {
    readonly name: string
    readonly from: Millimetre
    readonly to: Millimetre
    readonly diameter: Millimetre
  }[]
  readonly ported: boolean
}
