// Bundles modules of the program as it is shipped, so that a campaign tries what users run.
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from 'esbuild'

/** Everything that the modules export, as one module. */
export async function bundled(root, desk, name, modules) {
  const outfile = join(desk, `${name}.mjs`)
  await build({
    stdin: { contents: modules.map(path => `export * from '${path}'`).join('\n'), resolveDir: root, loader: 'ts' },
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
  return await import(pathToFileURL(outfile))
}
