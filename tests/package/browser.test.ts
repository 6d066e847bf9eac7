import { readFileSync } from 'node:fs'
import { createContext, runInContext } from 'node:vm'
import { transform } from 'esbuild'
import { describe, expect, it } from 'vitest'
import {
  drawPictures,
  jsonText,
  makePlan,
  ncPrograms,
  pictureSvg,
  readBatch,
  readPart,
  readShop,
} from '../../src/index.ts'

const root = new URL('../../', import.meta.url)
const textOf = (path: string): string => readFileSync(new URL(path, root), 'utf8')
const shipped = textOf('dist/browser.js')

/** What a page cannot count on, or a plan must not depend on. */
const OUTSIDE = ['process', 'Buffer', 'require', 'module', 'global', '__dirname', 'performance', 'setTimeout', 'fetch']

describe('the planning half, for a page in a browser', () => {
  it('imports nothing, of Node or of anybody', () => {
    expect(shipped).not.toMatch(/"node:/)
    expect(shipped).not.toMatch(/(?:^|[;}])import[\s{*"]/)
    expect(shipped).not.toMatch(/\bimport\(/)
  })

  it('uses no global of Node, no clock and no network', async () => {
    // The bundler puts the mark in place of a name only where nothing in the file declares it.
    const define = Object.fromEntries(OUTSIDE.map(name => [name, `OUTSIDE.${name}`]))
    const marked = await transform(shipped, { define })
    expect(marked.code.match(/OUTSIDE\.\w+/g)).toBeNull()
    const caught = await transform('export const yes = process.env.HOME', { define })
    expect(caught.code).toContain('OUTSIDE.process')
  })

  it('gives the same plan, pictures and programs where there is nothing but the language', async () => {
    const { code } = await transform(shipped, { format: 'iife', globalName: 'linerwright' })
    const given = {
      part: textOf('parts/OX-098-21.yaml'),
      shop: textOf('parts/shop.yaml'),
      batch: textOf('parts/batch-2631.yaml'),
      issue: { date: '2026-11-25', fingerprint: '0bd5bebc6b1e', program: 'a page' },
    }
    const bare = createContext({})
    runInContext(code, bare)
    const there: string = runInContext(`(${work.toString()})(linerwright, ${JSON.stringify(given)})`, bare)
    const here = work(
      { drawPictures, jsonText, makePlan, ncPrograms, pictureSvg, readBatch, readPart, readShop },
      given,
    )
    expect(JSON.parse(here).plan.ports.length).toBeGreaterThan(3)
    expect(JSON.parse(here).pictures.length).toBeGreaterThan(20)
    expect(there === here).toBe(true)
  })
})

type Library = Pick<
  typeof import('../../src/index.ts'),
  'drawPictures' | 'jsonText' | 'makePlan' | 'ncPrograms' | 'pictureSvg' | 'readBatch' | 'readPart' | 'readShop'
>
type Given = {
  readonly part: string
  readonly shop: string
  readonly batch: string
  readonly issue: { readonly date: string; readonly fingerprint: string; readonly program: string }
}

/** Everything that the library gives, as one text. Stands on its own, since its source is sent to where it runs. */
function work(library: Library, given: Given): string {
  const { part } = library.readPart(given.part, 'part.yaml')
  const { shop } = library.readShop(given.shop, 'shop.yaml')
  const { batch } = library.readBatch(given.batch, 'batch.yaml')
  if (!part || !shop || !batch?.number || !batch.quantity) throw new Error('the demo does not read')
  const { number, quantity } = batch
  const { plan, findings } = library.makePlan({ part, shop, batch: { number, quantity }, issue: given.issue })
  if (!plan) throw new Error('the demo does not plan')
  const pictures = [...library.drawPictures(plan)].map(([name, picture]) => [name, library.pictureSvg(picture)])
  return library.jsonText({ plan, findings, pictures, programs: library.ncPrograms(plan) })
}
