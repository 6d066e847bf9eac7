// What goes into dist/: the command, in one script that start.cjs runs from compiled code; the library, in modules; and the
// planning half of the library in one file that needs no Node.
import { readFileSync } from 'node:fs'
import { build } from 'esbuild'
import { validatorsAhead } from './validators.mjs'

const { dependencies } = JSON.parse(readFileSync('package.json', 'utf8'))

/** Of the hundred encoders of bar codes the two that src/sheets/barcodes.ts names: what is never looked up stays out. */
const barcodesUsed = {
  name: 'barcodes used',
  setup(build) {
    build.onLoad({ filter: /[/\\]bwip-js[/\\]dist[/\\]bwipp\.mjs$/ }, ({ path }) => {
      const [, union = ''] = /type Symbology = (.*)/.exec(readFileSync('src/sheets/barcodes.ts', 'utf8')) ?? []
      const used = union.match(/\w+/g) ?? []
      const LOOKUP = /function bwipp_lookup\(symbol\) \{[\s\S]*?\n\}\n/
      const whole = readFileSync(path, 'utf8')
      if (used.length === 0 || !LOOKUP.test(whole)) throw new Error(`${path}: the encoders in use are not found`)
      const encoders = used.map(name => `${name}: bwipp_${name}`).join(', ')
      const contents = whole.replace(LOOKUP, `function bwipp_lookup(symbol) { return { ${encoders} }[symbol] }\n`)
      return { contents, loader: 'js' }
    })
  },
}

/** What every bundle has in common: what is not installed beside it goes into it. */
const COMMON = {
  bundle: true,
  format: 'esm',
  outdir: 'dist',
  plugins: [validatorsAhead, barcodesUsed],
  // Names stay, so that a stack trace can be read.
  minifyWhitespace: true,
  minifySyntax: true,
  metafile: true,
  logLevel: 'warning',
}

/** What the command never does, and what it would load at every start: the starting of other programs. */
const withoutChildProcesses = {
  name: 'no child processes',
  setup(build) {
    build.onResolve({ filter: /^node:child_process$/ }, ({ path }) => ({ path, namespace: 'nothing' }))
    build.onLoad({ filter: /./, namespace: 'nothing' }, () => ({ contents: 'module.exports = {}' }))
  },
}

/** Of use to two commands only and as large as all the rest: a script of its own, loaded when they are. */
const barcodesApart = {
  name: 'barcodes apart',
  setup(build) {
    build.onResolve({ filter: /^bwip-js\/generic$/ }, () => ({ path: './barcodes.cjs', external: true }))
  },
}

/** Scripts rather than modules: only a script can be run from code that was compiled before. */
const SCRIPT = {
  ...COMMON,
  format: 'cjs',
  platform: 'node',
  target: 'node20',
  outExtension: { '.js': '.cjs' },
  outdir: 'dist',
  supported: { 'dynamic-import': false },
}

/** Bundles all of it, onto the disk or for its own sake. Gives the files that went in. */
export async function bundleAll({ write }) {
  const command = await build({
    ...SCRIPT,
    write,
    entryPoints: { command: 'src/main.ts' },
    plugins: [...COMMON.plugins, withoutChildProcesses, barcodesApart],
    external: Object.keys(dependencies),
    define: { 'import.meta.url': '__moduleUrl' },
    banner: { js: "const __moduleUrl = require('node:url').pathToFileURL(__filename).href" },
  })
  const barcodes = await build({
    ...SCRIPT,
    write,
    outdir: undefined,
    outfile: 'dist/barcodes.cjs',
    // What a module exports by default is all that a script exports.
    stdin: { contents: "export { default } from 'bwip-js/generic'", resolveDir: '.' },
    footer: { js: 'module.exports = module.exports.default' },
  })
  const program = await build({
    ...COMMON,
    write,
    entryPoints: ['src/index.ts', 'src/node.ts'],
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
  // Runs in the packet on a screen, so it is as small as it can be.
  const page = await build({
    ...COMMON,
    write,
    entryPoints: { 'page/packet': 'src/page/screen/main.ts' },
    minify: true,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
  })
  return [command, barcodes, program, browser, page].flatMap(({ metafile }) => Object.keys(metafile.inputs))
}
