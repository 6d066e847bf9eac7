import { isMagnetic } from '../handbook/materials.ts'
import type { Part } from '../part/part.ts'
import type { TaskSketch } from './soft-tasks.ts'

/** Name that `waive:` may give. */
export const CRACK_TESTED = 'crack-tested-after-grinding'

/** What was ground hard is looked at with magnetic particles, cleaned and demagnetised: by whoever is qualified for it. */
export function crackTest(part: Part, ground: boolean): readonly TaskSketch[] {
  const { hardening, material, waive, outside, bore } = part
  if (!ground || !hardening || !isMagnetic(material.grade) || waive.some(({ rule }) => rule === CRACK_TESTED)) return []
  return [
    {
      purpose: 'crack-test',
      name: 'Crack test, demagnetise, clean',
      process: 'crack-test',
      holding: `Magnetise ${bore.length > 0 ? 'on a conductor through the bore' : 'between pads on the end faces'}, then in a coil; pull it slowly out of the demagnetising coil, singly and lengthwise`,
      locatedBy: [],
      surfaces: [],
      why: [
        `${[...outside, ...bore].length > 1 ? 'surfaces' : 'a surface'} ground hard may have cracked, and a lens does not show it`,
        'a magnetised part holds grit and chips: demagnetised and washed before it is measured',
      ],
    },
  ]
}
