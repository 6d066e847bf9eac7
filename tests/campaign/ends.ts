import { readFileSync } from 'node:fs'
import { expect } from 'vitest'
import { parse, stringify } from 'yaml'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'
import { toolRange } from '../../src/part/tool-ranges.ts'
import { makePlan } from '../../src/plan/make-plan.ts'
import type { ToolKind } from '../../src/shop/tool.ts'

type Row = Record<string, unknown>
const SHOP = parse(readFileSync('parts/shop.yaml', 'utf8')) as Record<string, readonly Row[]>
const partOf = (number: string) => {
  const { part } = readPart(readFileSync(`parts/${number}.yaml`, 'utf8'), number)
  if (!part) throw new Error(number)
  return part
}
const LINER = partOf('OX-098-21')
const PIN = partOf('OX-098-34')
const IRON = partOf('OX-112-03')
const KEYS = ['diameter', 'flute-length', 'shank', 'reach', 'nose-radius', 'length', 'point'] as const
const ISSUE = { date: '2026-11-25', fingerprint: '0123456789ab', program: 'test' }

/** The demo part on which tools of a kind work. */
const PARTS = (kind: string) => (/centreless|regulating|lap/.test(kind) ? PIN : /hone/.test(kind) ? IRON : LINER)

const kinds = [...new Set((SHOP['tools'] ?? []).map(({ kind }) => String(kind)))] as ToolKind[]
/** Every end of a range that the reader takes, of every key of every kind of tool that the demo's works has. */
export const ENDS: readonly (readonly [kind: ToolKind, key: string, value: number])[] = kinds.flatMap(kind =>
  KEYS.filter(key => (SHOP['tools'] ?? []).some(tool => tool['kind'] === kind && key in tool)).flatMap(key => {
    const { from, upTo } = toolRange(kind, key)
    return [from, upTo].flatMap(value => (value === undefined ? [] : [[kind, key, value] as const]))
  }),
)

/** A cutter's flutes are never longer than it stands out, its edges end below its neck, and that is thinner than the cutter. */
function withEnd(tool: Row, key: string, value: number): Row {
  const ended: Row = {
    ...tool,
    [key]: value,
    ...(key === 'reach' && 'flute-length' in tool && { 'flute-length': Math.min(Number(tool['flute-length']), value) }),
    ...(key === 'flute-length' && { reach: Math.max(Number(tool['reach']), value) }),
  }
  if (!('neck' in tool)) return ended
  const [diameter, flutes] = [Number(ended['diameter']), Number(ended['flute-length'])]
  return {
    ...ended,
    neck: Math.min(Number(ended['neck']), 0.9 * diameter),
    'edge-length': Math.min(Number(ended['edge-length']), 0.5 * flutes),
  }
}

/** A shop whose every tool of a kind has that value reads, and a demo part plans or the plan says why not. */
export function expectEndPlanned(kind: ToolKind, key: string, value: number): void {
  const tools = (SHOP['tools'] ?? []).map(tool => (tool['kind'] === kind ? withEnd(tool, key, value) : tool))
  const { shop } = readShop(stringify({ ...SHOP, tools }), 'shop.yaml')
  if (!shop) throw new Error('the shop does not read')
  const { plan } = makePlan({ part: PARTS(kind), shop, batch: { number: '1', quantity: 12 }, issue: ISSUE })
  const notFinite = JSON.stringify(plan, (_, figure) =>
    typeof figure === 'number' && !Number.isFinite(figure) ? 'not a number' : figure,
  )
  expect(notFinite).not.toContain('not a number')
}
