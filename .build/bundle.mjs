// Bundles the program into dist/, with what it needs beside it: schemas, the typeface, the notices of what went in, and types.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { bundleAll } from './bundles.mjs'
import { writeDeclarations } from './declarations.mjs'
import { noticesOf, packagesOf } from './notices.mjs'

rmSync('dist', { recursive: true, force: true })
const inputs = await bundleAll({ write: true })

// Editors complete part and shop files from these, the first line of a file names one; the last describes what --json gives.
const SCHEMAS = ['part/part', 'part/shop', 'part/batch', 'part/bench', 'part/results', 'part/trial', 'plan/plan']
for (const path of SCHEMAS) cpSync(`src/${path}.schema.json`, `dist/${path.split('/')[1]}.schema.json`)

// Two faces of the forty that their package brings.
mkdirSync('dist/fonts')
const TYPEFACE = ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf']
for (const face of TYPEFACE) cpSync(`node_modules/dejavu-fonts-ttf/ttf/${face}`, `dist/fonts/${face}`)

writeFileSync('dist/THIRD-PARTY-NOTICES.txt', noticesOf([...packagesOf(inputs), 'node_modules/dejavu-fonts-ttf']))

// In plain letters throughout, so that it is read and kept with a byte a letter: only patterns still hold others.
const COMMAND = 'dist/command.cjs'
const plainLetter = letter => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`
writeFileSync(COMMAND, readFileSync(COMMAND, 'utf8').replace(/[^\0-\x7F]/g, plainLetter))
cpSync('.build/start.cjs', 'dist/main.cjs')
const { status, stderr } = spawnSync(process.execPath, ['.build/compile-ahead.cjs'], {
  stdio: ['ignore', 'ignore', 'pipe'],
})
if (status !== 0) throw new Error(`the built command does not run: ${stderr}`)

writeDeclarations(['index', 'browser', 'node'])
