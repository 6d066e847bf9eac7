import type { Limits, Roughness } from './limits.ts'

/** What of a feature a size is of, where the feature is no band, face or port. */
export type FeatureSize =
  | 'chamfer'
  | 'groove'
  | 'floor'
  | 'floor in the bore'
  | 'place'
  | 'undercut'
  | 'hole'
  | 'circle'
  | 'cut-out'
  | 'inside'
  | 'up'
  | 'pin bore'
  | 'clip'
  | 'along the pin'
  | 'skirt top'

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
  /** Of a chamfer, groove, hole or cut-out: what of it. */
  readonly of?: FeatureSize
  /** Of a port: measured square to its stream, which is not its chord. */
  readonly across?: 'the stream'
  readonly roughness?: Roughness
  /** The finished drawing size, printed small beside it. */
  readonly drawn?: string
}

/** What is said after the name of a feature. */
export const FEATURE_WORDS: Readonly<Record<FeatureSize, string>> = {
  chamfer: '',
  groove: 'width',
  floor: 'floor Ø',
  'floor in the bore': 'floor Ø',
  place: 'from the top face',
  undercut: 'width',
  hole: 'Ø',
  circle: 'circle Ø',
  'cut-out': 'width',
  inside: 'Ø',
  up: 'depth from the lower end',
  'pin bore': 'Ø',
  clip: 'clip groove Ø',
  'along the pin': 'along the pin Ø',
  'skirt top': 'at its top Ø',
}

/** What shrinks as it is cut, or is gauged over; all else of a feature is a hollow that grows. */
const OVER: ReadonlySet<FeatureSize> = new Set(['floor', 'circle', 'along the pin', 'skirt top'])
export const isOver = (of: FeatureSize): boolean => OVER.has(of)

/** How a size is called at the bench: `bore Ø`, `length`, `exhaust top edge`, `exhaust bridge`, `boost width square to the stream`. */
export function featureWords({
  feature,
  measure,
  edge,
  item,
  across,
  of,
}: Pick<OperationSize, 'feature' | 'measure' | 'edge' | 'item' | 'across' | 'of'>): string {
  if (of) return [feature, of === 'cut-out' ? measure : FEATURE_WORDS[of]].filter(Boolean).join(' ')
  if (edge) return `${feature} ${edge} edge`
  if (item) return `${feature} ${item}`
  if (across) return `${feature} ${measure} square to ${across}`
  if (measure === 'diameter') return `${feature} Ø`
  return feature === measure ? feature : `${feature} ${measure}`
}
