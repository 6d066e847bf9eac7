import { expect, it } from 'vitest'
import { expectProved } from './compare.ts'
import { provePorts } from './prove-ports.ts'
import { randomLiners } from './random-ports.ts'

// A hundred ports here and a hundred the other way round in CI; an eighth of them at the desk, since all cost a minute or two.
const COUNT = process.env['CI'] ? 25 : 3
const LINERS = randomLiners(COUNT, 2)

it('draws four legal ports a liner', () => {
  expect(LINERS.flat().length).toBe(4 * COUNT)
})

it.each(LINERS.map((liner, i) => [i + 1, liner] as const))(
  'random liner %d has its windows as drawn',
  (_, liner) => {
    const found = provePorts(liner, { headFaces: '-X', positiveRotary: 'Z to Y' }, 0.2, 'kept')
    if (!found) throw new Error('the ports cannot be cut')
    expectProved(found.proof, found.ports, 24)
  },
  60_000,
)
