import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import table from '../../.build/rooms.json' with { type: 'json' }
import { type Import, importsOf, importsOfHouse, roomOf } from './imports.ts'

type Room = {
  readonly room: string
  readonly values: readonly string[]
  readonly types: readonly string[]
  readonly packages?: readonly string[]
  readonly node?: boolean
}

const ROOMS: ReadonlyMap<string, Room> = new Map(table.rooms.map(row => [row.room, row]))
/** Above every room: the library's three faces and the command. */
const DOORS = new Set(['index.ts', 'browser.ts', 'node.ts', 'main.ts'])

/** What an import breaks of the table, or nothing. */
function against({ file, target, typeOnly }: Import): string | undefined {
  const from = roomOf(file)
  const room = from === undefined ? undefined : ROOMS.get(from)
  const ours = target.endsWith('.ts') || target.endsWith('.json')
  if (DOORS.has(file) || target === '../package.json') return undefined
  if (from !== undefined && room === undefined) return `${file}: ${from} is no room of the table`
  if (!ours) {
    if (target.startsWith('node:')) return room?.node ? undefined : `${file} knows ${target}`
    const name = target
      .split('/')
      .slice(0, target.startsWith('@') ? 2 : 1)
      .join('/')
    return room?.packages?.includes(name) ? undefined : `${file} loads the package ${name}`
  }
  const to = roomOf(target)
  if (to === undefined) return DOORS.has(target) ? `${file} → ${target}` : undefined
  if (to === from) return undefined
  if (room?.values.includes(to)) return undefined
  if (room?.types.includes(to)) return typeOnly ? undefined : `${file} → ${target}: only types may be taken from there`
  return `${file} → ${target}`
}

describe('which folder may import which', () => {
  it('is kept by every file', () => {
    expect(
      importsOfHouse()
        .map(against)
        .filter(fault => fault !== undefined),
    ).toEqual([])
  })

  it.each([
    ['stock/x.ts', "import { packet } from '../sheets/packet.ts'"],
    ['pictures/x.ts', "import { planStock } from '../stock/plan-stock.ts'"],
    ['stock/x.ts', "import type { Plan } from '../plan/plan.ts'"],
    ['handbook/x.ts', "import type { Part } from '../part/part.ts'"],
    ['limits.ts', "import { iso } from './handbook/iso-286.ts'"],
    ['ports/x.ts', "import { type AsMilled, other } from '../stock/stock.ts'"],
    ['plan/x.ts', "import { readFileSync } from 'node:fs'"],
    ['stock/x.ts', "import { parse } from 'yaml'"],
    ['stock/x.ts', "const late = await import('../sheets/packet.ts')"],
    ['attic/x.ts', "import { mm } from '../units.ts'"],
  ])('refuses, in %s: %s', (file, text) => {
    expect(importsOf(file, text).map(against)).toEqual([expect.any(String)])
  })

  it.each([
    ['stock/x.ts', "import { planCase } from '../hardening/plan-case.ts'"],
    ['ports/x.ts', "import type { AsMilled } from '../stock/stock.ts'"],
    ['sheets/x.ts', "import PDFDocument from 'pdfkit'"],
  ])('lets pass, in %s: %s', (file, text) => {
    expect(importsOf(file, text).map(against)).toEqual([undefined])
  })

  it('has a row for every folder of src and no row without one', () => {
    const folders = readdirSync('src', { withFileTypes: true }).filter(entry => entry.isDirectory())
    expect(folders.map(({ name }) => name).toSorted()).toEqual([...ROOMS.keys()].toSorted())
  })

  it('goes one way: no two rooms take values from each other', () => {
    const order = table.rooms.map(({ room }) => room)
    for (const { room, values } of table.rooms)
      for (const below of values) expect(order.indexOf(below), `${room} → ${below}`).toBeLessThan(order.indexOf(room))
  })

  it('is what DEVELOPERS.md prints', () => {
    expect(readFileSync('DEVELOPERS.md', 'utf8')).toContain(
      execFileSync('node', ['.build/rooms.mjs', '--print'], { encoding: 'utf8' }),
    )
  })
})
