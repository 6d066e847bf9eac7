// Bundles src/main.ts into dist/: one command, split so that `stock` never loads the PDF writer.

import { rmSync } from 'node:fs'
import { copyFile } from 'node:fs/promises'
import { build } from 'esbuild'
import { validatorsAhead } from './validators.mjs'

rmSync('dist', { recursive: true, force: true })
await build({
  entryPoints: ['src/main.ts'],
  bundle: true,
  splitting: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  outdir: 'dist',
  external: ['pdfkit', 'fontkit'],
  banner: {
    js: "import { createRequire as requireOf } from 'node:module'; const require = requireOf(import.meta.url);",
  },
  plugins: [validatorsAhead],
  // Names stay, so that a stack trace can be read.
  minifyWhitespace: true,
  minifySyntax: true,
  logLevel: 'warning',
})

// Editors complete part and shop files from these, the first line of a file names one; the last describes what --json gives.
const SCHEMAS = ['part/part', 'part/shop', 'part/batch', 'plan/plan']
for (const path of SCHEMAS) await copyFile(`src/${path}.schema.json`, `dist/${path.split('/')[1]}.schema.json`)
