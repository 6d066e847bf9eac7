import { endInRotary } from '../chucking.ts'
import type { Feature } from '../feature.ts'
import { cautionsFor } from '../handbook/residual-hazards.ts'
import type { Part } from '../part/part.ts'
import type { Process } from '../process.ts'
import type { Shop } from '../shop/shop.ts'
import type { FinishingNeeds } from './needs.ts'
import { pistonTasks } from './piston-tasks.ts'
import type { Task } from './rules/route-rule.ts'
import { chamfered, roughAndRelieved, roughedAndFinished, roughedAround } from './turning-tasks.ts'

export type TaskSketch = Omit<Task, 'place' | 'workCentre' | 'cautions' | 'name'> & {
  readonly name: string
  /** Which kind of grinder, where the process alone does not say. */
  readonly on?: 'outside' | 'through' | 'bore'
  /** Done where this other process is done, whoever else could. */
  readonly at?: Process
}

export const cautions = (process: Process): readonly string[] => cautionsFor(process)

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
  const marked = markedSurface(part, needs)
  const piston = pistonTasks(part)
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
    ...(stressRelieved
      ? roughAndRelieved(part)
      : piston.length > 0
        ? roughedAround(part, piston)
        : roughedAndFinished(part)),
    ...(part.ports.length > 0 ? millPorts(part, endInRotary(headFaces)) : millFeatures(part)),
    {
      purpose: 'deburr-soft',
      name: 'Mark, deburr, wash',
      process: 'deburr',
      holding: `Stand the part in the V-block with ${marked} to the marking head; then hold it by hand in a padded cradle${part.ports.length > 0 ? ' and brush the ports from the bore outward' : ''}`,
      locatedBy: [],
      surfaces: [...part.ports.map(({ name }) => name), 'top', 'bottom'],
      marks: marked,
      why: [
        'breaks every edge while a scraper still cuts it',
        `serial and batch number go on ${marked}, which is not ground later`,
        ...(part.ports.length > 0 ? chamfered(part, 'every port edge on the bore') : []),
      ],
    },
  ]
}

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

const milledFeatures = ({ features }: Part): readonly Feature[] =>
  features.filter(({ kind }) => kind === 'hole' || kind === 'cut-out')

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
        ? `Grip ${held} in the rotary's bored soft jaws, lower end outward; touch the end, and scribe azimuth 0 where it is set`
        : `Grip ${held} in the indexing head's bored soft jaws, top face outward; touch the end, and scribe azimuth 0 where it is set`,
      locatedBy: [held],
      surfaces: features.map(({ name }) => name),
      why: ['drilled and milled soft, before the edges are broken'],
    },
  ]
}
