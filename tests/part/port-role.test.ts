import { describe, expect, it } from 'vitest'
import { PORT_ROLES, roleNamed } from '../../src/part/port-role.ts'
import { readPart } from '../../src/part/read-part.ts'

// Words of the trade: common practice, no source.
describe('the role that a name says', () => {
  it.each([
    ['exhaust', 'exhaust'],
    ['Main exhaust', 'exhaust'],
    ['aux exhaust', 'aux exhaust'],
    ['auxiliary exhaust, left', 'aux exhaust'],
    ['side exhaust', 'aux exhaust'],
    ['exhaust booster', 'aux exhaust'],
    ['auxiliary', 'aux exhaust'],
    ['main', 'transfer'],
    ['front main', 'transfer'],
    ['rear mains', 'transfer'],
    ['main_1', 'transfer'],
    ['scavenge', 'transfer'],
    ['scavenging port', 'transfer'],
    ['transfer, exhaust side', 'transfer'],
    ['auxiliary transfer', 'transfer'],
    ['boost', 'boost'],
    ['rear boost', 'boost'],
    ['boost transfer', 'boost'],
    ['third port', 'boost'],
    ['third transfer', 'boost'],
    ['inlet', 'inlet'],
    ['main inlet', 'inlet'],
    ['intake', 'inlet'],
    ['decompressor', 'decompressor'],
    ['decompression hole', 'decompressor'],
  ])('%s: %s', (name, role) => {
    expect(roleNamed(name)).toBe(role)
  })
  it.each(['left', 'port 1', 'side', 'outlet', 'domain', 'inlet opposite the exhaust', 'thirds'])(
    '%s says nothing',
    name => {
      expect(roleNamed(name)).toBeUndefined()
    },
  )
  it('names every role by its own word, but for what is none of them', () => {
    for (const role of PORT_ROLES) expect(roleNamed(role)).toBe(role === 'other' ? undefined : role)
  })
})

const partWith = (port: string, engine = 'engine: {stroke: 54, rod: 100, crown-below-top: 0.4}\n'): string => `
part: {number: OX-1, title: Liner, revision: A, kind: liner}
${engine}material: {grade: 42CrMo4}
body:
  length: 92 ±0.05
  outside: [{to: 92, size: 55 g6, name: seat}]
  bore: {size: 48 H6, Ra: 0.3}
ports:
  - ${port}
`

describe('a port whose name says nothing', () => {
  const port = '{name: left, at: 78, top: 40, height: 10, width: 12, corner: 2}'
  it('has a warning at its name that says what to write', () => {
    const { part, findings } = readPart(partWith(port), 'liner.yaml')
    expect(part?.ports[0]?.role).toBe('other')
    expect(findings.map(({ code, severity, at }) => [code, severity, at.line, at.column])).toEqual([
      ['input/port-role', 'warning', 10, 12],
    ])
    expect(findings[0]?.hint).toMatch(/add role: one of exhaust, aux exhaust, transfer, boost, inlet, decompressor/)
  })
  it.each(['aux exhaust', 'decompressor', 'other'])('keeps quiet with role: %s', role => {
    const { part, findings } = readPart(partWith(port.replace('at:', `role: ${role}, at:`)), 'liner.yaml')
    expect([part?.ports[0]?.role, findings]).toEqual([role, []])
  })
  it('keeps quiet on a sleeve that no crank times', () => {
    expect(readPart(partWith(port, ''), 'sleeve.yaml').findings).toEqual([])
  })
})
