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

const PARTY = {
  name: 'Brackwater Grinding',
  address: 'Lock Street 12',
  telephone: '01632 960 518',
  email: 'work@brackwater-grinding.example',
  person: 'J. Pell',
}

export const EVERY_ORDER: EveryField<OutsideOrder> = {
  number: 1,
  reference: 'OX-098-21/2631/3',
  title: 'Grind bore, hone bore',
  firm: 'Brackwater Grinding',
  from: PARTY,
  to: PARTY,
  part: { number: 'OX-098-21', title: 'Cylinder liner', revision: 'B' },
  batch: '2631',
  grade: '42CrMo4',
  heat: '7745A',
  which: [{ from: 1, to: 15, marks: ['C'], what: 'pieces' }],
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
  counts: 'working days',
  price: { currency: 'crowns', amount: 240, because: ['for the lot 45'] },
  sent: '2026-12-08',
  due: '2026-12-18',
}
