/** A value to put into a file before it is read: `stock.bore` and `0.16`; with `by` the number that is there is changed. */
export type Setting = { readonly path: string; readonly value: string; readonly by?: '+' | '-' }

/** `stock.bore=0.16`, `exhaust.opens+=2`, `exhaust.opens-=2`; nothing where there is no path or no sign. */
export function settingOf(text: string): Setting | undefined {
  const at = text.indexOf('=')
  const sign = text[at - 1]
  const by = sign === '+' || sign === '-' ? sign : undefined
  const path = text.slice(0, Math.max(0, by ? at - 1 : at)).trim()
  return path === '' ? undefined : { path, value: text.slice(at + 1), ...(by && { by }) }
}

/** The number at the front of what the file says, changed, all the rest as it was: `48 H6` and `+0.1` make `48.1 H6`. */
export function changedBy(present: string, by: '+' | '-', value: string): string | undefined {
  const found = /^\s*([-+]?\d*\.?\d+)(?![\d.eE])(.*)$/s.exec(present)
  const change = Number(value.trim())
  if (!found || value.trim() === '' || !Number.isFinite(change)) return undefined
  const [, number = '', rest = ''] = found
  const places = Math.max(...[number, value.trim()].map(text => text.split('.')[1]?.length ?? 0))
  return `${(Number(number) + (by === '+' ? change : -change)).toFixed(Math.min(places, 12))}${rest}`
}
