import type { Limits, Roughness } from './limits.ts'

/** A size as it must measure when an operation is done. */
export type OperationSize = Limits & {
  /** `bore`, a band's name, `top`, `bottom`, `length`, a port's name. */
  readonly feature: string
  /** What of the feature is measured. */
  readonly measure: 'diameter' | 'length' | 'depth' | 'width' | 'height'
  /** For a port: which edge, as printed. */
  readonly edge?: 'top' | 'bottom'
  /** Of a port: the bar between its windows, as printed. */
  readonly item?: string
  /** Of a port: measured square to its stream, which is not its chord. */
  readonly across?: 'the stream'
  readonly roughness?: Roughness
  /** The finished drawing size, printed small beside it. */
  readonly drawn?: string
}

/** How a size is called at the bench: `bore Ø`, `length`, `exhaust top edge`, `exhaust bridge`, `boost width square to the stream`. */
export function featureWords({
  feature,
  measure,
  edge,
  item,
  across,
}: Pick<OperationSize, 'feature' | 'measure' | 'edge' | 'item' | 'across'>): string {
  if (edge) return `${feature} ${edge} edge`
  if (item) return `${feature} ${item}`
  if (across) return `${feature} ${measure} square to ${across}`
  if (measure === 'diameter') return `${feature} Ø`
  return feature === measure ? feature : `${feature} ${measure}`
}
