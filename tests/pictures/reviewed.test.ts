import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { drawPictures } from '../../src/pictures/draw-pictures.ts'
import { pictureSvg } from '../../src/pictures/picture-svg.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const root = new URL('../../', import.meta.url)
const PARTS = readdirSync(new URL('parts/', root)).flatMap(file => /^(OX-.*)\.yaml$/.exec(file)?.[1] ?? [])

/** The pictures that the README shows, as any program gets them. */
const SAMPLE = readdirSync(new URL('out/sample/', root)).map(file => file.replace(/\.svg$/, ''))

/** A mark a line, so that a change shows as the marks that changed. */
const lineByLine = (svg: string): string => `${svg.replaceAll('><', '>\n<')}\n`

// Each file was looked at when it was written. `npm run pictures` writes them anew: look at them again before committing.
describe.each(PARTS)('the drawings of %s are as they were reviewed', name => {
  const pictures = [...drawPictures(demoPlan(name))]

  it.each(pictures)('%s', async (picture, drawn) => {
    await expect(lineByLine(pictureSvg(drawn))).toMatchFileSnapshot(`../expected/pictures/${name}/${picture}.svg`)
  })
})

describe('the drawings that the README shows are those of today', () => {
  const pictures = drawPictures(demoPlan())

  it.each(SAMPLE)('%s', async name => {
    const drawn = pictures.get(name)
    if (!drawn) throw new Error(`no drawing is called ${name}`)
    await expect(pictureSvg(drawn)).toMatchFileSnapshot(`../../out/sample/${name}.svg`)
  })
})
