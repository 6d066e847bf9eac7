import { readdirSync, readFileSync } from 'node:fs'
import { build } from 'esbuild'
import { beforeAll, describe, expect, it } from 'vitest'
import * as validators from '../../src/part/validators.ts'
import { openYaml } from '../../src/part/yaml-source.ts'

const atRunTime = { ...validators }
const FOLDER = new URL('../fixtures/reading/', import.meta.url)

describe('validators compiled ahead for the bundle', () => {
  let ahead: typeof atRunTime

  beforeAll(async () => {
    const plugin = new URL('../../.build/validators.mjs', import.meta.url).href
    const { validatorsAhead } = await import(plugin)
    const { outputFiles } = await build({
      entryPoints: ['src/part/validators.ts'],
      bundle: true,
      format: 'esm',
      write: false,
      plugins: [validatorsAhead],
    })
    const code = Buffer.from(outputFiles[0]?.contents ?? []).toString('base64')
    ahead = await import(`data:text/javascript;base64,${code}`)
  })

  it('has no compiler in it', () => {
    expect(Object.keys(ahead).sort()).toEqual(Object.keys(atRunTime).sort())
    expect(ahead.validatePart.toString()).not.toBe(atRunTime.validatePart.toString())
  })

  it.each(readdirSync(FOLDER))('finds in %s what the one compiled at run time finds', name => {
    const { source } = openYaml(readFileSync(new URL(name, FOLDER), 'utf8'), name)
    for (const key of ['validatePart', 'validateShop', 'validateBatch', 'validateBench'] as const) {
      expect(ahead[key](source?.data)).toBe(atRunTime[key](source?.data))
      expect(ahead[key].errors).toEqual(atRunTime[key].errors)
    }
  })
})
