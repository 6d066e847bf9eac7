// Puts validators compiled ahead in the place of src/part/validators.ts: compiling the schemas at every start would take
// longer than all the rest of a short command.
import { readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import standaloneModule from 'ajv/dist/standalone/index.js'

const standaloneCode = standaloneModule.default ?? standaloneModule

/** The names that src/part/validators.ts exports, and the schemas beside it. */
const VALIDATORS = {
  validatePart: 'part',
  validateShop: 'shop',
  validateBatch: 'batch',
  validateBench: 'bench',
  validateResults: 'results',
  validateTrial: 'trial',
}

export const validatorsAhead = {
  name: 'validators compiled ahead',
  setup(build) {
    build.onLoad({ filter: /[/\\]src[/\\]part[/\\]validators\.ts$/ }, async ({ path }) => {
      const folder = dirname(path)
      // The options of src/part/validators.ts, and code to write out.
      const ajv = new Ajv2020({
        strict: true,
        allowUnionTypes: true,
        allErrors: true,
        verbose: true,
        code: { source: true, esm: true },
      })
      const files = Object.values(VALIDATORS).map(name => join(folder, `${name}.schema.json`))
      const ids = {}
      for (const [index, name] of Object.keys(VALIDATORS).entries()) {
        const schema = JSON.parse(await readFile(files[index], 'utf8'))
        ajv.addSchema(schema)
        ids[name] = schema.$id
      }
      return { contents: standaloneCode(ajv, ids), loader: 'js', resolveDir: folder, watchFiles: files }
    })
  },
}
