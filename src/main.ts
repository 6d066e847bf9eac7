#!/usr/bin/env node
import { nodeWorld } from './commands/node-world.ts'
import { run } from './commands/program.ts'

process.stdout.on('error', error => {
  // A reader that has seen enough (`| head`) closes the pipe: that is no fault of the command.
  if ('code' in error && error.code === 'EPIPE') process.exit(0)
  throw error
})
process.exitCode = await run(process.argv.slice(2), nodeWorld())
