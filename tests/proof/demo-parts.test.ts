import { readdirSync } from 'node:fs'
import { expect, it } from 'vitest'
import { demo } from '../commands/fake-world.ts'
import { expectPartProved } from '../ports/proof/prove-part.ts'

const files = readdirSync('parts').filter(name => name.startsWith('OX-') && demo(name).includes('\nports:'))

it.each(files)('%s comes off the machine with every window as drawn', async file => {
  const finished = Number(/bore: \{size: (?<size>[\d.]+)/.exec(demo(file))?.groups?.['size'])
  const proved = await expectPartProved(demo(file), finished)
  expect(proved?.programs.length).toBeGreaterThan(0)
})
