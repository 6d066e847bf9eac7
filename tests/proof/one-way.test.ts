import { proveRandomLiners } from './random-liners.ts'

proveRandomLiners({ seed: 1, headFaces: '+X', positiveRotary: 'Y to Z' })
