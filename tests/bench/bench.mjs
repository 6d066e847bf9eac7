// Bundles the bench as the program is bundled, so that it times what users run, and runs it.
import { mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../../', import.meta.url))
const desk = mkdtempSync(join(root, 'node_modules/.bench-'))
process.chdir(root)
try {
  const outfile = join(desk, 'bench.mjs')
  await build({
    entryPoints: [join(root, 'tests/bench/bench.ts')],
    bundle: true,
    platform: 'node',
    format: 'esm',
    external: ['pdfkit', 'fontkit'],
    outfile,
    banner: {
      js: "import { createRequire as requireOf } from 'node:module'; const require = requireOf(import.meta.url);",
    },
    logLevel: 'error',
  })
  const { bench } = await import(pathToFileURL(outfile))
  await bench(desk)
} finally {
  rmSync(desk, { recursive: true, force: true })
}
