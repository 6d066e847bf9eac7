import type { Characteristic } from '../../inspection/characteristic.ts'
import type { PacketData } from '../packet-data.ts'

/** A cell that takes what is written: a reading of a characteristic, or a note. */
export type Cell = {
  readonly key: string
  readonly element: HTMLTableCellElement
  readonly input: HTMLInputElement
  readonly verdict?: HTMLElement
  readonly of?: Characteristic
  /** Absent where nobody says which piece it is. */
  readonly piece?: string
}

/** Gives every cell to write in a field of its own. */
export function cellsOf({ inspection }: PacketData): readonly Cell[] {
  const characteristics = new Map(inspection.characteristics.map(one => [String(one.number), one]))
  return [...document.querySelectorAll('section')].flatMap(section =>
    [...section.querySelectorAll<HTMLTableCellElement>('td.write')].map((element, index): Cell => {
      const { number = '', piece } = element.dataset
      const of = characteristics.get(number)
      const input = document.createElement('input')
      input.type = 'text'
      input.autocomplete = 'off'
      input.setAttribute('aria-label', labelOf(element, of, piece))
      if (element.textContent?.trim()) input.value = element.textContent.trim()
      element.replaceChildren(input)
      const key = of && piece ? `${piece} ${number}` : `${section.id} ${index}`
      if (!of) return { key, element, input }
      input.inputMode = 'decimal'
      element.classList.add('reading')
      const verdict = document.createElement('span')
      verdict.className = 'verdict'
      verdict.id = `${section.id}-verdict-${index}`
      input.setAttribute('aria-describedby', verdict.id)
      element.append(verdict)
      return { key, element, input, verdict, of, ...(piece && { piece }) }
    }),
  )
}

/** As the sheet would be read out: what stands above the cell, and what it stands beside. */
function labelOf(element: HTMLTableCellElement, of: Characteristic | undefined, piece: string | undefined): string {
  if (of && piece) return `${of.name}, piece ${piece}`
  const head = element.closest('table')?.tHead?.rows
  const above = wordsOf(head?.item(head.length - 1)?.cells.item(element.cellIndex))
  if (of) return above === '' ? of.name : `${of.name}, ${above}`
  const beside = element.parentElement?.firstElementChild
  const row = beside === element ? '' : wordsOf(beside)
  return [above, row].filter(words => words !== '').join(', ') || 'to fill in'
}

/** All words of a node on one line. */
function wordsOf(node: Node | null | undefined): string {
  const words = (one: Node): string =>
    one.nodeName === 'BR'
      ? ' '
      : one.hasChildNodes()
        ? [...one.childNodes].map(words).join('')
        : (one.textContent ?? '')
  return node ? words(node).replaceAll(/\s+/g, ' ').trim() : ''
}

/** The field below: the same gauge, the next piece. */
export function below({ element }: Cell): HTMLInputElement | undefined {
  const row = element.closest('tr')?.nextElementSibling
  const next =
    row instanceof HTMLTableRowElement ? row.cells.item(element.cellIndex)?.querySelector('input') : undefined
  return next ?? undefined
}
