// Carries out the short commands on the demo part and keeps the code that was compiled on the way: where this Node finds it,
// a start compiles nothing. Another Node than this one refuses it and compiles for itself.
const { writeFileSync } = require('node:fs')
const { join } = require('node:path')

const DIST = join(__dirname, '../dist')
const PART = join(__dirname, '../parts/OX-098-21.yaml')

async function compileAhead() {
  process.argv = [process.execPath, DIST, 'stock', PART]
  const { script, run, ended } = require(join(DIST, 'main.cjs'))
  await ended
  for (const command of COMMANDS) {
    process.argv = [process.execPath, DIST, ...command]
    await run().ended
  }
  writeFileSync(join(DIST, 'command.compiled'), script.createCachedData())
}

const COMMANDS = [
  ['check', PART],
  ['route', PART],
  ['ports', PART],
  ['plan', PART, '--json'],
]

compileAhead()
