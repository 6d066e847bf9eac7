import { nodeWorld } from './commands/node-world.ts'
import { complain, wantsTrace } from './commands/outer-shell.ts'
import { run } from './commands/program.ts'
import { FileProblem } from './commands/world.ts'

const argv = process.argv.slice(2)
const worst = (status: number): void => {
  process.exitCode = Math.max(Number(process.exitCode ?? 0), status)
}
const plainWorld = { err: (text: string) => void process.stderr.write(text), runsOn: `Node ${process.versions.node}` }

/** A reader that has seen enough (`| head`) closes the pipe: the files are written all the same, and it is nobody's fault. */
const heard = (stream: NodeJS.WriteStream, name: string): void => {
  let broken = false
  stream.on('error', error => {
    if (broken || ('code' in error && error.code === 'EPIPE')) return
    broken = true
    const code = 'code' in error && error.code === 'ENOSPC' ? 'the disk is full' : error.message
    worst(complain(new FileProblem(`${name} cannot be written: ${code}`), plainWorld, false))
  })
}
heard(process.stdout, 'standard output')
heard(process.stderr, 'standard error')

const fault = (error: unknown): void => {
  worst(complain(error, plainWorld, wantsTrace(argv)))
  process.exit()
}
process.on('uncaughtException', fault).on('unhandledRejection', fault)
/** When the command line has been carried out. */
export const ended: Promise<void> = run(argv, nodeWorld()).then(worst)
