import {
  closeSync,
  constants,
  existsSync,
  mkdirSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { hostname } from 'node:os'
import { dirname, join } from 'node:path'
import { FileProblem, type FileToWrite } from './world.ts'

/** No part, shop or template is anywhere near this; a wrong file named by mistake may be. */
const LARGEST_FILE = 16 * 1024 * 1024

const WHY: Readonly<Record<string, string>> = {
  EACCES: 'permission denied',
  EBUSY: 'something else is using it',
  EDQUOT: 'your share of the disk is full',
  EFBIG: 'no larger files are allowed here',
  EEXIST: 'a file of that name is in the way',
  EINVAL: 'the disk does not take such a name',
  EIO: 'the disk does not answer',
  EISDIR: 'that is a folder',
  ELOOP: 'its links lead round in a circle',
  EMFILE: 'too many files are open',
  ENAMETOOLONG: 'the name is too long',
  ENODEV: 'there is no such device',
  ENOENT: 'there is no such file',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'a folder on the way is a file',
  ENXIO: 'there is no such device',
  EPERM: 'permission denied',
  EROFS: 'the disk cannot be written to',
}

/** Whatever the disk answers is a refusal: one line. A fault that is not the disk's goes on to the outer shell. */
export function fileProblem(path: string, doing: string, error: unknown): unknown {
  if (error instanceof FileProblem || !(error instanceof Error) || !('code' in error)) return error
  const code = String(error.code)
  return code.startsWith('ERR_')
    ? error
    : new FileProblem(`${path}: cannot be ${doing}: ${WHY[code] ?? `the system says ${code}`}`)
}

/** Bytes of a regular file. A pipe or a device may never end, and a file may grow while it is read: no more than the largest is. */
export function readBytes(path: string): Uint8Array {
  try {
    const found = statSync(path)
    if (found.isDirectory()) throw new FileProblem(`${path}: cannot be read: that is a folder`)
    if (!found.isFile()) throw new FileProblem(`${path}: cannot be read: that is a pipe or a device, not a file`)
    const file = openSync(path, constants.O_RDONLY | constants.O_NONBLOCK)
    try {
      return readBounded(file, path, found.size)
    } finally {
      closeSync(file)
    }
  } catch (error) {
    throw fileProblem(path, 'read', error)
  }
}

function readBounded(file: number, path: string, expected: number): Uint8Array {
  const tooLarge = () => new FileProblem(`${path}: cannot be read: over ${LARGEST_FILE / 1048576} MB`)
  if (expected > LARGEST_FILE) throw tooLarge()
  let bytes = new Uint8Array(Math.max(expected, 4096) + 1)
  let length = 0
  for (;;) {
    const read = readSync(file, bytes, length, bytes.length - length, null)
    if (read === 0) return bytes.subarray(0, length)
    length += read
    if (length > LARGEST_FILE) throw tooLarge()
    if (length === bytes.length) {
      const larger = new Uint8Array(2 * length)
      larger.set(bytes)
      bytes = larger
    }
  }
}

export function readText(path: string): string {
  const bytes = readBytes(path)
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes)
  } catch {
    throw new FileProblem(`${path}: cannot be read: not UTF-8 text: save it as UTF-8`)
  }
}

/** Files that are being written, under names that nobody takes for finished ones. */
const UNFINISHED = new Set<string>()
/** Short, so that a name that a folder just takes is written too. The machine's name: a folder may be shared. */
const BEGINS = `.linerwright-${hostname()
  .replace(/[^A-Za-z0-9]/g, '')
  .slice(0, 24)}-`

/** All are written beside their names first and then renamed, so that a reader never meets half a file or half a packet. */
export function write(...files: readonly FileToWrite[]): void {
  const begun: { readonly from: string; readonly path: string }[] = []
  try {
    for (const { path, content } of files) attempt(path, () => begun.push({ from: beside(path, content), path }))
    for (const { from, path } of begun) attempt(path, () => renameSync(from, path))
  } finally {
    for (const { from } of begun) discard(from)
  }
}

export function remove(...paths: readonly string[]): void {
  for (const path of paths) {
    try {
      rmSync(path, { force: true })
    } catch (error) {
      throw fileProblem(path, 'removed', error)
    }
  }
}

function attempt(path: string, step: () => void): void {
  try {
    step()
  } catch (error) {
    throw fileProblem(path, 'written', error)
  }
}

/** The content in a file of its own in the same folder. */
function beside(path: string, content: string | Uint8Array): string {
  const folder = dirname(path)
  // Renaming would put a file where a device or a folder was.
  if (existsSync(path) && !statSync(path).isFile()) {
    throw new FileProblem(`${path}: cannot be written: something other than a file is there`)
  }
  mkdirSync(folder, { recursive: true })
  clearAway(folder)
  listenForSignals()
  const unfinished = join(folder, `${BEGINS}${process.pid}-${UNFINISHED.size}`)
  UNFINISHED.add(unfinished)
  try {
    writeFileSync(unfinished, content)
    return unfinished
  } catch (error) {
    discard(unfinished)
    throw error
  }
}

function discard(unfinished: string): void {
  rmSync(unfinished, { force: true })
  UNFINISHED.delete(unfinished)
}

const CLEARED = new Set<string>()

/** What a run that was killed outright has left in a folder: its number is no longer that of a running process. */
function clearAway(folder: string): void {
  if (CLEARED.has(folder)) return
  CLEARED.add(folder)
  for (const name of readdirSync(folder)) {
    const number = name.startsWith(BEGINS) ? Number(name.slice(BEGINS.length).split('-', 1)) : Number.NaN
    if (Number.isInteger(number) && !isRunning(number)) rmSync(join(folder, name), { force: true })
  }
}

function isRunning(number: number): boolean {
  try {
    process.kill(number, 0)
    return true
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM'
  }
}

let listening = false

/** Until the first file is written a signal ends the process at once; from then on what is unfinished goes first. */
function listenForSignals(): void {
  if (listening) return
  listening = true
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
    process.once(signal, () => {
      for (const path of UNFINISHED) rmSync(path, { force: true })
      // With nobody listening any more, the same signal ends the process as it would have.
      process.kill(process.pid, signal)
    })
  }
}
