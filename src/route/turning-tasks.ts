import { isTurned } from '../feature.ts'
import type { Part } from '../part/part.ts'
import { hardensThrough } from '../part/takes-case.ts'
import { drilledBore } from './drilled-bore.ts'
import { chamferOf } from './plating-needs.ts'
import type { TaskSketch } from './soft-tasks.ts'

const bands = (part: Part): readonly string[] => [...part.outside, ...part.bore].map(({ name }) => name)
const FACES = ['top', 'bottom', 'length'] as const
const turnedFeatures = ({ features }: Part): readonly string[] =>
  features.filter(feature => isTurned(feature) && feature.kind !== 'inside').map(({ name }) => name)

/** Heat lies between: the lathe has the part twice. */
export const roughAndRelieved = (part: Part): readonly TaskSketch[] => roughedAround(part, stressRelief(part))

/** Other work lies between roughing and finishing. */
export function roughedAround(part: Part, between: readonly TaskSketch[]): readonly TaskSketch[] {
  return [
    {
      purpose: 'rough-turn',
      name: 'Rough turn',
      process: 'turn',
      holding: roughHolding(part),
      locatedBy: [],
      surfaces: [...bands(part), ...FACES],
      why: ['takes the bulk off while the part may still move'],
    },
    ...between,
    {
      ...finishedIn(part),
      purpose: 'finish-turn',
      name: 'Finish turn',
      holding: finishHolding(part),
      surfaces: [...bands(part).filter(name => name !== drilledBore(part)?.name), ...FACES, ...turnedFeatures(part)],
    },
  ]
}

/** No heat lies between: one operation, roughed at both ends before anything is finished. */
export function roughedAndFinished(part: Part): readonly TaskSketch[] {
  const finished = finishedIn(part)
  const rest = finishHolding(part)
  return [
    {
      ...finished,
      purpose: 'turn',
      name: 'Turn',
      holding: `Rough first: ${uncapitalised(roughHolding(part))}. Then finish: ${uncapitalised(rest)}`,
      surfaces: [...bands(part), ...FACES, ...turnedFeatures(part)],
      why: ['no heat lies between roughing and finishing: the lathe has the part once', ...finished.why],
    },
  ]
}

const uncapitalised = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)

function finishedIn(part: Part): Omit<TaskSketch, 'purpose' | 'name' | 'holding' | 'surfaces'> {
  return {
    process: 'turn',
    locatedBy: [seatOf(part)],
    heldIn: 'jaws',
    gripsAt: 'bottom',
    why: [
      part.bore.length === 0 || drilledBore(part)
        ? 'gives every surface its last soft size'
        : 'gives every surface its last soft size: bore and outside run true to each other from here',
      ...chamfered(part, `both ends of ${part.plating?.surface}`),
    ],
  }
}

const seatOf = ({ outside }: Part): string => outside.at(-1)?.name ?? 'outside'

/** What is later ground between centres gets them here: holes in a solid part, chamfers in a bore. */
function roughHolding({ kind, bore }: Part): string {
  if (bore.length === 0 && kind === 'pin')
    return 'Hold the blank in the three-jaw chuck; face, centre and turn; turn round on the turned diameter, face and centre'
  if (bore.length === 0)
    return 'Hold the blank in the three-jaw chuck; face and turn; turn round on the turned diameter'
  if (kind === 'pin')
    return 'Hold the blank in the three-jaw chuck; face, drill, chamfer the bore at 60° and turn; turn round on the turned diameter, face and chamfer'
  return 'Hold the blank in the three-jaw chuck; face, turn and bore; turn round on the turned diameter'
}

function finishHolding(part: Part): string {
  const { kind, bore, outside } = part
  const seat = seatOf(part)
  const first = outside[0]?.name ?? 'outside'
  if (kind === 'pin') {
    const centres = bore.length > 0 ? '60° chamfers of the bore' : 'centre holes'
    const bored = bore.length > 0 && !drilledBore(part) ? 'bore, ' : ''
    return `Hold ${seat} in bored soft jaws; ${bored}face to length and renew the ${centres}; then between centres in them, driven by the end face, turn ${seat} end to end`
  }
  if (part.features.some(feature => feature.kind === 'inside'))
    return 'Seat the register on its spigot and draw the piston down by a bolt through a dummy pin; lands, skirt, ring grooves and crown in one holding'
  if (bore.length === 0) return `Hold ${seat} in bored soft jaws; finish ${first}; turn round in soft jaws for the rest`
  return `Hold ${seat} in bored soft jaws; finish ${first} and the bore in one holding; turn round on an expanding mandrel in the bore for the rest`
}

const stressRelief = (part: Part): readonly TaskSketch[] => [
  {
    purpose: 'stress-relieve',
    name: 'Stress relieve',
    process: 'stress-relieve',
    holding: 'Stand on end on a flat plate, not touching; never on the side',
    locatedBy: [],
    surfaces: [],
    why: [
      `what is left of the rolling, tempering and roughing stress comes out now and not in the ${hardensThrough(part) ? 'quench' : 'nitriding furnace'}`,
    ],
  },
]

/** The layer needs a larger break than a burr does. */
export function chamfered({ plating }: Part, edges: string): readonly string[] {
  const chamfer = plating && chamferOf(plating)
  if (!chamfer) return []
  const { least, most } = chamfer
  return [`chamfers ${edges} ${least === most ? least : `${least} to ${most}`} mm for plating`]
}
