// Prints every file that goes into the bundles, one a line: what the notices are held against.
import { bundleAll } from './bundles.mjs'

for (const input of await bundleAll({ write: false })) console.log(input)
