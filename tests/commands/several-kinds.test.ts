import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { kindOfFile } from '../../src/part/file-kind.ts'
import { demo, desk } from './fake-world.ts'

const files = {
  'p.yaml': demo('OX-112-03.yaml'),
  'shop.yaml': demo('shop.yaml'),
  'batch.yaml': demo('batch-2631.yaml'),
}

describe('a folder with part, shop and batch files', () => {
  it('is told apart by the keys that the files begin with', () => {
    expect([files['p.yaml'], files['shop.yaml'], files['batch.yaml']].map(kindOfFile)).toEqual([
      'part',
      'shop',
      'batch',
    ])
    expect(kindOfFile('machines: []\n')).toBe('shop')
    expect(kindOfFile('bench: {piece: 7}\nports: []\n')).toBe('bench')
    expect(kindOfFile('# nothing\n')).toBe('part')
  })

  it('is checked whole, as the example of the help says, each file as what it is', async () => {
    const world = desk({ ...files, 'batch.yaml': 'batch: {date: 2026-02-30}\n' })
    expect(await run(['check', ...Object.keys(files)], world)).toBe(1)
    expect(world.printed()).toMatch(/^batch\.yaml:1:\d+ {2}error {2}input\/unreadable {2}date "2026-02-30" is no day/m)
    expect(world.printed()).toMatch(/^shop\.yaml: no findings$/m)
    expect(world.printed()).not.toMatch(/unknown key/)
  })

  it('gives a packet of every part, and says what it has passed over', async () => {
    const world = desk(files)
    expect(await run(['traveller', ...Object.keys(files), '--format', 'html'], world)).toBe(0)
    expect(world.complained()).toMatch(/^shop\.yaml: a shop file, passed over$/m)
    expect(world.complained()).toMatch(/^batch\.yaml: a batch file, passed over$/m)
    expect(world.printed()).toBe('out/OX-112-03-A-draft/packet.html\nout/OX-112-03-A-draft/plan.json\n')
  })

  it.each(['plan', 'traveller', 'stock'])('%s of a shop file alone is refused in one line', async name => {
    const world = desk(files)
    expect(await run([name, 'shop.yaml'], world)).toBe(2)
    expect(world.complained()).toBe('linerwright: shop.yaml is a shop file; a part file is wanted\n')
  })

  it('prints no folder on paper, so that the same bytes come out wherever the files lie', async () => {
    const far = { 'a/b/p.yaml': files['p.yaml'], 'a/b/shop.yaml': files['shop.yaml'] }
    const [here, there] = [desk(files), desk(far)]
    await run(['traveller', 'p.yaml', '--format', 'html'], here)
    await run(['traveller', 'a/b/p.yaml', '--format', 'html'], there)
    const path = 'out/OX-112-03-A-draft/packet.html'
    expect(here.files.get(path)).toBe(there.files.get(path))
  })
})
