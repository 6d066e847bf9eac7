import type { Finding } from '../finding.ts'
import { type CompoundLayer, KEPT_LAYER, keptLayer } from '../handbook/compound-layer.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import { takesCase } from '../part/takes-case.ts'
import type { Removal } from './removal.ts'

/** Bores that take case and are not finished after: they run on the compound layer. A pin's bore only saves weight. */
export const runsOnLayer = (part: Part, removal: readonly Removal[]): readonly string[] =>
  part.kind === 'pin'
    ? []
    : part.bore
        .filter(({ name }) => takesCase(part, 'bore', name) && !removal.some(({ surface }) => surface === name))
        .map(({ name }) => name)

/** What a bore that is used as it comes runs on: a layer that is meant for it, or one that breaks up into hard grit. */
export function layerFindings(
  part: Part,
  layer: CompoundLayer | undefined,
  removal: readonly Removal[],
): readonly Finding[] {
  if (!layer) return []
  const least = keptLayer(layer)
  return runsOnLayer(part, removal).map(surface =>
    partFinding({
      part,
      severity: least === undefined ? 'warning' : 'note',
      code: 'case/layer-kept',
      path: '/hardening/process',
      message:
        least === undefined
          ? `${surface} is not finished after ${layer.process}: up to ${layer.ordered} µm of compound layer stay on it, and break up into hard grit where something slides`
          : `${surface} runs on its compound layer: ${least} µm or more are asked as hardened, and no more than ${KEPT_LAYER.polished} may be polished off (${KEPT_LAYER.source})`,
      hint:
        least === undefined
          ? 'hone or grind it off, or nitrocarburise, which leaves a layer to run on'
          : 'finish it finely before: roughness of 0.3 to 0.4 µm before comes out at 0.6 to 1.0, and a polish brings 0.2 to 0.4',
    }),
  )
}
