import { platingOf } from '../handbook/plating.ts'
import type { Part } from '../part/part.ts'
import { heatWanted, maskedIn, type PLATING_HEATS } from './plating-needs.ts'
import type { TaskSketch } from './soft-tasks.ts'

/** From the bore with its final form to the plated one. */
export function platingTasks(part: Part, hardGround: boolean): readonly TaskSketch[] {
  const { plating } = part
  if (!plating) return []
  const { surface, process } = plating
  const row = platingOf(process)
  const heat = (name: (typeof PLATING_HEATS)[number], sketch: TaskSketch): readonly TaskSketch[] =>
    heatWanted(part, name) ? [sketch] : []
  const relief = heat('stress-relieved-for-plating', {
    purpose: 'relieve-for-plating',
    name: 'Stress relieve before plating',
    process: 'stress-relieve',
    at: 'plate',
    holding: 'Stand on end on a flat plate, not touching; clean and dry, nothing on a port edge',
    locatedBy: [],
    surfaces: [],
    why: ['steel of 1000 MPa (300 HV) or more, or with a hard case, takes up hydrogen and cracks under stress'],
  })
  const bake = heat('baked-for-hydrogen', {
    purpose: 'bake-after-plating',
    name: 'Bake after plating',
    process: 'stress-relieve',
    at: 'plate',
    holding: 'Straight from the rinse into the oven, dry, stood on end, not touching',
    locatedBy: [],
    surfaces: [],
    why: ['drives out the hydrogen that the bath put in; the firm that plates has the oven beside the bath'],
  })
  return [
    {
      purpose: 'hone-for-plating',
      name: 'Hone bore before plating',
      process: 'hone',
      holding: 'Stand in the floating honing fixture, clamped on the end faces only, never round the wall',
      locatedBy: [surface],
      locatedAs: hardGround ? 'ground' : 'turned',
      surfaces: [surface],
      why: [`${surface}: ${process} copies roundness, taper and scratches of what it is laid on`],
    },
    ...relief,
    {
      purpose: 'plate',
      name: process === 'hard chrome' ? 'Hard chrome bore' : 'Plate bore with nickel silicon carbide',
      process: 'plate',
      holding: `Rack on end, anode on the axis of ${surface}; contacts on masked surfaces only`,
      locatedBy: [surface],
      locatedAs: 'ground',
      surfaces: [surface],
      why: [
        `the drawing asks for ${process} on ${surface}`,
        `masked: ${maskedIn(part, plating).join(', ')}: end faces and outside keep their sizes`,
        ...(row ? [`rings: ${row.ringPartner}`] : []),
      ],
    },
    ...bake,
  ]
}
