import { describe, it } from 'vitest'
import type { Asked } from '../liner.ts'
import { expectProved } from './compare.ts'
import { provePorts } from './prove-ports.ts'

const DEMO: readonly Asked[] = [
  { name: 'exhaust', at: 0, top: 38.3, height: 16.1, width: 27, corner: { on: 'bore', radius: 3 }, bridge: 2.6 },
  { name: 'main', at: 78, top: 44, height: 10.4, width: 17, corner: { on: 'bore', radius: 2.6 }, up: 15, back: 32 },
  { name: 'other', at: -78, top: 44, height: 10.4, width: 17, corner: { on: 'bore', radius: 2.6 }, up: 15, back: 32 },
  { name: 'boost', at: 180, top: 44.7, height: 9.7, width: 12, corner: { on: 'cutter', radius: 1.5 }, up: 50 },
]

describe('the programs, run on a solid blank and bored to size', () => {
  it.each(DEMO.map(port => [port.name, port] as const))('leave the %s as drawn', (_, port) => {
    const proved = provePorts([port])
    if (!proved) throw new Error('the port cannot be cut')
    expectProved(proved.proof, proved.ports, 24)
  })
})
