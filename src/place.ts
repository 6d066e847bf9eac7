/** The sides of the part that sizes, stock and case are reckoned for: outside and bore by their bands, faces by a length. */
export type SurfaceKind = 'outside' | 'bore' | 'face'

/** What a name of the part file stands for. */
export type PlaceKind = SurfaceKind | 'port'

/** What nobody names: the two end faces, and the length between them. */
const FACES: ReadonlySet<string> = new Set(['top', 'bottom', 'length'])

type Named = readonly { readonly name: string }[]

/** Kind of the place that a name stands for: every name of a part is used once. A blank's outside has no name of its own. */
export function placeKind(
  {
    bore,
    ports,
    features = [],
  }: {
    readonly bore: Named
    readonly ports: Named
    readonly features?: readonly { readonly name: string; readonly side?: SurfaceKind }[]
  },
  name: string,
): PlaceKind {
  const among = (places: Named): boolean => places.some(place => place.name === name)
  if (among(bore)) return 'bore'
  if (among(ports)) return 'port'
  const feature = features.find(one => one.name === name)
  if (feature) return feature.side === 'bore' ? 'bore' : 'outside'
  return FACES.has(name) ? 'face' : 'outside'
}

/** How two limits stand: the one that is met first while metal goes in front, the smaller of a hole, the larger of a shaft. */
export type Written = 'hole' | 'shaft'

/** A bore and a window grow as they are cut, and so does the depth of a step; outside and lengths shrink. */
export const writtenAs = (kind: PlaceKind, measure: string = 'diameter'): Written =>
  kind === 'bore' || kind === 'port' || measure === 'depth' ? 'hole' : 'shaft'
