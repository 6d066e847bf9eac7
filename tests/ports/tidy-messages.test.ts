import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from '../commands/fake-world.ts'

describe('what a finding says', () => {
  it('has no dust of the reckoning in its figures, however a port is placed', async () => {
    const liner = demo('OX-098-21.yaml').replace('at: 78', 'at: 23.4').replace('up: 15', 'up: 15.3')
    const world = desk({ 'liner.yaml': liner, 'shop.yaml': demo('shop.yaml') })
    await run(['check', 'liner.yaml'], world)
    expect(world.printed()).toMatch(/at -?23\.4°/)
    expect(world.printed()).not.toMatch(/\d\.\d{6,}/)
  })
})
