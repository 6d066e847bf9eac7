// Bundles the program into dist/, with what it needs beside it: schemas, the typeface, and the notices of what went in.
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { bundleAll } from './bundles.mjs'
import { noticesOf, packagesOf } from './notices.mjs'

rmSync('dist', { recursive: true, force: true })
const inputs = await bundleAll({ write: true })

// Editors complete part and shop files from these, the first line of a file names one; the last describes what --json gives.
const SCHEMAS = ['part/part', 'part/shop', 'part/batch', 'plan/plan']
for (const path of SCHEMAS) cpSync(`src/${path}.schema.json`, `dist/${path.split('/')[1]}.schema.json`)

// Two faces of the forty that their package brings.
mkdirSync('dist/fonts')
const TYPEFACE = ['DejaVuSansCondensed.ttf', 'DejaVuSansCondensed-Bold.ttf']
for (const face of TYPEFACE) cpSync(`node_modules/dejavu-fonts-ttf/ttf/${face}`, `dist/fonts/${face}`)

writeFileSync('dist/THIRD-PARTY-NOTICES.txt', noticesOf([...packagesOf(inputs), 'node_modules/dejavu-fonts-ttf']))
