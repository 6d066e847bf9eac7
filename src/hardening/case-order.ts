import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import { convertedFrom } from '../handbook/hardness-conversion.ts'
import { rockwellDepth } from '../handbook/rockwell-depth.ts'
import { largestLoad, SURFACE_LOAD, standardLoad } from '../handbook/vickers-load.ts'
import type { Part } from '../part/part.ts'
import type { Celsius, Millimetre, Vickers } from '../units.ts'
import { openNotebook } from '../working.ts'
import type { CaseFigures } from './case-figures.ts'
import type { CaseOrder } from './case-plan.ts'
import { stressReliefIn, temperWanted } from './case-temper.ts'

/** What goes on the hardener's order besides the case. */
export function caseOrder({
  part,
  window: { term },
  figures: { surface, tempered },
  depth,
  temperature,
  surfaceLeast,
}: {
  readonly part: Part
  readonly window: HardeningWindow
  readonly figures: CaseFigures
  readonly depth: Millimetre
  readonly temperature: Celsius
  readonly surfaceLeast: Vickers | undefined
}): CaseOrder {
  const { hardness, temper } = part.material
  const asked = part.hardening?.hardness?.least
  const { load } = standardLoad(Math.min(SURFACE_LOAD, largestLoad.value({ HV: surface.usual, N_r: depth })))
  const relief = tempered
    ? stressReliefIn(openNotebook(), part, temperature, temper ?? temperWanted(temperature))
    : undefined
  const HRC = term === 'NHD' ? undefined : convertedFrom('HV', surfaceLeast ?? surface.usual)?.HRC
  return {
    term,
    surfaceLoad: `HV${load}`,
    masked: part.hardening?.masked ?? [],
    ...(HRC !== undefined && { rockwell: { HRC, from: rockwellDepth.value({ HRC }) } }),
    ...(asked !== undefined && { hardness: asked }),
    ...(surfaceLeast !== undefined && { surfaceLeast }),
    ...(hardness !== undefined && { barHardness: hardness }),
    ...(tempered && temper !== undefined && { temper }),
    ...(relief &&
      'chosen' in relief && {
        stressRelief: relief.chosen,
        stressReliefWindow: { least: relief.least, most: relief.most },
      }),
  }
}
