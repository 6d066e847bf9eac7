import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { placeOf } from '../../src/part/part.ts'
import { partTemplate } from '../../src/part/part-template.ts'
import { readPart } from '../../src/part/read-part.ts'

const LINER = readFileSync('parts/OX-098-21.yaml', 'utf8')
const partOf = (text: string) => {
  const { part, findings } = readPart(text, 'part.yaml')
  if (!part) throw new Error(findings.map(({ message }) => message).join('; '))
  return part
}

describe('the demo parts', () => {
  it.each(['OX-098-21', 'OX-098-30', 'OX-098-31', 'OX-098-34', 'OX-105-02', 'OX-112-03', 'OX-131-07'])(
    '%s reads without a finding',
    number => {
      expect(readPart(readFileSync(`parts/${number}.yaml`, 'utf8'), number)).toMatchObject({
        part: { number },
        findings: [],
      })
    },
  )

  it('what the file leaves out is absent or nought, and the rest as written', () => {
    const { engine, material, hardening, stock, waive, generalTolerance, bottom } = partOf(LINER)
    expect({ engine, material, stock, waive, generalTolerance, bottom }).toEqual({
      engine: { stroke: 54, rod: 100, pinOffset: 0, crownBelowTop: 0.4, speed: 4200, headVolume: 11.5 },
      material: { grade: '42CrMo4', written: '42CrMo4', hardness: 300, temper: 620 },
      stock: {},
      waive: [],
      generalTolerance: 'm',
      bottom: { path: '/body/bottom' },
    })
    expect(hardening).toMatchObject({
      process: 'gas nitriding',
      hardness: { least: 470 },
      depth: { least: 0.25 },
      masked: [],
    })
  })

  it('the last band ends at the bottom face, with the tolerance of the length', () => {
    const { outside, bore, length } = partOf(LINER)
    expect(outside.map(({ name, from }) => [name, from])).toEqual([
      ['flange', 0],
      ['seat', 4],
    ])
    expect([outside.at(-1)?.to, bore.at(-1)?.to]).toEqual([length, length])
  })
})

describe('ports', () => {
  it('a mirrored port is two, each naming the other, at opposite azimuths', () => {
    const pair = partOf(LINER).ports.filter(({ mirrorOf }) => mirrorOf !== undefined)
    expect(pair.map(({ name, at, mirrorOf, path }) => [name, at, mirrorOf, path])).toEqual([
      ['main transfer', 78, 'main transfer, mirrored', '/ports/1'],
      ['main transfer, mirrored', -78, 'main transfer', '/ports/1'],
    ])
    expect({ ...pair[1], name: '', at: 0, mirrorOf: '' }).toEqual({ ...pair[0], name: '', at: 0, mirrorOf: '' })
  })

  const oneOf = (entry: string) =>
    partOf(`part: {number: T-1, title: Liner, revision: A, kind: liner}
engine: {stroke: 54, rod: 100}
material: {grade: 42CrMo4}
body: {length: 92 ±0.05, outside: 55 g6, bore: 48 H6}
ports: [{${entry}}]`).ports[0]

  it.each([
    ['exhaust', 'exhaust'],
    ['Rear Transfer', 'transfer'],
    ['boost', 'boost'],
    ['intake', 'inlet'],
    ['inlet, left', 'inlet'],
    ['oil hole', 'other'],
  ])('the name "%s" says what flows: %s', (name, role) => {
    expect(oneOf(`name: '${name}', at: 0, opens: 106, height: 10, width: 10, corner: 2`)?.role).toBe(role)
  })

  it('a role that is written counts, and azimuths come into one turn', () => {
    const port = oneOf('name: exhaust, role: other, at: 270, opens: 106, height: 10, width: 10, corner: 2')
    expect([port?.role, port?.at]).toEqual(['other', -90])
  })

  it('a corner is on the bore or in the plane of the cutter', () => {
    expect(oneOf('name: a, at: 0, opens: 106, height: 10, width: 10, corner: 2')?.corner).toEqual({
      on: 'bore',
      radius: 2,
    })
    expect(oneOf('name: a, at: 0, opens: 106, height: 10, width: 10, corner: {cut: 2}')?.corner).toEqual({
      on: 'cutter',
      radius: 2,
    })
  })

  it('a length with a tolerance of its own is kept as drawn, and planned to the middle of its limits', () => {
    const port = oneOf('name: a, at: 0, top: 30 ±0.03, height: 10, width: 10 +0.1/-0, corner: 2')
    expect(port).toMatchObject({
      top: 30,
      height: 10,
      width: 10.05,
      drawn: { top: { lower: 29.97, upper: 30.03 }, width: { lower: 10, upper: 10.1 } },
    })
    expect(port?.drawn?.height).toBeUndefined()
  })
})

describe('material', () => {
  it.each(['4140', '1.7225', '42 CrMo 4', '42crmo4+QT'])('%s is planned as 42CrMo4 and printed as written', written => {
    expect(partOf(LINER.replace('42CrMo4', `'${written}'`)).material).toMatchObject({ grade: '42CrMo4', written })
  })
})

describe('places', () => {
  it('every value is found again where it stands', () => {
    const part = partOf(LINER)
    const at = (path: string) => {
      const { line, column } = placeOf(part, path)
      return LINER.split('\n')[line - 1]?.slice(column - 1)
    }
    expect(at('/ports/1/corner')).toMatch(/^2\.6, up/)
    expect(at('/body/outside/1/size')).toMatch(/^55 g6/)
    expect(at('/ports/1/hieght')).toMatch(/^\{name: main transfer/)
    for (const { path } of [...part.outside, ...part.bore, ...part.ports, part.top])
      expect(part.places.has(path)).toBe(true)
  })
})

describe('templates', () => {
  it.each(['liner', 'sleeve', 'pin', 'piston'] as const)('a new %s reads without a finding', kind => {
    const text = partTemplate(kind, 'OX-200-01')
    expect(readPart(text, 'new.yaml')).toMatchObject({ part: { kind, number: 'OX-200-01' }, findings: [] })
  })

  it('the number comes back, whatever characters it has', () => {
    const numbers = fc
      .string({ minLength: 1, maxLength: 30 })
      .map(text => text.trim())
      .filter(text => text !== '' && !/\p{Cc}/u.test(text))
    fc.assert(
      fc.property(numbers, number => {
        expect(partOf(partTemplate('pin', number)).number).toBe(number)
      }),
    )
  })
})

describe('what is written of the hardening', () => {
  const reads = (written: string) => readPart(LINER.replace(/process: gas nitriding/, written), 'part.yaml')

  it('case hardening is carburising', () => {
    expect(reads('process: case hardening').part?.hardening?.process).toBe('carburising')
  })

  it('a quench is read of what is hardened through, and of nothing else', () => {
    expect(reads('process: through hardening, quench: hot oil').part?.hardening?.quench).toBe('hot')
    expect(reads('process: gas nitriding, quench: press').findings.map(({ code }) => code)).toContain('input/not-used')
    expect(reads('process: through hardening, quench: water').part).toBeUndefined()
  })
})
