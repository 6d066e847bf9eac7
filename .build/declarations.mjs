// Writes the types of the library into dist/types/: what its three faces reach and nothing else, told in the language's own
// types, so that a program that uses it needs no types of ours or of anybody's beside it.
import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'

const folder = 'dist/types'
const compiler = join(dirname(createRequire(import.meta.url).resolve('typescript/package.json')), 'bin/tsc')
rmSync(folder, { recursive: true, force: true })
execFileSync(process.execPath, [compiler, '-p', '.build/declarations.tsconfig.json'], { stdio: 'inherit' })

const IMPORT = /(\bfrom |\bimport\()(['"])([^'"]+)\2/g
const reached = new Set()

function follow(file) {
  if (reached.has(file)) return
  reached.add(file)
  const text = readFileSync(file, 'utf8')
  const rewritten = text.replace(IMPORT, (_, before, quote, target) => {
    if (!target.startsWith('.') || !target.endsWith('.ts')) throw new Error(`${file}: its types need ${target}`)
    follow(join(dirname(file), target.replace(/\.ts$/, '.d.ts')))
    return `${before}${quote}${target.replace(/\.ts$/, '.js')}${quote}`
  })
  writeFileSync(file, rewritten)
}

for (const face of ['index', 'browser', 'node']) follow(join(folder, `${face}.d.ts`))
for (const name of readdirSync(folder, { recursive: true })) {
  const file = join(folder, String(name))
  if (file.endsWith('.d.ts') && !reached.has(file)) rmSync(file)
}
