import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { FileProblem, type World } from './world.ts'

/** No part, shop or template is anywhere near this; a wrong file named by mistake may be. */
const LARGEST_FILE = 16 * 1024 * 1024

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'permission denied',
  EISDIR: 'that is a folder',
  ENOTDIR: 'a folder on the way is a file',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk cannot be written to',
}

function fileProblem(path: string, doing: string, error: unknown): FileProblem {
  const code = error instanceof Error && 'code' in error ? String(error.code) : ''
  return new FileProblem(`${path}: cannot be ${doing}: ${WHY[code] ?? (code || String(error))}`)
}

function readBytes(path: string): Uint8Array {
  try {
    if (statSync(path).size > LARGEST_FILE)
      throw new FileProblem(`${path}: cannot be read: over ${LARGEST_FILE / 1048576} MB`)
    return readFileSync(path)
  } catch (error) {
    throw error instanceof FileProblem ? error : fileProblem(path, 'read', error)
  }
}

function readText(path: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(readBytes(path))
  } catch (error) {
    throw error instanceof FileProblem ? error : new FileProblem(`${path}: cannot be read: not UTF-8 text`)
  }
}

/** Written beside its name first and then renamed, so that a reader never meets half a file. */
function write(path: string, content: string | Uint8Array): void {
  const unfinished = join(dirname(path), `.${basename(path)}.${process.pid}`)
  try {
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(unfinished, content)
    renameSync(unfinished, path)
  } catch (error) {
    rmSync(unfinished, { force: true })
    throw fileProblem(path, 'written', error)
  }
}

function today(): string {
  const now = new Date()
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-')
}

/** The package's folder is found from this module, wherever the bundler has put it. */
function packageFolder(): string {
  for (let folder = dirname(fileURLToPath(import.meta.url)); ; folder = dirname(folder)) {
    if (existsSync(join(folder, 'package.json'))) return folder
    if (folder === dirname(folder)) throw new Error('the package folder of linerwright was not found')
  }
}

export function nodeWorld(): World {
  const folder = packageFolder()
  return {
    readText,
    readBytes,
    write,
    today,
    list: path => {
      try {
        return readdirSync(path).toSorted()
      } catch (error) {
        throw fileProblem(path, 'read', error)
      }
    },
    exists: existsSync,
    out: text => void process.stdout.write(text),
    err: text => void process.stderr.write(text),
    terminal: {
      out: process.stdout.isTTY === true,
      err: process.stderr.isTTY === true,
      colour: process.stdout.isTTY === true && !process.env['NO_COLOR'] && process.env['TERM'] !== 'dumb',
    },
    // The typeface is copied in when the package is built.
    asset: name => join(folder, name.startsWith('fonts/') ? `dist/${name}` : name),
  }
}
