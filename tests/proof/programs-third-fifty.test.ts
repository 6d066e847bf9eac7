import { expectRandomProgramsAsPlanned } from './random-programs.ts'

expectRandomProgramsAsPlanned(6)
