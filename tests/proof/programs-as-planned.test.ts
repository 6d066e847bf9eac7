import { expectProgramsAsPlanned } from '../nc/as-planned.ts'
import { linerText, randomLiners } from './random-ports.ts'

expectProgramsAsPlanned(randomLiners(200, 4).map((ports, i) => [`random liner ${i + 1}`, linerText(ports)] as const))
