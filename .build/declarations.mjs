// Writes the types of the library into dist/types/: what its three faces reach and nothing else, told in the language's own
// types, so that a program that uses it needs no types of ours or of anybody's beside it.
import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

const FOLDER = 'dist/types'
const IMPORT = /(\bfrom |\bimport\()(['"])([^'"]+)\2/g

export function writeDeclarations(faces) {
  const compiler = join(dirname(createRequire(import.meta.url).resolve('typescript/package.json')), 'bin/tsc')
  execFileSync(process.execPath, [compiler, '-p', '.build/declarations.tsconfig.json'], { stdio: 'inherit' })
  const reached = new Set()
  for (const face of faces) follow(join(FOLDER, `${face}.d.ts`), reached)
  for (const name of readdirSync(FOLDER, { recursive: true })) {
    const file = join(FOLDER, String(name))
    if (file.endsWith('.d.ts') && !reached.has(file)) rmSync(file)
  }
}

/** Has a file name its neighbours as they are shipped, and these theirs. */
function follow(file, reached) {
  if (reached.has(file)) return
  reached.add(file)
  const text = readFileSync(file, 'utf8')
  const rewritten = text.replace(IMPORT, (_, before, quote, target) => {
    if (!target.startsWith('.') || !target.endsWith('.ts')) {
      throw new Error(
        `${file}: the types of the library would need ${target}; mark with @internal what no caller needs`,
      )
    }
    follow(join(dirname(file), target.replace(/\.ts$/, '.d.ts')), reached)
    return `${before}${quote}${target.replace(/\.ts$/, '.js')}${quote}`
  })
  writeFileSync(file, rewritten)
}
