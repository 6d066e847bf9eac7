import type { Part } from '../part/part.ts'
import { comesHard } from '../part/takes-case.ts'
import { HARDENED_BY, type HardeningProcess, type HardeningPurpose } from '../process.ts'
import type { Shop } from '../shop/shop.ts'
import { axialLocator } from './axial-locator.ts'
import { crackTest } from './crack-test.ts'
import { isCentreless } from './house-or-outside.ts'
import type { FinishingNeeds } from './needs.ts'
import { platingTasks } from './plating-tasks.ts'
import type { TaskSketch } from './soft-tasks.ts'

/** What the shop calls the operation that does what the drawing calls for. */
const NAMES: Readonly<Record<HardeningProcess, string>> = {
  'gas nitriding': 'Nitride',
  'plasma nitriding': 'Nitride',
  'salt-bath nitriding': 'Nitride',
  nitrocarburising: 'Nitrocarburise',
  carburising: 'Carburise and harden',
  'induction hardening': 'Induction harden',
  'through hardening': 'Harden and temper',
}

export const hardeningPurpose = (process: HardeningProcess): HardeningPurpose => HARDENED_BY[process]

/** Hardening. */
export function hardeningTasks(part: Part): readonly TaskSketch[] {
  if (!part.hardening) return []
  const { process } = part.hardening
  const [purpose, name] = [HARDENED_BY[process], NAMES[process]]
  const { outside: around, bore } = part
  const surfaces = [
    ...around.map(({ name }) => name).filter(name => comesHard(part, 'outside', name)),
    ...bore.map(({ name }) => name).filter(name => comesHard(part, 'bore', name)),
    ...['top', 'bottom'].filter(name => comesHard(part, 'face', name)),
  ]
  return [
    {
      purpose,
      name,
      process: purpose,
      holding: `Stand on end on a flat plate or hang; never on the side${part.ports.length > 0 ? ', nothing on a port edge' : ''}, equal gaps between parts`,
      locatedBy: [],
      surfaces,
      why: [`the drawing asks for ${part.hardening.process}`],
    },
  ]
}

/** Grinding and honing, outside first. */
export function finishingTasks(part: Part, shop: Shop, needs: FinishingNeeds): readonly TaskSketch[] {
  const outside = needs.outside.map(({ band }) => band.name)
  const bore = needs.boreGround.map(({ band }) => band.name)
  const honed = needs.boreHoned.map(({ band }) => band.name)
  const allBores = part.bore.map(({ name }) => name)
  const seat = outside.at(-1) ?? part.outside.at(-1)?.name ?? 'outside'
  const setTrue = shop.habits.chuckRunout
  const axial = axialLocator(part)
  const against = axial.face === 'bottom' ? 'the bottom face' : `the underside of ${axial.band}`
  const faced = needs.top.length > 0
  return [
    ...(outside.length > 0
      ? [
          {
            purpose: 'grind-outside',
            name: 'Grind outside',
            process: 'grind',
            on: goesThrough(part, shop) ? 'through' : 'outside',
            ...outsideHolding(part, shop),
            surfaces: outside,
            why: [
              ...told(needs.outside),
              ...(bore.length + honed.length > 0
                ? [
                    'outside first, on a mandrel in the bore as turned, then the bore from the ground outside: a mandrel in the finished bore would mark it',
                  ]
                : []),
            ],
          } as const,
        ]
      : []),
    ...(bore.length > 0
      ? [
          {
            purpose: 'grind-bore',
            name: faced ? 'Grind bore and top face' : 'Grind bore',
            process: 'grind',
            on: 'bore',
            holding: `Chuck on the ${outside.length > 0 ? 'ground' : 'turned'} ${seat}${faced ? `, against ${against}` : ''}; light even pressure, the wall is thin`,
            setTrue,
            locatedBy: [seat, ...(faced ? [axial.face === 'bottom' ? 'bottom' : axial.band] : [])],
            locatedAs: outside.length > 0 ? 'ground' : 'turned',
            surfaces: [...bore, ...(faced ? ['top', 'length'] : [])],
            heldIn: 'jaws',
            ...(faced ? { gripsAt: 'bottom' as const, axialLocator: axial } : {}),
            why: [
              ...told(needs.boreGround),
              ...(faced ? [`top face in the same chucking, square to the bore: ${needs.top.join('; ')}`] : []),
            ],
          } as const,
        ]
      : []),
    ...(faced && bore.length === 0
      ? [
          {
            purpose: 'grind-top',
            name: 'Grind top face',
            process: 'grind',
            on: 'bore',
            holding: `Chuck on ${seat}, against ${against}`,
            setTrue,
            locatedBy: [seat, axial.face === 'bottom' ? 'bottom' : axial.band],
            locatedAs: outside.length > 0 ? 'ground' : 'turned',
            surfaces: ['top', 'length'],
            heldIn: 'jaws',
            gripsAt: 'bottom',
            axialLocator: axial,
            why: [`top face: ${needs.top.join('; ')}`],
          } as const,
        ]
      : []),
    ...(part.plating ? crackTest(part, outside.length + bore.length > 0 || faced) : []),
    ...platingTasks(
      part,
      bore.some(name => name === part.plating?.surface),
    ),
    ...(honed.length > 0
      ? [
          {
            purpose: 'hone-bore',
            name: 'Hone bore',
            process: 'hone',
            holding: 'Stand in the floating honing fixture, clamped on the end faces only, never round the wall',
            locatedBy: honed,
            locatedAs: bore.length > 0 || part.plating ? 'ground' : 'turned',
            surfaces: honed,
            why: told(needs.boreHoned),
          } as const,
        ]
      : []),
    ...(needs.lapped.length > 0
      ? [
          {
            purpose: 'lap-outside',
            name: 'Lap outside',
            process: 'lap',
            holding: `Hold ${allBores.length > 0 ? 'on an expanding arbor in the bore' : 'between its own centres'}, turning slowly; float the ring lap end to end by hand and turn the part round half way`,
            locatedBy: allBores,
            surfaces: needs.lapped.map(({ band }) => band.name),
            why: told(needs.lapped),
          } as const,
        ]
      : []),
    ...(part.plating ? [] : crackTest(part, outside.length + bore.length > 0 || faced)),
    ...(part.ports.length > 0 && bore.length + honed.length + outside.length > 0
      ? [
          {
            purpose: 'deburr-ports',
            name: 'Deburr ports again, wash',
            process: 'deburr',
            holding: 'Hold by hand in a padded cradle; work from the bore outward, then wash',
            locatedBy: [],
            surfaces: part.ports.map(({ name }) => name),
            why: [
              part.kind === 'liner'
                ? 'the edges that the rings cross must be rounded as they run'
                : 'the edges must be rounded for what slides over them',
            ],
          } as const,
        ]
      : []),
    {
      purpose: 'final-inspection',
      name: 'Final inspection',
      process: 'inspect',
      holding: 'Lay out on the inspection bench, clean, at 20 °C',
      locatedBy: [],
      surfaces: [
        ...part.outside.map(({ name }) => name),
        ...allBores,
        'top',
        'bottom',
        'length',
        ...part.ports.map(({ name }) => name),
      ],
      why: ['every size of the drawing, and the record that goes with the parts'],
    },
  ]
}

/** A plain cylinder goes between the wheels of a centreless grinder, where the works has one. */
const goesThrough = ({ kind, outside, ports }: Part, { machines }: Shop): boolean =>
  kind === 'pin' &&
  outside.length === 1 &&
  ports.length === 0 &&
  machines.some(machine => machine.processes.includes('grind') && isCentreless(machine))

/** A pin runs on its own outside or between its own centres; what has a bore is held in it as turned. */
function outsideHolding(
  part: Part,
  shop: Shop,
): Pick<TaskSketch, 'holding' | 'setTrue' | 'locatedBy' | 'locatedAs' | 'heldIn'> {
  const { kind, bore, hardening, outside } = part
  const { habits } = shop
  if (goesThrough(part, shop)) {
    return {
      holding:
        'Lay on the work blade between the wheels and feed through end to end, guides in line, the pins close behind each other',
      locatedBy: outside.map(({ name }) => name),
      locatedAs: 'turned',
      heldIn: 'work blade',
    }
  }
  const setTrue = habits.mandrelRunout
  if (kind === 'pin' || bore.length === 0) {
    return {
      holding: `Hold between ${bore.length > 0 ? 'centres in the chamfers of the bore' : 'its own centres'}, cleaned of scale`,
      setTrue,
      locatedBy: [],
      locatedAs: 'turned',
      heldIn: 'centres',
    }
  }
  return {
    holding: `Hold on an expanding mandrel in the ${hardening ? 'turned and hardened' : 'bored'} bore`,
    setTrue,
    locatedBy: bore.map(({ name }) => name),
    locatedAs: 'turned',
    heldIn: 'mandrel',
  }
}

/** `seat: …`; a single surface is not named again. */
const told = (
  needs: readonly { readonly band: { readonly name: string }; readonly why: readonly string[] }[],
): readonly string[] => needs.map(({ band, why }) => `${band.name}: ${why.join('; ')}`)
