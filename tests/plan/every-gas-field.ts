import type { GasExchange } from '../../src/ports/gas-exchange.ts'
import type { EveryField } from './every-field-of.ts'

/** What the ports do together, with a figure for every key. */
export const EVERY_GAS_FIELD: EveryField<GasExchange> = {
  sweptVolume: 97_700,
  bottomDeadCentre: 180,
  trappedVolume: 60_000,
  headVolume: 10_000,
  trappedRatio: 7,
  geometricRatio: 10.8,
  meanPistonSpeed: 7.6,
  blowdown: { angle: 15, from: 106, to: 121, time: 0.6, angleArea: 700, specificTimeArea: 0.3 },
  areas: [
    {
      role: 'exhaust',
      angleArea: 9000,
      specificTimeArea: 3,
      meanAreaTimeArea: 3.4,
      uncovered: [{ angle: 106, area: 0 }],
    },
  ],
  together: [{ roles: ['transfer', 'boost'], angleArea: 9000, specificTimeArea: 3, meanAreaTimeArea: 3.4 }],
  streams: [{ port: 'boost', behind: 10, fraction: 0.7, exit: 180 }],
  references: [{ what: 'mean piston speed', value: 7.6, unit: 'm/s', from: 5, to: 10, source: 'memory' }],
}
