import { describe, expect, test } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'
import { BATCH, files, HEAD, hardened, piece, plan, recorded, turned } from './issued-batch.ts'

describe('record --pair', () => {
  const HONED = plan.operations.find(({ process }) => process === 'hone')?.number ?? 0
  // The worked lot, µm over and under 48: computed twice, independently, in the reference of records.
  const BORES = [7, 12, 3, 15, 9, 5, 11, 14, 6, 10, 8, 13]
  const PISTONS = [55, 61, 49, 67, 58, 52, 63, 50, 60, 57, 66, 54]
  const honed = `${HEAD.replace('12-14', '12-20')}after: {operation: ${HONED}}\npieces:\n${BORES.map((b, index) => `  - {serial: ${index + 1}, bore: ${(48 + b / 1000).toFixed(4)}}\n`).join('')}`
  const tray = `serial,size\n${PISTONS.map((p, index) => `${index + 1},${(48 - p / 1000).toFixed(4)}\n`).join('')}`

  test('pairs the bores as they were measured last', async () => {
    const { status, said } = await recorded(
      { 'r1.yaml': honed, 'pistons.csv': tray },
      '--pair',
      'pistons.csv',
      '--clearance',
      '0.057..0.073',
    )
    expect(status).toBe(0)
    const { pairing } = said as unknown as {
      readonly pairing: {
        readonly worst: number
        readonly pairs: readonly { readonly bore: string; readonly piston: string }[]
      }
    }
    expect(pairing.worst).toBeCloseTo(0.006, 9)
    expect(pairing.pairs.map(({ bore, piston }) => `${bore}-${piston}`).join(' ')).toBe(
      '1-2 2-12 3-4 4-3 5-5 6-11 7-1 8-8 9-7 10-10 11-9 12-6',
    )
  })

  test('prints them, and what would use what is left', async () => {
    const world = desk(files({ 'r1.yaml': honed, 'pistons.csv': `${tray}13,47.8000\n` }))
    await run(
      ['record', 'liner.yaml', 'r1.yaml', '--batch', BATCH, '--pair', 'pistons.csv', '--clearance', '0.057..0.073'],
      world,
    )
    expect(world.printed()).toMatch(
      /piston 13 \(47\.8000\) has no partner: a bore from 47\.8570 to 47\.8730 would serve/,
    )
  })

  test.each([
    ['a column that is none', 'serial,weight\n1,2\n', 'input/unknown-key'],
    ['a piston twice', 'serial,size\n1,47.9\n1,47.8\n', 'results/twice'],
    ['a word for a size', 'serial,size\n1,small\n', 'input/unreadable'],
  ])('finds %s', async (_, text, code) => {
    const { status, complained } = await recorded(
      { 'r1.yaml': honed, 'pistons.csv': text },
      '--pair',
      'pistons.csv',
      '--clearance',
      '0.057..0.073',
    )
    expect(status).toBe(1)
    expect(complained).toContain(code)
  })

  test('wants a clearance that is one', async () => {
    for (const clearance of ['0.07', '0.08..0.05', 'a..b']) {
      const { status } = await recorded(
        { 'r1.yaml': honed, 'pistons.csv': tray },
        '--pair',
        'pistons.csv',
        '--clearance',
        clearance,
      )
      expect(status).toBe(2)
    }
  })
})

describe('record --keep', () => {
  const seats = (serials: readonly number[], size: (serial: number) => number, oval: number): string =>
    serials.map(serial => piece(serial, size(serial), oval)).join('')
  const SERIALS = [1, 2, 3, 4, 5, 6]
  const soft = (serial: number): number => 55.095 + serial * 0.001
  const GROWN = [0.0145, 0.0151, 0.0148, 0.0153, 0.0149, 0.0146]
  const given = {
    'r1.yaml': turned(seats(SERIALS, soft, 0)),
    'r2.yaml': hardened(seats(SERIALS, serial => soft(serial) + 2 * (GROWN[serial - 1] ?? 0), 0.012)),
  }

  test('adds one line to the shop file, and the next plan stands on it', async () => {
    const world = desk(files(given))
    expect(await run(['record', 'liner.yaml', 'r1.yaml', 'r2.yaml', '--batch', BATCH, '--keep', '--json'], world)).toBe(
      0,
    )
    const [was, is] = [demo('shop.yaml'), String(world.files.get('shop.yaml'))].map(text => text.split('\n'))
    const added = is?.filter(line => !was?.includes(line)) ?? []
    expect(added).toHaveLength(1)
    expect(is?.filter(line => line !== added[0])).toEqual(was)
    const { measured } = JSON.parse(world.printed()) as {
      readonly measured: {
        readonly row: {
          readonly loads: { readonly outside: readonly { readonly mean: number; readonly pieces: number }[] }
        }
      }
    }
    expect(measured.row.loads.outside).toMatchObject([{ batch: BATCH, pieces: 6, mean: 0.0149 }])
    expect(await run(['check', 'shop.yaml'], world)).toBe(0)
  })

  test('shows the row without writing it where nobody says --keep', async () => {
    const world = desk(files(given))
    await run(['record', 'liner.yaml', 'r1.yaml', 'r2.yaml', '--batch', BATCH], world)
    expect(world.files.get('shop.yaml')).toBe(demo('shop.yaml'))
    expect(world.printed()).toContain('--keep adds it to the shop file')
  })
})

describe('record --for', () => {
  const lists = { 'r1.yaml': turned(piece(1, 55.1, 0)), 'r2.yaml': hardened(piece(1, 55.13, 0.004)) }

  test('prints the list for the grinder beside the plan', async () => {
    const world = desk(files(lists))
    const line = ['record', 'liner.yaml', 'r1.yaml', 'r2.yaml', '--batch', BATCH, '--for', 'grinder']
    expect(await run(line, world)).toBe(0)
    const path = `out/OX-098-21-B-${BATCH}/grinding.pdf`
    expect(world.printed()).toContain(path)
    expect(world.files.get(path)).toBeInstanceOf(Uint8Array)
  })

  test('refuses what there is nothing to print of, and then has added nothing', async () => {
    const world = desk(files(lists))
    const line = ['record', 'liner.yaml', 'r1.yaml', 'r2.yaml', '--batch', BATCH, '--for', 'customer']
    expect(await run(line, world)).toBe(2)
    expect(world.complained()).toContain('no finished piece is measured')
    expect(world.files.has(`out/OX-098-21-B-${BATCH}/book.yaml`)).toBe(false)
  })

  test('knows its readers', async () => {
    const world = desk(files(lists))
    expect(await run(['record', 'liner.yaml', '--batch', BATCH, '--for', 'floor'], world)).toBe(2)
    expect(world.complained()).toContain('"floor" is nobody: inspection, grinder, fitter, customer, file')
  })
})
