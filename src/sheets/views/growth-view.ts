import { fixed, micrometre } from '../../figures.ts'
import type { Learnt } from '../../record/learn.ts'
import { DASH, type PaperFigures } from './paper-figures.ts'

/** What hardening did to the batch, surface by surface and piece by piece. */
export type GrowthView = {
  readonly unit: string
  readonly by: string
  readonly surfaces: readonly {
    readonly surface: string
    readonly pieces: string
    readonly planned: string
    readonly mean: string
    readonly spread: string
    readonly ofAll: string
    readonly ovality: string
    readonly leans: string
  }[]
  readonly strips: readonly { readonly left: string; readonly right: string }[]
  readonly heads: readonly string[]
  readonly pieces: readonly {
    readonly piece: string
    readonly cells: readonly { readonly before: string; readonly after: string; readonly growth: string }[]
  }[]
  readonly lines: readonly string[]
}

export const growthName = (surface: string): string => `growth-${surface}`

export function growthView(learnt: Learnt, figures: PaperFigures): GrowthView {
  const { surfaces, length: along, bow, operation, firm } = learnt
  const um = (value: number): string => micrometre(value, 1).replace('-', '−')
  const grown = surfaces.filter(({ pieces }) => pieces.length > 0)
  const names = grown.map(({ surface }) => growthName(surface))
  const serials = [...new Set(grown.flatMap(({ pieces }) => pieces.map(({ serial }) => serial)))]
  return {
    unit: figures.unit,
    by: `Operation ${operation}, ${firm}`,
    surfaces: surfaces.map(({ surface, growth, planned, ovality }) => ({
      surface,
      pieces: growth ? String(growth.pieces) : DASH,
      planned: planned ? `${um(planned.least)} to ${um(planned.most)}` : DASH,
      mean: growth ? `${um(growth.mean)} ± ${um(growth.ofMean)}` : DASH,
      spread: growth ? um(growth.spread) : DASH,
      ofAll: growth ? `${um(growth.mean - growth.ofAll)} to ${um(growth.mean + growth.ofAll)}` : DASH,
      ovality: ovality ? `${um(ovality.all)}${ovality.lowerBound ? ' at least' : ''}` : DASH,
      leans: ovality?.leans ? `leans to ${fixed(ovality.leans.at, 0)}°: how did they stand?` : '',
    })),
    strips: names.flatMap((left, index) => (index % 2 === 0 ? [{ left, right: names[index + 1] ?? '' }] : [])),
    heads: grown.map(({ surface }) => surface),
    pieces: serials
      .toSorted((one, other) => one.localeCompare(other, 'en', { numeric: true }))
      .map(serial => ({
        piece: serial,
        cells: grown.map(({ pieces }) => {
          const piece = pieces.find(one => one.serial === serial)
          if (!piece) return { before: '', after: '', growth: '' }
          const { before, after, growth } = piece
          return { before: figures.length(before, 4), after: figures.length(after, 4), growth: um(growth) }
        }),
      })),
    lines: [
      ...(along
        ? [`Length: grows ${um(along.mean)} ± ${um(along.ofMean)} µm as a whole, ${along.pieces} pieces.`]
        : []),
      ...(bow ? [`Bow: up to ${um(bow.most)} µm, ${bow.pieces} pieces.`] : []),
    ],
  }
}
