import { proveRandomLiners } from './random-liners.ts'

proveRandomLiners({ seed: 2, headFaces: '-X', positiveRotary: 'Z to Y' })
