import { expectRandomProgramsAsPlanned } from './random-programs.ts'

// Among these a window is ramped into and cleared whole whose wall bows in: a straight way to its entry would cut the wall.
expectRandomProgramsAsPlanned(2)
