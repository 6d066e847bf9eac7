import type { Millimetre } from '../units.ts'
import type { StockEntry } from './stock.ts'

/** Largest less smallest diameter that a surface's stock is planned for as it comes from hardening; nothing where none is finished after. */
export const ovalityBorne =
  (stock: readonly StockEntry[]) =>
  (surface: string): Millimetre | undefined => {
    const cut = stock.find(entry => entry.surface === surface && entry.kind !== 'face')
    const borne = cut?.basis?.find(({ figure }) => figure === 'ovality')
    return borne && Number(borne.value)
  }
