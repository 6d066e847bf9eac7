import { statSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import bwip from 'bwip-js/generic'
import { expect, it } from 'vitest'
import type { Symbology } from '../../src/sheets/barcodes.ts'
import { ROOT } from '../commands/built-command.ts'

const file = join(ROOT, 'dist/barcodes.cjs')
const shipped: typeof bwip = createRequire(import.meta.url)(file)
const SYMBOLOGIES: { readonly [symbology in Symbology]: true } = { code128: true, datamatrix: true }

it.each(Object.keys(SYMBOLOGIES))('the encoder of %s goes into the package as its own package has it', bcid => {
  const code = { bcid, text: 'OX-098-21 B 2631' }
  expect(shipped.raw(code)).toEqual(bwip.raw(code))
})

it('the hundred other encoders do not go into the package', () => {
  expect(() => shipped.raw({ bcid: 'qrcode', text: 'OX-098-21' })).toThrow()
  expect(statSync(file).size).toBeLessThan(300_000)
})
