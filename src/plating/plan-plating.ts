import type { Finding } from '../finding.ts'
import { BAKE, BAKE_SOURCE, bakeHours } from '../handbook/hydrogen-bake.ts'
import { depositionTime } from '../handbook/plating.ts'
import { largestLoad, standardLoad } from '../handbook/vickers-load.ts'
import type { CasePlan } from '../hardening/case-plan.ts'
import { fromHandbook, told, worked } from '../known.ts'
import type { Part } from '../part/part.ts'
import { chamferOf, heatWanted, maskedIn, takesHydrogen } from '../route/plating-needs.ts'
import type { Hour } from '../units.ts'
import type { Notebook } from '../working.ts'
import { type JudgedHone, platingFindings } from './plating-findings.ts'
import type { PlatingPlan } from './plating-plan.ts'
import type { PlatingSizes } from './plating-sizes.ts'

export type PlannedPlating = { readonly plan: PlatingPlan; readonly findings: readonly Finding[] }

/** A plated bore whose sizes are settled and whose hone is judged: its order, its bake, and what to look out for. */
export function planPlating({
  notebook,
  part,
  sizes,
  hone,
  order,
}: {
  readonly notebook: Notebook
  readonly part: Part
  readonly sizes: PlatingSizes
  readonly hone: JudgedHone
  readonly order: CasePlan | undefined
}): PlannedPlating {
  const { asked, row, left, layer } = sizes
  const about = { about: `${asked.surface}, ${asked.process}` }
  const hours = bakeOf(notebook, part, order, about)
  const { rate } = row
  const inBath = (v: number) => notebook.use(depositionTime, { t: sizes.aim, s: sizes.honeStock, v }, about)
  const plan: PlatingPlan = {
    process: asked.process,
    surface: asked.surface,
    base: {
      ...(part.material.hardness !== undefined && { hardness: part.material.hardness }),
      ...(part.material.temper !== undefined && { temper: part.material.temper }),
    },
    asked: { least: asked.thickness.least, ...(asked.thickness.most !== undefined && { most: asked.thickness.most }) },
    aim: sizes.aim.value,
    left,
    layer,
    stock: { least: -layer.most, nominal: -layer.nominal, most: -layer.least },
    honeStock: sizes.honeStock.value,
    before: sizes.before,
    plated: sizes.plated,
    finished: sizes.finished,
    chamfer: chamferOf(asked) ?? row.portChamfer,
    masked: maskedIn(part, asked),
    relieved: heatWanted(part, 'stress-relieved-for-plating'),
    bake: { hours, ...BAKE.temperature, startWithin: BAKE.startWithin },
    hardness: {
      ...(asked.hardness && { asked: asked.hardness.least }),
      usual: row.hardness,
      testLoad: testLoad(notebook, sizes, about),
    },
    ...(rate && { time: { least: inBath(rate.most), most: inBath(rate.least) } }),
    honedWith: row.honedWith,
    ringPartner: row.ringPartner,
  }
  return { plan, findings: platingFindings({ part, order, sizes, hone, hours }) }
}

type About = { readonly about: string }

/** Steel only. A part with a case falls in the category of its layer. */
function bakeOf(notebook: Notebook, part: Part, order: CasePlan | undefined, about: About): Hour {
  const hours = takesHydrogen(part) ? bakeHours(part.material.hardness ?? 0, order?.surfaceHardness) : 0
  notebook.note({
    ...about,
    symbol: 't_bake',
    meaning: 'least bake after plating',
    value: hours,
    unit: 'h',
    expression: `${BAKE.temperature.least} to ${BAKE.temperature.most} °C, begun within ${BAKE.startWithin} h`,
    source: BAKE_SOURCE,
  })
  return hours
}

function testLoad(notebook: Notebook, { row, left }: PlatingSizes, about: About): string {
  const largest = notebook.use(
    largestLoad,
    {
      ...told(fromHandbook(row.hardnessOf), { HV: row.hardness.least }),
      ...told(worked('least plating left'), { N_r: Math.max(left.least, 1e-3) }),
    },
    about,
  )
  return `HV${standardLoad(largest).load}`
}
