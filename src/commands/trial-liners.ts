import { dirname, join } from 'node:path'
import type { Comparison } from '../compare/compare-plans.ts'
import type { Finding } from '../finding.ts'
import type { Trial } from '../part/trial.ts'
import { bothSides, compareSides } from './compare.ts'
import type { World } from './world.ts'

/** What one liner of a trial has that the old one has not: as drawn, and when its ports open. */
export type LinersDiffer = {
  readonly liner: string
  /** Both files, the old first. */
  readonly of: readonly [string, string]
  readonly drawing: Comparison['sections']['drawing']
  readonly timing: Comparison['timing']
}

/** Nothing is printed of these plans. */
const AS_USUAL = { out: '', format: 'both', paper: 'a4', units: 'mm' } as const

/** Liner A beside each other one, of those whose files the trial names; files count from the trial's own folder. */
export function linersCompared(
  trial: Trial,
  world: World,
): { readonly differ: readonly LinersDiffer[]; readonly findings: readonly Finding[] } {
  const named = trial.liners.flatMap(({ letter, file }) =>
    file === undefined ? [] : [{ letter, file: join(dirname(trial.file), file) }],
  )
  const old = named.find(({ letter }) => letter === 'A')
  if (!old) return { differ: [], findings: [] }
  const options = { ...AS_USUAL, ...(trial.date !== undefined && { date: trial.date }) }
  const each = named.flatMap(({ letter, file }) => {
    if (letter === 'A') return []
    const { was, is } = bothSides(old.file, file, options, world)
    const findings = [...was.findings, ...is.findings].filter(({ severity }) => severity === 'error')
    if (!was.plan || !is.plan) return [{ differ: [], findings }]
    const { sections, timing } = compareSides({ ...was, plan: was.plan }, { ...is, plan: is.plan })
    return [{ differ: [{ liner: letter, of: [old.file, file] as const, drawing: sections.drawing, timing }], findings }]
  })
  return { differ: each.flatMap(({ differ }) => differ), findings: each.flatMap(({ findings }) => findings) }
}
