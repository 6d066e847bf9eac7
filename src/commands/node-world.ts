import { existsSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { setImmediate } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { fileProblem, readBytes, readText, remove, write } from './node-files.ts'
import type { World } from './world.ts'

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
  const { env, platform, stderr, stdout, versions } = process
  const plain = env['TERM'] === 'dumb'
  return {
    readText,
    readBytes,
    write,
    remove,
    today,
    list: path => {
      try {
        return readdirSync(path).toSorted()
      } catch (error) {
        throw fileProblem(path, 'read', error)
      }
    },
    exists: existsSync,
    out: text => void stdout.write(text),
    err: text => void stderr.write(text),
    terminal: {
      out: stdout.isTTY === true,
      err: stderr.isTTY === true && !plain,
      colour: stdout.isTTY === true && !env['NO_COLOR'] && !plain,
      ...(stderr.columns > 0 && { columns: stderr.columns }),
    },
    pause: () => setImmediate(),
    runsOn: `Node ${versions.node}, ${platform}`,
    // The typeface is copied in when the package is built.
    asset: name => join(folder, /^(fonts|page)\//.test(name) ? `dist/${name}` : name),
  }
}
