import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const part = demo('OX-112-03.yaml')
const shop = demo('shop.yaml')
const OX = ['plan', 'p.yaml', '--json', '--date', '2026-11-30', '--batch', '2631', '--quantity', '12']

async function fingerprint(files: Readonly<Record<string, string>>, ...more: readonly string[]): Promise<string> {
  const world = desk({ 'p.yaml': part, 'shop.yaml': shop, ...files })
  await run([...OX, ...more], world)
  return JSON.parse(world.printed()).fingerprint
}

describe('the fingerprint', () => {
  it('stays where only the writing differs: a comment, blank lines, the order of keys', async () => {
    const before = await fingerprint({})
    expect(before).toMatch(/^[0-9a-f]{12}$/)
    expect(await fingerprint({ 'p.yaml': `# drawn by hand\n\n${part}\n# end\n` })).toBe(before)
    expect(await fingerprint({ 'shop.yaml': `# of this year\n${shop}` })).toBe(before)
    const [first = '', ...rest] = part.split(/\n(?=[a-z]+:)/)
    expect(await fingerprint({ 'p.yaml': `${rest.join('\n')}\n${first}\n` })).toBe(before)
  })

  it('is the same in whatever folder the files lie', async () => {
    const world = desk({ 'far/away/p.yaml': part, 'far/away/shop.yaml': shop })
    await run(OX.with(1, 'far/away/p.yaml'), world)
    expect(JSON.parse(world.printed()).fingerprint).toBe(await fingerprint({}))
  })

  it('changes with all that the paper rests on', async () => {
    const title = /title: [^,}\n]+/
    const all = await Promise.all([
      fingerprint({}),
      fingerprint({ 'p.yaml': part.replace(title, 'title: Another pin') }),
      fingerprint({ 'shop.yaml': shop.replaceAll('Oxmere Pump Works', 'Oxmere Works') }),
      fingerprint({}, '--quantity', '13'),
      fingerprint({}, '--batch', '2632'),
      fingerprint({}, '--date', '2026-12-01'),
      fingerprint({ 'b.yaml': 'batch: {number: "2631", heat: 7K}' }, '--batch', 'b.yaml'),
    ])
    expect(part).toMatch(title)
    expect(shop).toContain('Oxmere Pump Works')
    expect(new Set(all).size).toBe(all.length)
  })

  it('a packet of the same batch for another quantity is not written over, but with --force', async () => {
    const world = desk({ 'p.yaml': part, 'shop.yaml': shop })
    const traveller = ['traveller', 'p.yaml', '--batch', '2631', '--format', 'html', '--quantity']
    const [path = ''] = ['out/OX-112-03-A-2631/packet.html']
    expect(await run([...traveller, '12'], world)).toBe(0)
    const issued = world.files.get(path)
    expect(issued).toContain('fingerprint')
    expect(await run([...traveller, '20'], world)).toBe(2)
    expect(world.complained()).toMatch(/is issued with fingerprint [0-9a-f]{12}, not [0-9a-f]{12}: .*quantity/)
    expect(world.files.get(path)).toBe(issued)
    expect(await run([...traveller, '12'], world)).toBe(0)
    expect(await run([...traveller, '20', '--force'], world)).toBe(0)
    expect(world.files.get(path)).not.toBe(issued)
  })
})
