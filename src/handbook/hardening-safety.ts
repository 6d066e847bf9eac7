/**
 * The usual cautions on papers that leave the works. They state requirements and hazards, never a furnace recipe: the
 * licensed treater's own rules and the law of the place come first.
 */
const TREATER_DECIDES =
  'This order states requirements, not furnace settings: the licensed heat treater confirms them and chooses the cycle. Local law and the treater’s own rules come first.'

const AMMONIA =
  'Ammonia: corrosive, immediately dangerous at 300 ppm, limit 50 ppm over 8 h (OSHA) and 25 ppm (NIOSH), flammable at 15 to 28 % in air (ANSI K61.1 extract and ammonia safety texts). Cracked ammonia is rich in hydrogen: purge and light by the furnace code of the country.'
const SALT =
  'Salt bath: cyanate and cyanide salts; a wet part or trapped moisture explodes; never mix with nitrate or organic matter; the waste is regulated (memory). Send parts dry, with blind holes open.'
const HOT = 'Hot parts, and parts with trapped oil, burn: cool and drain before handling (common practice).'
/** Beside what an operation's own cautions say. */
export const GRINDING_MIST =
  'Grinding mist, ultraviolet lamps and solvents of crack testing: guard, extract and protect eyes and skin as local rules say (common practice).'

export function hardeningSafety(process: string): readonly string[] {
  switch (process) {
    case 'gas nitriding':
    case 'plasma nitriding':
    case 'nitrocarburising':
      return [TREATER_DECIDES, AMMONIA, HOT]
    case 'salt-bath nitriding':
      return [TREATER_DECIDES, SALT, HOT]
    default:
      return [TREATER_DECIDES, HOT]
  }
}

/** Quench and temper. */
export const QUENCH_SAFETY: readonly string[] = [
  TREATER_DECIDES,
  'Quench oil burns and a wet part in it, or in a salt bath, throws out what is hot: parts dry, bath covered, as the treater’s rules say (common practice).',
  'A part that waits untempered may crack, and a crack may fly: temper at once after the quench (common practice).',
  HOT,
]

/** Stress relief in a furnace. */
export const RELIEF_SAFETY: readonly string[] = [TREATER_DECIDES, HOT]

const PLATER_DECIDES =
  'This order states requirements, not bath settings: the licensed plater confirms them and chooses bath and cycle. Local law and the plater’s own rules come first.'
const BATHS: Readonly<Record<string, string>> = {
  'hard chrome':
    'Chromic acid is hexavalent chromium: poison, corrosive, a cause of cancer. Licensed platers only; never a bath in the works (memory).',
  'nickel silicon carbide':
    'Nickel salts poison, make the skin allergic and may cause cancer. Licensed platers only; never a bath in the works (memory).',
}
const HYDROGEN =
  'Hydrogen: an embrittled part can break later under a steady load. Keep the record of the bake with the parts (common practice).'
/** Of honing a plated bore. */
export const PLATED_DUST =
  'Dust of the layer holds chromium or nickel: hone wet, never dry; wash before eating (common practice).'
const EDGES = 'A plated port edge is sharp and may flake: gloves, eyes covered.'

/** Beside an order to a plater. */
export const platingSafety = (process: string, baked: boolean, ported: boolean): readonly string[] => [
  PLATER_DECIDES,
  ...(BATHS[process] === undefined ? [] : [BATHS[process]]),
  ...(baked ? [HYDROGEN] : []),
  ...(ported ? [EDGES] : []),
]
