import { FINISHING_PROCESSES, HARDENING_PROCESSES } from '../../process.ts'
import type { RouteRule, Task } from './route-rule.ts'

const COMMON_PRACTICE = 'common practice, no source'
/** On a plated bore only the last honing comes after the plating. */
const finishedBefore = ({ process, purpose }: Task): boolean =>
  FINISHING_PROCESSES.has(process) && purpose !== 'hone-bore'

/** Order round a plated bore. */
export const PLATING_RULES: readonly RouteRule[] = [
  {
    name: 'form-before-plating',
    because: 'plating copies what it finds: the bore needs its final roundness and straightness before',
    otherwise: 'the layer shows every lobe of the bore below, and honing it round goes through it',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'hone-for-plating' && then.purpose === 'plate',
  },
  {
    name: 'finished-elsewhere-before-plating',
    because: 'no mandrel, jaw or wheel goes near a plated bore: all but its honing is finished before',
    otherwise: 'the layer is chipped or ground through while something else is finished',
    source: COMMON_PRACTICE,
    applies: (first, then) => finishedBefore(first) && first.purpose !== 'hone-for-plating' && then.purpose === 'plate',
  },
  {
    name: 'chamfered-before-plating',
    because: 'the layer builds up on a sharp edge, and flakes there: port edges and bore ends are chamfered before',
    otherwise: 'the layer grows to a bead at the edge, which breaks off and runs with the rings',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      (first.purpose === 'deburr-soft' || first.purpose === 'finish-turn' || first.purpose === 'turn') &&
      then.purpose === 'plate',
  },
  {
    name: 'hardened-before-plating',
    because: 'the heat of hardening would spoil the layer, and no furnace takes a plated part',
    otherwise: 'the layer softens, cracks and lifts in the furnace',
    source: COMMON_PRACTICE,
    applies: (first, then) => HARDENING_PROCESSES.has(first.process) && then.purpose === 'plate',
  },
  {
    name: 'worked-before-relief',
    because: 'the relief takes out the stress that grinding and honing put in',
    otherwise: 'the stress of grinding is still in the steel when it meets the hydrogen',
    source: 'scope of ASTM B849, aligned with ISO 9587',
    applies: (first, then) => finishedBefore(first) && then.purpose === 'relieve-for-plating',
  },
  {
    name: 'relieved-before-plating',
    because: 'hydrogen from the bath cracks strong steel where stress is left in it',
    otherwise: 'strong steel takes up hydrogen in the bath and cracks, at once or days after',
    source: 'scope of ASTM B849, aligned with ISO 9587',
    applies: (first, then) => first.purpose === 'relieve-for-plating' && then.purpose === 'plate',
  },
  {
    name: 'baked-after-plating',
    because: 'the hydrogen is driven out again before it does harm: the bake begins within hours of the bath',
    otherwise: 'the hydrogen stays in: the part can crack on the shelf',
    source: 'ASTM B850',
    applies: (first, then) => first.purpose === 'plate' && then.purpose === 'bake-after-plating',
  },
  {
    name: 'baked-before-honing',
    because: 'honing stress in steel that still holds hydrogen cracks it, and the bake moves what is not relieved',
    otherwise: 'honing adds its stress to steel that holds hydrogen, and the bake then moves a finished bore',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'bake-after-plating' && then.purpose === 'hone-bore',
  },
  {
    name: 'honed-after-plating',
    because: 'the layer comes over size and rough: the hone brings it to size',
    otherwise: 'the bore stays over size and rough as the bath leaves it',
    source: COMMON_PRACTICE,
    applies: (first, then) => first.purpose === 'plate' && then.purpose === 'hone-bore',
  },
  {
    name: 'crack-tested-before-plating',
    because: 'a crack under the layer is not seen any more, and the layer lifts there',
    otherwise: 'the crack is buried under the layer, which lifts there in the engine',
    source: COMMON_PRACTICE,
    applies: (first, then) =>
      first.purpose === 'crack-test' && (then.purpose === 'plate' || then.purpose === 'relieve-for-plating'),
  },
]
