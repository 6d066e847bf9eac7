import { endInRotary } from '../chucking.ts'
import { type Feature, isTurned } from '../feature.ts'
import { cautionsFor } from '../handbook/residual-hazards.ts'
import type { Part } from '../part/part.ts'
import { hardensThrough } from '../part/takes-case.ts'
import type { Process } from '../process.ts'
import type { Shop } from '../shop/shop.ts'
import { drilledBore } from './drilled-bore.ts'
import type { FinishingNeeds } from './needs.ts'
import type { Purpose } from './operation.ts'
import { chamferOf } from './plating-needs.ts'
import type { Task } from './rules/route-rule.ts'

export type TaskSketch = Omit<Task, 'place' | 'workCentre' | 'cautions' | 'name'> & {
  readonly name: string
  /** Which kind of grinder, where the process alone does not say. */
  readonly on?: 'outside' | 'through' | 'bore'
  /** Done where this other process is done, whoever else could. */
  readonly at?: Process
}

export const cautions = (process: Process): readonly string[] => cautionsFor(process)

const bands = (part: Part): readonly string[] => [...part.outside, ...part.bore].map(({ name }) => name)

/** The band with room for a number that no wheel takes off again: the top one that is left as turned, else the bottom face. */
function markedSurface(part: Part, needs: FinishingNeeds): string {
  const ground = new Set(needs.outside.map(({ band }) => band))
  return part.outside.find(band => !ground.has(band))?.name ?? 'bottom'
}

/** From the bar to the part as it is before hardening, or before grinding when it stays soft. */
export function softTasks(
  part: Part,
  { fixture: { headFaces } }: Pick<Shop, 'fixture'>,
  needs: FinishingNeeds,
  stressRelieved: boolean,
): readonly TaskSketch[] {
  const seat = part.outside.at(-1)?.name ?? 'outside'
  const first = part.outside[0]?.name ?? 'outside'
  const marked = markedSurface(part, needs)
  return [
    {
      purpose: 'saw-blanks',
      name: 'Saw blanks',
      process: 'saw',
      holding: 'Clamp the bar in the vice and feed it to the stop; keep the heat number on the remnant',
      locatedBy: [],
      surfaces: ['length'],
      why: ['one blank a piece, with stock to face at both ends'],
    },
    {
      purpose: 'rough-turn',
      name: 'Rough turn',
      process: 'turn',
      holding: roughHolding(part),
      locatedBy: [],
      surfaces: [...bands(part), 'top', 'bottom', 'length'],
      why: ['takes the bulk off while the part may still move'],
    },
    ...(stressRelieved ? stressRelief(part) : []),
    {
      purpose: 'finish-turn',
      name: 'Finish turn',
      process: 'turn',
      holding: finishHolding(part, seat, first),
      locatedBy: [seat],
      heldIn: 'jaws',
      gripsAt: 'bottom',
      surfaces: [
        ...bands(part).filter(name => name !== drilledBore(part)?.name),
        'top',
        'bottom',
        'length',
        ...part.features.filter(isTurned).map(({ name }) => name),
      ],
      why: [
        part.bore.length === 0 || drilledBore(part)
          ? 'gives every surface its last soft size'
          : 'gives every surface its last soft size: bore and outside run true to each other from here',
        ...chamfered(part, `both ends of ${part.plating?.surface}`),
      ],
    },
    {
      purpose: 'mark',
      name: 'Mark',
      process: 'mark',
      holding: `Stand the part in the V-block with ${marked} to the marking head`,
      locatedBy: [],
      surfaces: [marked],
      why: [`serial and batch number go on ${marked}, which is not ground later`],
    },
    ...(part.ports.length > 0 ? millPorts(part, endInRotary(headFaces)) : millFeatures(part)),
    {
      purpose: 'deburr-soft',
      name: 'Deburr',
      process: 'deburr',
      holding:
        part.ports.length > 0
          ? 'Hold by hand in a padded cradle; brush the ports from the bore outward'
          : 'Hold by hand in a padded cradle',
      locatedBy: [],
      surfaces: [...part.ports.map(({ name }) => name), 'top', 'bottom'],
      why: [
        'breaks every edge while a scraper still cuts it',
        ...(part.ports.length > 0 ? chamfered(part, 'every port edge on the bore') : []),
      ],
    },
  ]
}

/** The layer needs a larger break than a burr does. */
function chamfered({ plating }: Part, edges: string): readonly string[] {
  const chamfer = plating && chamferOf(plating)
  if (!chamfer) return []
  const { least, most } = chamfer
  return [`chamfers ${edges} ${least === most ? least : `${least} to ${most}`} mm for plating`]
}

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

function finishHolding(part: Part, seat: string, first: string): string {
  const { kind, bore } = part
  if (kind === 'pin') {
    const centres = bore.length > 0 ? '60° chamfers of the bore' : 'centre holes'
    const bored = bore.length > 0 && !drilledBore(part) ? 'bore, ' : ''
    return `Hold ${seat} in bored soft jaws; ${bored}face to length and renew the ${centres}; then between centres in them, driven by the end face, turn ${seat} end to end`
  }
  if (bore.length === 0) return `Hold ${seat} in bored soft jaws; finish ${first}; turn round in soft jaws for the rest`
  return `Hold ${seat} in bored soft jaws; finish ${first} and the bore in one holding; turn round on an expanding mandrel in the bore for the rest`
}

const stressRelief = (part: Part): readonly TaskSketch[] => [
  check('check-blanks-before-sending', 'Check blanks before sending', 'count, heat number, length', ['stress-relieve']),
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
  check('check-blanks-on-return', 'Check blanks on return', 'count, hardness of the core', ['stress-relieve']),
]

/** Held as the fixture stands: the lower end with the top face outward, or the head end with that face against the jaws. */
function millPorts(part: Part, held: 'top' | 'bottom'): readonly TaskSketch[] {
  const { outside, ports } = part
  const band = (held === 'bottom' ? outside.at(-1) : outside[0])?.name ?? 'outside'
  return [
    {
      purpose: 'mill-ports',
      name: 'Mill ports',
      process: 'mill',
      holding:
        held === 'bottom'
          ? `Grip the lower end of ${band} in the rotary's bored soft jaws, top face outward; pick up the top face and the fixture's azimuth 0`
          : `Grip ${band} in the rotary's bored soft jaws, top face against the shoulder in them, lower end outward; pick up that shoulder with the jaws empty, and the fixture's azimuth 0`,
      locatedBy: ['top', band],
      heldIn: 'jaws',
      gripsAt: held,
      locatedAs: 'turned',
      surfaces: [...ports, ...milledFeatures(part)].map(({ name }) => name),
      why: ['sizes as cut are those that give the windows of the drawing in the finished bore'],
    },
  ]
}

const milledFeatures = ({ features }: Part): readonly Feature[] => features.filter(feature => !isTurned(feature))

/** Holes and cut-outs of a part without ports, which are else made in the clamping of the ports. */
function millFeatures(part: Part): readonly TaskSketch[] {
  const features = milledFeatures(part)
  const [first] = part.outside
  const band = part.outside.at(-1)?.name ?? 'outside'
  if (features.length === 0 || !first) return []
  const cutOuts = features.some(({ kind }) => kind === 'cut-out')
  const held = cutOuts ? first.name : band
  return [
    {
      purpose: 'mill-features',
      name: cutOuts ? 'Mill and drill' : 'Drill holes',
      process: cutOuts ? 'mill' : 'drill',
      holding: cutOuts
        ? `Grip ${held} in the rotary's bored soft jaws, lower end outward; touch the end, and take azimuth 0 from the mark`
        : `Grip ${held} in the indexing head's bored soft jaws, top face outward; touch the end, and take azimuth 0 from the mark`,
      locatedBy: [held],
      surfaces: features.map(({ name }) => name),
      why: ['drilled and milled soft, before the edges are broken'],
    },
  ]
}

/** A check of what goes out or comes back; `what` is said in its reason. */
export const check = (purpose: Purpose, name: string, what: string, guards: readonly Purpose[]): TaskSketch => ({
  purpose,
  name,
  process: 'inspect',
  holding: 'Lay out on the inspection bench, clean and at room temperature',
  locatedBy: [],
  surfaces: [],
  guards,
  why: [`checks ${what}`],
})
