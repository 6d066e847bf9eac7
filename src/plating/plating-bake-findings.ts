import type { Finding } from '../finding.ts'
import { BAKE, BAKE_SOURCE } from '../handbook/hydrogen-bake.ts'
import type { Part } from '../part/part.ts'
import { partFinding } from '../part/part-finding.ts'
import { heatWanted, takesHydrogen } from '../route/plating-needs.ts'
import type { Hour } from '../units.ts'

/** Whether and how long a plated part is baked against hydrogen, or why that cannot be told. */
export function bakeFindings(part: Part, hours: Hour): readonly Finding[] {
  const { plating } = part
  if (!plating || !takesHydrogen(part)) return []
  const { surface, path } = plating
  const { grade, hardness, temper } = part.material
  if (hardness === undefined && part.hardening === undefined) {
    return [
      partFinding({
        part,
        severity: 'error',
        code: 'plating/bake-unknown',
        path: '/material',
        message: `the hardness of ${grade} is not given: whether ${surface} must be baked after plating cannot be told`,
        hint: 'write the hardness of the bar',
      }),
    ]
  }
  const softens = part.hardening?.process === 'carburising' || (temper !== undefined && temper < BAKE.temperature.most)
  const bake = `${hours} h or more at ${BAKE.temperature.least} to ${BAKE.temperature.most} °C, begun within ${BAKE.startWithin} h of plating (${BAKE_SOURCE})`
  if (!heatWanted(part, 'baked-for-hydrogen')) {
    return [
      partFinding({
        part,
        severity: 'warning',
        code: 'plating/bake',
        path: `${path}/process`,
        message: `the bake is waived: ${surface} would be baked ${bake}`,
        hint: WAIVED,
      }),
    ]
  }
  return [
    partFinding({
      part,
      severity: softens ? 'warning' : 'note',
      code: 'plating/bake',
      path: `${path}/process`,
      message: `bake ${surface} ${bake}`,
      hint: softens
        ? 'what is tempered at 150 to 180 °C softens there: agree a cooler and longer bake with the plater'
        : 'it is on the order: ask for the chart; the standard that the plater works to decides',
    }),
  ]
}

const WAIVED = 'strong steel that holds hydrogen may break days later under a steady load: have the reason in writing'
