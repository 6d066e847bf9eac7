import { placesShowing } from '../../decimal-places.ts'
import { chance, fixed, percent } from '../../figures.ts'
import type { From } from '../../known.ts'
import type { Plan } from '../../plan/plan.ts'
import type { StockEntry } from '../../stock/stock.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** How the stock on diameter may fall, reckoned three ways, and the chance that it fails. */
export type OddsRow = {
  readonly surface: string
  readonly operation: string
  /** About the middle: every tolerance at its end, and the root of the sum of squares. */
  readonly worstCase: string
  readonly rootSumSquare: string
  /** What nearly all pieces have: the head says what share. */
  readonly nearlyAll: string
  readonly notCleanedUp: string
  readonly tooLittleCase: string
}

export const oddsRows = (entries: readonly StockEntry[], { length }: PaperFigures): readonly OddsRow[] =>
  entries.flatMap(({ surface, operation, spread, chance: odds }) => {
    if (!spread) return []
    const both = (piece: number | undefined, batch: number | undefined): string =>
      piece === undefined ? DASH : [...new Set([piece, batch ?? piece].map(chance))].join('; ')
    return [
      {
        surface,
        operation: String(operation),
        worstCase: `±${length(spread.worstCase)}`,
        rootSumSquare: `±${length(spread.rootSumSquare)}`,
        nearlyAll: `${length(spread.nearlyAll.least)} to ${length(spread.nearlyAll.most)}`,
        notCleanedUp: both(odds?.piece.notCleanedUp, odds?.batch?.notCleanedUp),
        tooLittleCase: both(odds?.piece.tooLittleCase, odds?.batch?.tooLittleCase),
      },
    ]
  })

/** `99.73 % of pieces`. */
export const nearlyAllHead = (entries: readonly StockEntry[]): string => {
  const share = entries.find(({ spread }) => spread)?.spread?.nearlyAll.share
  return share === undefined ? '' : `${percent(share, 2)} % of pieces`
}

/** A figure that the stock rests on, once for all surfaces that it is the same for. */
export type BasisRow = {
  readonly figure: string
  readonly surfaces: string
  readonly value: string
  readonly from: string
  readonly source: string
}

/** Who gave a figure, in words. */
export const FROM: Readonly<Record<From, string>> = {
  'built in': 'built in',
  shop: 'shop file',
  measured: 'measured',
  part: 'part file',
  batch: 'batch',
  handbook: 'handbook',
  formula: 'worked out',
}

export function basisRows(entries: readonly StockEntry[], { length, unit }: PaperFigures): readonly BasisRow[] {
  const rows = new Map<string, { readonly row: BasisRow; readonly surfaces: Set<string> }>()
  for (const { surface, basis = [] } of entries) {
    for (const { figure, value, unit: own, from, source } of basis) {
      // As it was used: half a micrometre of run-out, a tenth of roughness is seen.
      const places = placesShowing(value, own === 'mm' ? { least: 3, most: 4 } : { least: 0, most: 1 })
      const written = own === 'mm' ? `${length(value, places)}\u00a0${unit}` : `${fixed(value, places)}\u00a0${own}`
      const key = [figure, written, from, source].join()
      const found = rows.get(key) ?? {
        row: { figure, surfaces: '', value: written, from: FROM[from], source },
        surfaces: new Set<string>(),
      }
      found.surfaces.add(surface)
      rows.set(key, found)
    }
  }
  return [...rows.values()].map(({ row, surfaces }) => ({ ...row, surfaces: [...surfaces].join(', ') }))
}

/** What measuring the growth on a first article would save, a sentence a surface; nothing where it has been measured. */
export const firstArticleLines = (entries: readonly StockEntry[], { length, unit }: PaperFigures): readonly string[] =>
  entries.flatMap(({ surface, operation, firstArticle }) =>
    firstArticle
      ? [
          `${surface}, operation ${operation}: measure the growth on a first article, and ${length(firstArticle.stock)} ${unit} less stock on diameter${firstArticle.case === undefined ? '' : ` and ${length(firstArticle.case)} ${unit} less case`} would do.`,
        ]
      : [],
  )

/** A length that comes out of the cuts along the axis. */
export type LengthRow = {
  readonly name: string
  readonly nominal: string
  readonly worstCase: string
  readonly rootSumSquare: string
  readonly drawn: string
  readonly expression: string
}

export const lengthRows = ({ axial }: Pick<Plan, 'axial'>, { length, limits }: PaperFigures): readonly LengthRow[] =>
  (axial?.resultants ?? []).map(({ name, nominal, worstCase, rootSumSquare, drawn, expression }) => ({
    name,
    nominal: length(nominal),
    worstCase: `±${length(worstCase)}`,
    rootSumSquare: `±${length(rootSumSquare)}`,
    drawn: drawn ? limits(drawn, 'shaft', drawn.places) : DASH,
    expression,
  }))
