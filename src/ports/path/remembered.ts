import type { PortWindow } from '../port.ts'

/**
 * What is worked out of a window once, however often levels, steps, times and programs ask for it. A window never changes, so
 * what was worked out of it stays true; it is forgotten with the window.
 */
const known = new WeakMap<PortWindow, Map<string, unknown>>()

export function remembered<T>(window: PortWindow, what: string, make: () => T): T {
  const ofWindow = known.get(window) ?? new Map<string, unknown>()
  known.set(window, ofWindow)
  if (!ofWindow.has(what)) ofWindow.set(what, make())
  // Only this maker writes under this name.
  return ofWindow.get(what) as T
}
