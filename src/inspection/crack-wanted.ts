import { CRACK_TESTING } from '../handbook/crack-testing.ts'
import { toReadOff, type Wanted, type Where } from './wanted.ts'

/** Of every piece, by whoever is qualified: its report is read, not the part looked at with a lens. */
export const crackTested = (where: Where): readonly Wanted[] => [
  toReadOff(
    'crack-test report',
    0,
    {
      name: 'no line by fluorescent magnetic particles, after grinding',
      unit: '-',
      feature: 'all surfaces',
      remark: 'every piece by its number, in two directions; signed by a qualified person',
    },
    where,
  ),
  toReadOff(
    'crack-test report',
    1,
    {
      name: 'field left at the ends, after demagnetising',
      unit: 'A/cm',
      upper: CRACK_TESTING.residual,
      feature: 'all surfaces',
    },
    where,
  ),
]
