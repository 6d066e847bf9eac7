// Bundles src/main.ts into dist/: one command, split so that `stock` never loads the PDF writer.
import { copyFile } from 'node:fs/promises'
import { build } from 'esbuild'
import { validatorsAhead } from './validators.mjs'

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
  logLevel: 'warning',
})

// Editors complete part and shop files from these: the first line of a file names one.
for (const name of ['part', 'shop', 'batch']) await copyFile(`src/part/${name}.schema.json`, `dist/${name}.schema.json`)
