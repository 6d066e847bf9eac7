import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { drawPictures } from '../../src/pictures/draw-pictures.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const root = new URL('../../', import.meta.url)
const expected = new URL('tests/expected/pictures/', root)
const PARTS = readdirSync(new URL('parts/', root)).flatMap(file => /^(OX-.*)\.yaml$/.exec(file)?.[1] ?? [])

describe('no reviewed drawing is left over', () => {
  it('of a part that is gone', () => {
    expect(readdirSync(expected).toSorted()).toEqual(PARTS.toSorted())
  })

  it.each(PARTS)('of %s', name => {
    const pictures = [...drawPictures(demoPlan(name)).keys()].map(picture => `${picture}.svg`)
    expect(readdirSync(new URL(`${name}/`, expected)).toSorted()).toEqual(pictures.toSorted())
  })
})
