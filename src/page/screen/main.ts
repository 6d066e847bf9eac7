import type { PacketData } from '../packet-data.ts'
import { readingsCsv, type TypedReading } from '../readings-csv.ts'
import { numberOf, unitOn, verdictOf } from '../verdict-of.ts'
import { below, type Cell, cellsOf } from './cell.ts'
import { markDone } from './done-marks.ts'
import { openFrames } from './frames.ts'
import { keeperOf } from './keep.ts'
import { readingsBar } from './readings-bar.ts'

/** Makes the packet a tool: its cells take readings, say what they are worth, and are kept until they are saved as a file. */
function openPacket(packet: PacketData): void {
  const keeper = keeperOf(packet.fingerprint)
  const cells = cellsOf(packet)
  const bar = readingsBar()
  markDone(keeper)
  openFrames()
  addEventListener('resize', openFrames)

  const temperature = (): number | undefined => numberOf(bar.temperature.value)
  const worth = ({ of, input }: Cell): string => {
    if (!of || input.value.trim() === '') return ''
    const value = numberOf(input.value)
    if (value === undefined) return of.lower === undefined && of.upper === undefined ? '' : 'no number'
    return verdictOf(packet, of, value, { units: packet.units, temperature: temperature() }) ?? ''
  }
  const show = (cell: Cell): string => {
    const said = worth(cell)
    cell.element.dataset['verdict'] = said
    cell.input.toggleAttribute('aria-invalid', said === 'no number')
    if (cell.verdict) cell.verdict.textContent = said === '' ? '' : `${SHAPES[said] ?? ''} ${said}`
    return said
  }
  const count = (): void => {
    const said = cells.filter(({ piece }) => piece !== undefined).map(({ element }) => element.dataset['verdict'] ?? '')
    const many = (verdict: string): number => said.filter(one => one === verdict).length
    bar.count(
      `${readings().length} of ${said.length} read: ${many('in limits')} in limits, ${many('in doubt')} in doubt, ${many('out')} out`,
    )
  }
  const readings = (): readonly TypedReading[] =>
    cells.flatMap(({ key, of, piece, input }) =>
      of && piece && numberOf(input.value) !== undefined
        ? [
            {
              piece,
              number: of.number,
              operation: of.operation,
              typed: input.value,
              unit: unitOn(packet.units, of).replace(/^-$/, ''),
              date: keeper.now().cells[key]?.date ?? today(),
            },
          ]
        : [],
    )
  const keep = (change: Parameters<typeof keeper.change>[0]): void => {
    if (!keeper.change(change)) bar.say('This browser keeps nothing of a file: save the readings before you close it.')
  }
  const fill = (): void => {
    const { cells: kept, by, temperature: warmth } = keeper.now()
    bar.by.value = by
    bar.temperature.value = warmth
    for (const cell of cells) {
      const typed = kept[cell.key]
      if (typed) cell.input.value = typed.text
      show(cell)
    }
    count()
  }

  for (const cell of cells) {
    cell.input.addEventListener('input', () => {
      const { [cell.key]: _, ...others } = keeper.now().cells
      const text = cell.input.value
      keep({ cells: text === '' ? others : { ...others, [cell.key]: { text, date: today() } } })
      show(cell)
      count()
    })
    cell.input.addEventListener('change', () => {
      const said = worth(cell)
      if (said !== '') bar.say(`${cell.input.getAttribute('aria-label')}: ${cell.input.value} ${said}`)
    })
    cell.input.addEventListener('keydown', event => {
      if (event.key !== 'Enter') return
      event.preventDefault()
      below(cell)?.focus()
    })
  }
  bar.by.addEventListener('input', () => keep({ by: bar.by.value }))
  bar.temperature.addEventListener('input', () => {
    keep({ temperature: bar.temperature.value })
    for (const cell of cells) show(cell)
    count()
  })
  bar.clearing.addEventListener('click', () => {
    if (!confirm('Clear all that was entered in this packet?')) return
    for (const { input } of cells) input.value = ''
    keep({ cells: {} })
    fill()
    bar.say('All cells are empty.')
  })
  bar.exporting.addEventListener('click', () => {
    const all = readings()
    const left = cells.filter(({ piece, input }) => piece && input.value.trim() !== '').length - all.length
    if (all.length === 0) return bar.say('Nothing was read yet.')
    const head = { ...packet.part, part: packet.part.number, batch: packet.batch.number, by: bar.by.value.trim() }
    const warm = temperature() === undefined ? '' : bar.temperature.value.trim()
    const name = `readings-${packet.part.number}-${packet.batch.number}-${today()}.csv`.replaceAll(/[^\w.-]+/g, '-')
    download(name, readingsCsv(all, { ...head, temperature: warm }))
    bar.say(`${all.length} readings in ${name}${left > 0 ? `; ${left} that are no number are left out` : ''}`)
  })
  fill()
}

/** Told apart without colour and without reading. */
const SHAPES: Readonly<Record<string, string>> = { 'in limits': '○', 'in doubt': '△', out: '✕', 'no number': '?' }

/** By the clock of the bench, YYYY-MM-DD. */
function today(): string {
  const now = new Date()
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(part => String(part).padStart(2, '0')).join('-')
}

function download(name: string, text: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }))
  link.download = name
  link.click()
  URL.revokeObjectURL(link.href)
}

const written = document.getElementById('packet')?.textContent
if (written) openPacket(JSON.parse(written))
