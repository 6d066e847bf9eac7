import type { NcWords, Shop } from '../shop/shop.ts'
import type { View } from './view.ts'

/** Thresholds of the rules about ports that the works sets for itself: rule, then threshold. */
export function readPortChecks(root: View): Pick<Shop, 'portChecks'> {
  const view = root.into('port-checks')
  if (!view) return {}
  const entries = view.keys.flatMap(rule => {
    const own = view.into(rule)
    return (own?.keys ?? []).flatMap(threshold => {
      const value = own?.raw(threshold)
      return typeof value === 'number' ? [[`${rule}.${threshold}`, value] as const] : []
    })
  })
  return { portChecks: Object.fromEntries(entries) }
}

/** Words of the control that mills the ports, where they are not those of ISO 6983. */
export function readNcWords(root: View): { readonly ncWords?: NcWords } {
  const view = root.into('nc-words')
  if (!view) return {}
  const word = <K extends keyof NcWords>(name: K, key: string): Pick<NcWords, K> => {
    const text = view.text(key)
    return (text === undefined ? {} : { [name]: text }) as Pick<NcWords, K>
  }
  return {
    ncWords: {
      ...word('toolChange', 'tool-change'),
      ...word('clamp', 'clamp'),
      ...word('unclamp', 'unclamp'),
      ...word('coolantOn', 'coolant-on'),
      ...word('coolantOff', 'coolant-off'),
      ...word('tiltAxis', 'tilt-axis'),
      ...word('tiltClamp', 'tilt-clamp'),
      ...word('tiltUnclamp', 'tilt-unclamp'),
      ...word('spindleUp', 'spindle-up'),
      ...word('clamping', 'clamping'),
    },
  }
}
