import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { listed } from '../../src/commands/report.ts'
import type { Finding } from '../../src/finding.ts'
import type { BenchHeld } from '../../src/plan/bench-compared.ts'
import type { BenchPortHeld } from '../../src/ports/port-held.ts'
import { demo, desk } from './fake-world.ts'

const liner = { 'liner.yaml': demo('OX-098-21.yaml'), 'shop.yaml': demo('shop.yaml') }

/** Inverse of the slider-crank without offset in closed form; stroke 54 and rod 100 of the demo engine. */
const opening = (x: number): number => {
  const [S, L] = [54, 100]
  const [R, u] = [S / 2, S / 2 + L - x]
  return (Math.acos((u * u + R * R - L * L) / (2 * R * u)) * 180) / Math.PI
}

async function measured(bench: string) {
  const world = desk({ ...liner, 'bench.yaml': bench })
  const status = await run(['ports', 'liner.yaml', '--measured', 'bench.yaml', '--json'], world)
  const { held, findings } = JSON.parse(world.printed()) as { held: BenchHeld; findings: readonly Finding[] }
  const port = (name: string): BenchPortHeld | undefined => held.ports?.find(port => port.name === name)
  return { status, held, findings, port, said: world.complained() }
}

describe('ports --measured', () => {
  it('says in mm and crank degrees how a liner differs from its plan', async () => {
    const { status, held, port } = await measured(`
bore: 48.012
crown-below-top: 0.5
ports:
  - {name: exhaust, top: 38.30, bottom: 54.40}
  - {name: main transfer, top: 44.10, arc: 41.6, at: 78.3}
`)
    expect(status).toBe(0)
    expect(held.bore?.by).toBeCloseTo(0.012, 9)
    const exhaust = port('exhaust')
    expect(exhaust?.opens?.measured).toBeCloseTo(opening(38.3 - 0.5), 9)
    expect(exhaust?.opens?.by).toBeCloseTo(opening(38.3 - 0.5) - 106, 9)
    expect(exhaust?.duration?.measured).toBeCloseTo(360 - 2 * opening(37.8), 9)
    expect(exhaust?.top?.by).toBeCloseTo(38.3 - (exhaust?.top?.planned ?? 0), 9)
    expect(held.blowdown?.measured).toBeCloseTo(opening(43.6) - opening(37.8), 9)
    const main = port('main transfer')
    expect([main?.at?.by, main?.arc?.measured]).toEqual([expect.closeTo(0.3, 9), 41.6])
    // Chord of an arc: 2 r sin(w / 2).
    expect(main?.width?.measured).toBeCloseTo(48.012 * Math.sin((20.8 * Math.PI) / 180), 9)
  })
  it('reads side edges as on a clock seen from the head, and across azimuth 180', async () => {
    const { port } = await measured(`
ports:
  - {name: 'main transfer', from: 8:00, to: 10:00}
  - {name: boost, from: 165, to: -163}
`)
    // A clock runs against the azimuth: nine o'clock is 90 degrees, an hour 30.
    expect(port('main transfer')).toMatchObject({ at: { measured: 90 }, arc: { measured: expect.closeTo(60, 9) } })
    expect(port('boost')).toMatchObject({
      at: { measured: expect.closeTo(-179, 9), by: expect.closeTo(1, 9) },
      arc: { measured: expect.closeTo(32, 9) },
    })
  })
  it('prints the same as a table', async () => {
    const world = desk({ ...liner, 'bench.yaml': 'ports: [{name: boost, top: 44.803}]\n' })
    expect(await run(['ports', 'liner.yaml', '--measured', 'bench.yaml'], world)).toBe(0)
    expect(world.printed()).toMatch(/^boost +top \(mm\) +44\.703 +44\.803 +\+0\.100$/m)
    // The plan says 0.298 degrees for each 0.1 mm there.
    expect(world.printed()).toMatch(/^boost +opens ° ATDC +123\.00 +123\.30 +\+0\.30$/m)
  })
  it('a port that the part does not have is a finding at its place', async () => {
    const { status, said } = await measured('ports:\n  - {name: exhuast, top: 38}\n')
    expect(status).toBe(1)
    expect(said).toMatch(
      /^bench\.yaml:2:5 {2}error {2}input\/port {2}the part has no port exhuast\n {2}hint: did you mean exhaust\?/m,
    )
  })
})

describe('findings at the terminal', () => {
  const at = (line: number) => ({ file: 'liner.yaml', line, column: 5 })
  const wall = (port: string, line: number, severity: Finding['severity'] = 'warning'): Finding => ({
    code: 'ports/thin-wall',
    severity,
    message: `${port}: goes through a wall of 1.34 mm; 2.88 mm or more is usual`,
    at: at(line),
    hint: 'a thin wall between ports does not stay round',
  })
  it('has one row for one rule about several ports, with the place and name of each', () => {
    const text = listed([wall('exhaust', 10), wall('main', 11), wall('main, mirrored', 11), wall('boost', 12)], false)
    expect(text).toBe(
      `liner.yaml:10:5  warning  ports/thin-wall  exhaust: goes through a wall of 1.34 mm; 2.88 mm or more is usual
  hint: a thin wall between ports does not stay round
  likewise 11:5 main; 11:5 main, mirrored; 12:5 boost
`,
    )
  })
  it('leaves every error a row of its own', () => {
    expect(listed([wall('exhaust', 10, 'error'), wall('main', 11, 'error')], false).match(/^liner/gm)).toHaveLength(2)
  })
})
