import { it } from 'vitest'
import { ENDS, expectEndPlanned } from '../campaign/ends.ts'

it.each(ENDS)('a shop whose every %s has a %s of %d mm reads, and plans or says why not', expectEndPlanned)
