import type { CasePlan } from '../hardening/case-plan.ts'
import { sizeLabel } from './arriving.ts'
import { AS_HARDENED, firstCuts } from './case-words.ts'
import type { Quantity, Returned } from './order.ts'
import type { OrderSource } from './order-source.ts'
import { count, length } from './quantity.ts'
import { type Draft, point, type Said, say, sentence } from './say.ts'

/** Pieces measured before and after, and read for hardness: what a load scatters within itself shows on a few. Common practice, no source. */
const MARKED = 5
/** Diagonally across as well: two directions miss an oval that lies between them. Common practice, no source. */
const PLACES = { angles: 4, planes: 2 } as const

export const marked = ({ batch }: OrderSource): number => Math.min(MARKED, batch.start)

/** What the finishing stock is planned for, each for itself: out of round and bow add up in different ways. */
export function formAsked(source: OrderSource): { readonly ovality: readonly Quantity[]; readonly bow?: Quantity } {
  const cuts = firstCuts(source).filter(({ kind }) => kind !== 'face')
  const ovality = cuts.flatMap(entry => {
    const most = source.ovality(entry.surface)
    return most === undefined ? [] : [length('asked', `ovality of ${entry.surface}`, { most }, { state: AS_HARDENED })]
  })
  const bows = cuts.flatMap(({ basis }) => basis?.find(({ figure }) => figure === 'bow')?.value ?? [])
  return {
    ovality,
    ...(bows.length > 0 && {
      bow: length('asked', 'bow of the axis', { most: Math.min(...bows) }, { state: AS_HARDENED }),
    }),
  }
}

export type Forms = ReturnType<typeof formAsked>

export function distortion(
  source: OrderSource,
  { growth }: Pick<CasePlan, 'growth'>,
  { ovality, bow }: Forms,
): readonly Draft[] {
  const bored = source.ladders.some(({ kind }) => kind === 'bore')
  const grown = (side: 'outside' | 'bore', label: string) => {
    const { least, nominal, most } = growth[side]
    return length('expected', label, { value: nominal, least, most }, { state: 'in hardening' })
  }
  const outside = grown('outside', 'growth of the outside, a side')
  const { least, nominal, most } = growth.bore
  const opened = length(
    'expected',
    'opening of the bore, a side',
    { value: -nominal, least: -most, most: -least },
    { state: 'in hardening' },
  )
  return point(
    'Sizes and distortion',
    bored
      ? growth.bore.nominal < 0
        ? say`We expect the outside to grow ${outside} a side and the bore to open ${opened} a side.`
        : say`We expect the outside to grow ${outside} a side and the bore to close ${grown('bore', 'closing of the bore, a side')} a side.`
      : say`We expect the outside to grow ${outside} a side.`,
    ...ovality.map((most): Said => say`${sentence(most.label)}, largest less smallest diameter, not over ${most}.`),
    bow && say`Bow, the axis off straight over the length, not over ${bow}.`,
    say`Measure before and after on ${count('asked', 'pieces that we mark', { value: marked(source) })} pieces that we mark, ${count('asked', 'angles measured at', { value: PLACES.angles })} angles in ${count('asked', 'planes measured in', { value: PLACES.planes })} planes; report both on the form.`,
    'The first figures set our sizes for the next batch.',
  )
}

/** Sizes before and after, and what is out of true, of the pieces that we mark. */
export function distortionReadings(source: OrderSource, { ovality, bow }: Forms): readonly Omit<Returned, 'number'>[] {
  const piece = (one: Quantity) => ({ ...one, of: 'piece', readings: marked(source) }) as const
  const measured = [...new Map(firstCuts(source).map(cut => [sizeLabel(cut), cut])).keys()]
  return [
    ...measured.flatMap(label => [
      piece(length('expected', label, {}, { state: 'before' })),
      piece(length('expected', label, {}, { state: 'after' })),
    ]),
    ...ovality.map(piece),
    ...(bow ? [piece(bow)] : []),
  ]
}
