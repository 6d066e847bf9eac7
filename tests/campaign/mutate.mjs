// node tests/campaign/mutate.mjs [--count 100000] [--seed N] [--seconds N] [--from N]
// Damaged part, shop and batch files through the program: it must refuse or plan each, never fall over or hang.
import { watched } from './watched.mjs'

await watched('mutants', { count: 100_000, process: 1000 })
