import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const files = { 'p.yaml': demo('OX-131-07.yaml'), 'shop.yaml': demo('shop.yaml') }
const TRAVELLER = ['traveller', 'p.yaml', '--templates', 'own', '--format', 'html']

describe("a folder of the works' own templates", () => {
  it.each([
    [
      'own/material.hbs',
      '<p>\n{{nothing}}</p>',
      'own/material.hbs:2:3: asks for view.nothing, which the sheet does not have',
    ],
    ['own/material.hbs', '<p>x</p><blink>x</blink>', 'own/material.hbs:1:9: <blink> is outside the markup'],
    ['own/stock.hbs', '<p>{{{x}}}</p>', 'own/stock.hbs:1:4: text must be escaped'],
    ['own/opertion.hbs', '<p>x</p>', 'own/opertion.hbs: no sheet has a template "opertion": did you mean operation?'],
    ['own/notes.txt', 'x', 'own: the folder has no template, no file that ends in .hbs'],
  ])('%s with %j is refused in one line', async (name, text, why) => {
    const world = desk({ ...files, [name]: text })
    expect(await run(TRAVELLER, world)).toBe(2)
    const lines = world
      .complained()
      .split('\n')
      .filter(line => line.startsWith('linerwright: '))
    expect(lines).toHaveLength(1)
    expect(lines[0]).toContain(`linerwright: ${why}`)
    expect([...world.files.keys()].some(path => path.startsWith('out/'))).toBe(false)
  })

  it('a file that is no template is named, and the others are used', async () => {
    const world = desk({ ...files, 'own/README.md': 'x', 'own/material.hbs': '<p>Bar as agreed with the stores</p>' })
    expect(await run(TRAVELLER, world)).toBe(0)
    expect(world.complained()).toContain('own: not a template, so not used: README.md\n')
    expect(String(world.files.get('out/OX-131-07-A-draft/packet.html'))).toContain(
      '<p>Bar as agreed with the stores</p>',
    )
  })
})
