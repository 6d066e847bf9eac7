import { PORT_LIMITS } from '../handbook/port-limits.ts'
import type { Shop } from '../shop/shop.ts'

/** A threshold of a rule about ports: the works' own, or else the handbook's. */
export function portLimit({ portChecks }: Pick<Shop, 'portChecks'>, rule: string, threshold: string): number {
  const value = portChecks?.[`${rule}.${threshold}`] ?? PORT_LIMITS[rule]?.[threshold]?.value
  if (value === undefined) throw new Error(`${rule} has no threshold ${threshold}`)
  return value
}
