// What goes into dist/: the command and the library, split so that `stock` never loads the PDF writer; and the planning half
// of the library in one file that needs no Node.
import { readFileSync } from 'node:fs'
import { build } from 'esbuild'
import { validatorsAhead } from './validators.mjs'

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8'))

/** What every bundle has in common: what is not installed beside it goes into it. */
const COMMON = {
  bundle: true,
  format: 'esm',
  outdir: 'dist',
  plugins: [validatorsAhead],
  // Names stay, so that a stack trace can be read.
  minifyWhitespace: true,
  minifySyntax: true,
  metafile: true,
  logLevel: 'warning',
}

/** Bundles all of it, onto the disk or for its own sake. Gives the files that went in. */
export async function bundleAll({ write }) {
  const program = await build({
    ...COMMON,
    write,
    entryPoints: ['src/main.ts', 'src/index.ts', 'src/node.ts'],
    splitting: true,
    platform: 'node',
    target: 'node20',
    external: Object.keys(dependencies),
    banner: {
      js: "import { createRequire as requireOf } from 'node:module'; const require = requireOf(import.meta.url);",
    },
  })
  const browser = await build({
    ...COMMON,
    write,
    entryPoints: ['src/browser.ts'],
    platform: 'browser',
    target: 'es2023',
  })
  return [program, browser].flatMap(({ metafile }) => Object.keys(metafile.inputs))
}
