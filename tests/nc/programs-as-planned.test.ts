import { readdirSync } from 'node:fs'
import { demo } from '../commands/fake-world.ts'
import { linerText, randomLiners } from '../proof/random-ports.ts'
import { expectProgramsAsPlanned } from './as-planned.ts'

const DEMO = readdirSync('parts').filter(name => name.startsWith('OX-') && demo(name).includes('\nports:'))

// Two hundred random parts are held against their plans by `npm run test:proof`, and in CI.
expectProgramsAsPlanned([
  ...DEMO.map(name => [name, demo(name)] as const),
  ...randomLiners(2, 3).map((ports, i) => [`random liner ${i + 1}`, linerText(ports)] as const),
])
