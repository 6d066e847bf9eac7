import type { Fitted, Part } from './part.ts'

/** What of a liner a piston must know: its running bore, the narrowest, and what it is made of. */
export function fittedOf({ number, revision, material, bore }: Part): Fitted | undefined {
  const [running] = bore.toSorted((a, b) => a.size.nominal - b.size.nominal)
  if (!running) return undefined
  const { nominal, lower, upper } = running.size
  return { number, revision, grade: material.grade, bore: { nominal, lower, upper } }
}
