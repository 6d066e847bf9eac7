import { materialOf } from '../handbook/materials.ts'
import type { Machine, Money } from '../shop/shop.ts'
import { moneyOf } from './read-firms.ts'
import type { View } from './view.ts'

const LIFE = { over: 0, upTo: 10_000 }

/** Rates, prices of bar and of what wears; nothing where the file says none of them. */
export function readMoney(root: View, machines: readonly Machine[]): { readonly money?: Money } {
  const rates = root.into('rates')
  const bars = root.into('bar-prices')
  const cutters = readCutters(root)
  if (!rates && !bars && Object.keys(cutters).length === 0) return {}
  for (const name of rates?.keys ?? []) {
    if (machines.some(({ workCentre }) => workCentre === name)) continue
    const hint = `work centres: ${machines.map(({ workCentre }) => workCentre).join(', ')}`
    rates?.report({ code: 'input/not-used', message: `no machine is called "${name}"`, hint }, name, 'warning')
  }
  return {
    money: {
      currency: root.into('shop')?.text('currency') ?? '',
      rates: pricesIn(rates, name => name),
      bars: pricesIn(bars, grade => materialOf(grade)?.grade ?? grade),
      cutters,
    },
  }
}

const pricesIn = (view: View | undefined, called: (key: string) => string): Readonly<Record<string, number>> =>
  Object.fromEntries((view?.keys ?? []).map(key => [called(key), (view && moneyOf(view, key)) ?? 0]))

const readCutters = (root: View): Money['cutters'] =>
  Object.fromEntries(
    root.each('tools').flatMap(view => {
      const name = view.text('name')
      const price = moneyOf(view, 'price')
      if (name === undefined || price === undefined) return []
      const life = view.quantity('life', 'minutes', LIFE)
      return [[name, { price, ...(life !== undefined && { life }) }] as const]
    }),
  )
