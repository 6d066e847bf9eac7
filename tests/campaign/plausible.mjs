// node tests/campaign/plausible.mjs [--count 2000] [--seed N] [--seconds N] [--from N] [--paper 0.25]
// Parts that a works could be asked for, through plan and, for a share of them, through the whole packet.
import { watched } from './watched.mjs'

await watched('plausible', { count: 2000, paper: 0.25, process: 200 })
