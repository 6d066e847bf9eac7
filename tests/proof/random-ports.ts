import fc from 'fast-check'
import { planPorts } from '../../src/ports/plan-ports.ts'
import { demo } from '../commands/fake-world.ts'
import { type Asked, linerOf, milledAt, shopWith } from '../ports/liner.ts'

/** Ports of a 48 mm bore, most of them legal, about a quarter of the circumference each. */
const ports: fc.Arbitrary<Asked> = fc
  .record({
    at: fc.integer({ min: -12, max: 12 }),
    top: fc.double({ min: 25, max: 50, noNaN: true }),
    height: fc.double({ min: 6, max: 16, noNaN: true }),
    width: fc.double({ min: 8, max: 22, noNaN: true }),
    up: fc.integer({ min: -15, max: 45 }),
    back: fc.integer({ min: -20, max: 30 }),
    share: fc.double({ min: 0.6, max: 1, noNaN: true }),
    cut: fc.constantFrom('level' as const, 'straight' as const),
    on: fc.constantFrom('bore' as const, 'cutter' as const),
  })
  .map(({ share, on, ...port }) => ({
    ...port,
    corner: { on, radius: share * Math.min(3, 0.3 * port.height, 0.3 * port.width) },
  }))

/** The demo liner with these ports instead of its own, and without an engine to time them. */
export function linerText(asked: readonly Asked[]): string {
  const [body = ''] = demo('OX-098-21.yaml')
    .replace(/^engine:.*\n/m, '')
    .split('\nports:')
  const ports = asked.map((port, i) => {
    const { at, top, height, width, up = 0, back = 0, cut = 'level', corner } = port
    const radius = corner?.on === 'cutter' ? `{cut: ${corner.radius}}` : corner?.radius
    return `  - {name: port ${i + 1}, at: ${at}, top: ${top}, height: ${height}, width: ${width}, corner: ${radius}, up: ${up}, back: ${back}, cut: ${cut}}`
  })
  return `${body}\nports:\n${ports.join('\n')}\n`
}

const QUARTERS = [-137, -47, 43, 133]

/**
 * Liners with four legal ports each, the same ones every time. A port that does not stand beside the others is judged alone,
 * and kept for the next liner where it is legal: most are asked about once, and none that is not needed.
 */
export function randomLiners(count: number, seed: number): readonly (readonly Asked[])[] {
  const drawn = fc.sample(ports, { numRuns: 12 * count, seed })
  const placed = drawn.map((port, i) => ({ ...port, at: port.at + (QUARTERS[i % 4] ?? 0) }))
  const quarters = QUARTERS.map((_, quarter) => placed.filter((_, i) => i % 4 === quarter))
  return Array.from({ length: count }, () => {
    const liner: Asked[] = []
    for (const waiting of quarters) {
      for (let next = 0; next < waiting.length; ) {
        const [port] = waiting.slice(next, next + 1)
        if (!port) break
        const stands = isLegal([...liner, port])
        if (stands) liner.push(port)
        if (stands || !isLegal([port])) waiting.splice(next, 1)
        else next += 1
        if (stands) break
      }
    }
    return liner
  })
}

const isLegal = (asked: readonly Asked[]): boolean =>
  planPorts(linerOf(asked), shopWith(), milledAt(47.8, 55.2, 0.2)).findings.every(
    ({ severity }) => severity !== 'error',
  )
