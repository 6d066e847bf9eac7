import { it } from 'vitest'
import { ENDS, expectEndPlanned } from './ends.ts'

/** One end of every kind of tool, the last: the first, a cutter of 0.2 mm, mills for long. All of them in `npm run test:long`, and in CI. */
const ONE_OF_A_KIND = ENDS.filter(([kind], index) => ENDS.findLastIndex(([other]) => other === kind) === index)

it.each(ONE_OF_A_KIND)('a shop whose every %s has a %s of %d mm reads, and plans or says why not', expectEndPlanned)
