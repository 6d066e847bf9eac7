import { isNearName, MATERIAL_NAMES, materialOf } from '../handbook/materials.ts'
import { readHardness } from './hardness.ts'
import type { Material } from './part.ts'
import { suggestionOrList } from './suggestion.ts'
import type { View } from './view.ts'

/** Cooler tempers nothing; above it steel begins to turn into austenite. Source: memory: Ac1 of these steels 720 to 760 °C. */
const TEMPER = { from: 100, upTo: 720 }

export function readMaterial(view: View): Material | undefined {
  const hardness = readHardness(view, 'hardness')
  const temper = view.quantity('temper', 'temperature', TEMPER)
  const written = view.text('grade')
  const grade = readGrade(view, 'grade')
  if (written === undefined || grade === undefined) return undefined
  return { grade, written, ...(hardness && { hardness: hardness.HV }), ...(temper !== undefined && { temper }) }
}

/** The grade as the handbook lists it. Exact after aliases: the nearest name is only offered. */
export function readGrade(view: View, key: string): string | undefined {
  const written = view.text(key)
  if (written === undefined) return undefined
  const entry = materialOf(written)
  if (entry) {
    if (isNearName(written))
      view.report(
        {
          code: 'input/near-grade',
          message: `${written} is near ${entry.grade}, not the same; it is planned as ${entry.grade}`,
          hint: 'have analysis and delivered condition confirmed by the certificate',
        },
        key,
        'note',
      )
    return entry.grade
  }
  const hint = suggestionOrList(written, MATERIAL_NAMES, 'known')
  view.report({ code: 'input/unknown-material', message: `the handbook has no material "${written}"`, hint }, key)
  return undefined
}
