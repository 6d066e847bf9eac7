import type { Limits, Roughness } from './limits.ts'

/** A size as it must measure when an operation is done. */
export type OperationSize = Limits & {
  /** `bore`, a band's name, `top`, `bottom`, `length`, a port's name. */
  readonly feature: string
  /** What of the feature is measured. */
  readonly measure: 'diameter' | 'length' | 'depth' | 'width' | 'height'
  /** For a port: which edge, as printed. */
  readonly edge?: 'top' | 'bottom'
  readonly roughness?: Roughness
  /** The finished drawing size, printed small beside it. */
  readonly drawn?: string
}

/** How a size is called at the bench: `bore Ø`, `length`, `exhaust top edge`. */
export function featureWords({ feature, measure, edge }: Pick<OperationSize, 'feature' | 'measure' | 'edge'>): string {
  if (edge) return `${feature} ${edge} edge`
  if (measure === 'diameter') return `${feature} Ø`
  return feature === measure ? feature : `${feature} ${measure}`
}
