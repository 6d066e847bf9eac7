import { fixed } from '../../figures.ts'
import type { OrderPoint, Quantity } from '../../orders/order.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** A unit stays with its figure: `0.015 mm`, `650 HV1`. */
const WITH = '\u00a0'

/** A quantity of an order as the sheet writes it, unit and all. */
export function quantityWords(quantity: Quantity, figures: PaperFigures): string {
  const unit = unitWords(quantity, figures)
  const bare = figureWords(quantity, figures)
  return unit === '' ? bare : `${bare}${WITH}${unit}`
}

export const unitWords = ({ unit }: Quantity, figures: PaperFigures): string => (unit === 'mm' ? figures.unit : unit)

/** Without its unit, for a column that has one in its head. What is asked is rounded inward, a size that comes outward. */
export function figureWords(quantity: Quantity, figures: PaperFigures): string {
  const { value, least, most, standing } = quantity
  const print = printerOf(quantity, figures)
  const [low, high]: readonly [Rounded, Rounded] = standing === 'asked' ? ['up', 'down'] : ['near', 'near']
  if (value !== undefined) {
    const about = print(value, 'near')
    return least === undefined || most === undefined || least === most
      ? about
      : `${about} (${print(least, low)} to ${print(most, high)})`
  }
  if (least !== undefined && most !== undefined) return bothEnds({ ...quantity, least, most }, figures, print)
  if (least !== undefined) return print(least, low)
  return most === undefined ? DASH : print(most, high)
}

/** A limit with the words that say which: `not over 0.010`. */
export function limitWords(quantity: Quantity, figures: PaperFigures): string {
  const { value, least, most, standing } = quantity
  const figure = figureWords(quantity, figures)
  if (value !== undefined) return standing === 'expected' ? `expected ${figure}` : figure
  if (least === undefined && most === undefined) return 'report'
  if (standing !== 'asked') return standing === 'expected' ? `expected ${figure}` : figure
  if (least === undefined) return `not over ${figure}`
  return most === undefined ? `not under ${figure}` : figure
}

type Rounded = 'up' | 'down' | 'near'
type Print = (value: number, rounded: Rounded) => string

function printerOf({ unit, places }: Quantity, { length, notOver, notUnder }: PaperFigures): Print {
  if (unit !== 'mm') return value => fixed(value, places)
  return (value, rounded) =>
    rounded === 'up' ? notUnder(value, places) : rounded === 'down' ? notOver(value, places) : length(value, places)
}

type Both = Quantity & { readonly least: number; readonly most: number }

function bothEnds(
  { least, most, plus = 0, written, places, standing }: Both,
  figures: PaperFigures,
  print: Print,
): string {
  if (written === 'hole' || written === 'shaft') {
    const write = standing === 'given' ? figures.outward : figures.limits
    return write({ lower: least, upper: most }, written, places)
  }
  const inward = standing === 'asked' ? [print(least, 'up'), print(most, 'down')] : []
  // Ends closer than the last place would cross.
  const [low, high] = Number(inward[0]) <= Number(inward[1]) ? inward : [print(least, 'near'), print(most, 'near')]
  if (written === 'range' || low === undefined || high === undefined)
    return low === high ? `${low}` : `${low} to ${high}`
  return `${low}${WITH}+${figures.plus(plus, low, high)}${WITH}−0`
}

/** The sentences of a point with their figures in place. */
export const pointLines = ({ text, quantities }: OrderPoint, figures: PaperFigures): readonly string[] =>
  text.map(line =>
    line.replace(/\{(\d+)\}/g, (slot, index) => {
      const quantity = quantities[Number(index)]
      return quantity ? quantityWords(quantity, figures) : slot
    }),
  )
