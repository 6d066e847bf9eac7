import type { OutsideOrder } from '../../src/orders/order.ts'
import type { EveryField } from './every-field-of.ts'

const QUANTITY = {
  label: 'bore Ø',
  state: 'finished',
  standing: 'asked',
  value: 48.01,
  least: 48,
  most: 48.016,
  plus: 0.016,
  unit: 'mm',
  places: 3,
  written: 'hole',
} as const

export const EVERY_ORDER: EveryField<OutsideOrder> = {
  number: 1,
  title: 'Grind bore, hone bore',
  firm: 'Brackwater Grinding',
  operations: [150, 160],
  pieces: 16,
  mass: { each: 0.5, all: 8 },
  arrives: [{ ...QUANTITY, operation: 110, after: 'Nitride' }],
  finish: [
    {
      ...QUANTITY,
      operation: 150,
      limits: { least: 48, most: 48.016 },
      onTheWay: false,
      characteristic: 54,
      gauge: 'air plug',
      pieces: 16,
    },
  ],
  points: [{ number: 1, title: 'Eccentricity', text: ['Stop and ring over {0}.'], quantities: [QUANTITY] }],
  returns: [{ ...QUANTITY, number: 1, of: 'piece', readings: 16, characteristic: 54, gauge: 'air plug' }],
  cautions: ['guard'],
  leadTime: 8,
  due: '2026-12-18',
}
