import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { cuttingDataOf } from '../../../src/nc/cutting-data.ts'
import { ncProgramsFor } from '../../../src/nc/nc-programs.ts'
import { readPart } from '../../../src/part/read-part.ts'
import { readShop } from '../../../src/part/read-shop.ts'
import { planPorts } from '../../../src/ports/plan-ports.ts'
import { planRoute } from '../../../src/route/plan-route.ts'
import { planStock } from '../../../src/stock/plan-stock.ts'
import { expectProved } from './compare.ts'
import { prove } from './prove.ts'

const DEMO = 'parts'
const files = readdirSync(DEMO).filter(name => name.startsWith('OX-'))

describe.each(files)('%s', file => {
  const { part } = readPart(readFileSync(`${DEMO}/${file}`, 'utf8'), file)
  const { shop } = readShop(readFileSync(`${DEMO}/shop.yaml`, 'utf8'), 'shop.yaml')

  it('comes off the machine with every window as drawn', () => {
    if (!part || !shop) throw new Error('the demo part cannot be read')
    const { asMilled } = planStock(part, shop, planRoute(part, shop).operations)
    if (!asMilled) {
      expect(part.ports).toEqual([])
      return
    }
    const { ports, findings } = planPorts(part, shop, asMilled)
    expect(findings.filter(({ severity }) => severity === 'error')).toEqual([])
    expect(ports.length).toBe(part.ports.length)
    const programs = ncProgramsFor({
      part,
      ports,
      shop,
      asMilled,
      fingerprint: 'none',
      data: (tool, diameter) => cuttingDataOf([], tool, diameter, undefined),
    })
    const finished = part.bore[0]?.size.nominal ?? 0
    expectProved(prove(programs, ports, asMilled, finished), ports, finished / 2)
  }, 120_000)
})
