#!/usr/bin/env node
// Starts the command. Its script is run from code that was compiled when the package was built, where this Node takes it;
// otherwise it is compiled here.
const { existsSync, readFileSync } = require('node:fs')
const { join } = require('node:path')
const { Script } = require('node:vm')

const filename = join(__dirname, 'command.cjs')
const compiled = join(__dirname, 'command.compiled')

/** As Node wraps a script of its own. */
const script = new Script(
  `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, 'latin1')}\n})`,
  { filename, ...(existsSync(compiled) && { cachedData: readFileSync(compiled) }) },
)
const run = () => {
  const command = { exports: {} }
  script.runInThisContext()(command.exports, require, command, filename, __dirname)
  return command.exports
}
module.exports = { script, run, ended: run().ended }
