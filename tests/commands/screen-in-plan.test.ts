import { describe, expect, it, vi } from 'vitest'
import type { Options } from '../../src/commands/options.ts'
import { ports } from '../../src/commands/ports.ts'
import { route } from '../../src/commands/route.ts'
import { stock } from '../../src/commands/stock.ts'
import { workings } from '../../src/commands/workings.ts'
import { demoPlan } from '../sheets/demo-packet.ts'
import { numbersIn, poolOf, twinOf, wordsOf } from '../sheets/plan-figures.ts'
import type { Record } from '../sheets/recorded-figures.ts'

const { record } = vi.hoisted(() => ({ record: { figures: [], drawn: new Set() } as Record }))
vi.mock('../../src/figures.ts', async original => {
  const { recording } = await import('../sheets/recorded-figures.ts')
  return recording(await original(), record)
})

const PARTS = ['OX-098-21', 'OX-098-30', 'OX-098-34', 'OX-105-02', 'OX-112-03', 'OX-131-07']
const OPTIONS: Options = { out: 'out', format: 'both', paper: 'a4', units: 'mm' }

describe.each(PARTS)('on the screen, of %s', name => {
  const plan = twinOf(demoPlan(name))

  it.each(Object.entries({ route, stock, ports, workings }))('%s says nothing that its --json does not', (_, view) => {
    record.figures.length = 0
    const text = view.text(plan, OPTIONS, false)
    const given = poolOf(view.data(plan, OPTIONS))
    expect(record.figures.filter(({ raw }) => !given.numbers.has(raw))).toEqual([])
    const written = new Set(record.figures.flatMap(({ text: figure }) => numbersIn(figure)))
    const strangers = wordsOf(text)
      .filter(word => !given.words.has(word))
      .flatMap(numbersIn)
      .filter(token => !written.has(token) && !(given.numbers.has(Number(token)) && String(Number(token)) === token))
    expect(strangers).toEqual([])
  })
})
