import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import type { Comparison } from '../../src/compare/compare-plans.ts'
import { readPart } from '../../src/part/read-part.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { demo, desk } from './fake-world.ts'

const plan = demoPlan()

/** What a bench reads off a liner made exactly to the plan: edges to a hundredth, angles to a tenth, written as found. */
const bench = `bench: {part: OX-098-21, piece: 3, date: '2026-12-01'}
length: 92.00
outside: [{to: 4, size: 61.97, name: flange}, {to: 92, size: 54.98, name: seat}]
bore: 48.00
grade: 42CrMo4
hardness: 300 HV
engine: {stroke: 54, rod: 100}
crown-below-top: 0.4
ports:
${plan.ports
  .map(({ name, at, arc, up, back, windows }) => {
    const top = Math.min(...windows.map(({ edges }) => edges.finished.highest))
    const bottom = Math.max(...windows.map(({ edges }) => edges.finished.lowest))
    const half = arc / 2
    const sides = `from: ${(at - half).toFixed(1)}, to: ${(at + half).toFixed(1)}`
    const bars = name === 'exhaust' ? ', bridge: 2.6' : ''
    return `  - {name: "${name}", top: ${top.toFixed(2)}, bottom: ${bottom.toFixed(2)}, ${sides}, corner: 2.6, up: ${up}, back: ${back}${bars}}`
  })
  .join('\n')}
`

async function made(text = bench, argv: readonly string[] = []) {
  const world = desk({ 'bench.yaml': text, 'new.yaml': demo('OX-098-21.yaml'), 'shop.yaml': demo('shop.yaml') })
  const status = await run(['new', 'liner', 'old.yaml', '--from', 'bench.yaml', ...argv], world)
  return { status, world, text: String(world.files.get('old.yaml') ?? '') }
}

describe('new liner --from a bench file', () => {
  it('writes a part file that reads, with each limit left as a question', async () => {
    const { status, text } = await made()
    expect(status).toBe(0)
    const { part, findings } = readPart(text, 'old.yaml')
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(part?.ports.map(({ name }) => name)).toEqual(plan.ports.map(({ name }) => name))
    expect(part?.outside.map(({ size, to }) => [size.nominal, to.nominal])).toEqual([
      [61.97, 4],
      [54.98, 92],
    ])
    for (const asked of ['length: 92   # limits?', 'bore: 48   # limits?', '# hardening: {process: ?']) {
      expect(text).toContain(asked)
    }
  })

  it('lets compare find no edge moved, of a liner made to the plan, by more than was rounded', async () => {
    const { world } = await made()
    const before = world.printed().length
    const status = await run(['compare', 'old.yaml', 'new.yaml', '--json', '--date', '2026-11-25'], world)
    expect(status, world.complained()).toBe(0)
    const { timing } = JSON.parse(world.printed().slice(before)) as Comparison
    for (const { port, higher } of timing) expect(Math.abs(higher), port).toBeLessThanOrEqual(0.005 + 1e-6)
    for (const { port, withinMaking } of timing) expect(withinMaking, port).toBe(true)
  })

  it('lets compare find the edge that stands 0.30 mm higher on the old liner', async () => {
    const exhaust = /(name: "exhaust", top: )(\d+\.\d+)/
    const higher = bench.replace(exhaust, (_, key, top) => `${key}${(Number(top) - 0.3).toFixed(2)}`)
    const { world } = await made(higher)
    const before = world.printed().length
    await run(['compare', 'old.yaml', 'new.yaml', '--json', '--date', '2026-11-25'], world)
    const { timing } = JSON.parse(world.printed().slice(before)) as Comparison
    expect(timing.find(({ port }) => port === 'exhaust')?.higher).toBeCloseTo(-0.3, 1)
  })

  it('asks for what was not measured at its place in the bench file, and writes nothing', async () => {
    const { status, world } = await made('bore: 48\nports:\n  - {name: boost, top: 45, bottom: 54, arc: 29}\n')
    expect(status).toBe(1)
    expect(world.files.has('old.yaml')).toBe(false)
    const said = world.complained()
    for (const what of ['the length', 'the outside', 'the material', 'the azimuth of boost', 'the corner of boost'])
      expect(said).toContain(`${what} was not measured`)
    expect(said).toContain('bench.yaml:3:5')
  })

  it('is refused for what no bench file describes', async () => {
    const world = desk({ 'bench.yaml': bench })
    expect(await run(['new', 'pin', 'pin.yaml', '--from', 'bench.yaml'], world)).toBe(2)
    expect(world.files.has('pin.yaml')).toBe(false)
  })
})
