import { readdirSync, readFileSync } from 'node:fs'
import { partTemplate } from '../../src/part/part-template.ts'

const root = new URL('../../parts/', import.meta.url)

const texts = (wanted: RegExp): readonly string[] =>
  readdirSync(root)
    .filter(name => wanted.test(name))
    .toSorted()
    .map(name => readFileSync(new URL(name, root), 'utf8'))

/** What is mutated: the demo's part files and those that `new` writes, the demo's shop and batch. */
export const PARTS: readonly string[] = [
  ...texts(/^OX-.*\.yaml$/),
  ...(['liner', 'sleeve', 'pin', 'piston'] as const).map(kind => partTemplate(kind)),
]
export const SHOPS: readonly string[] = texts(/^shop\.yaml$/)
export const BATCHES: readonly string[] = texts(/^batch-.*\.yaml$/)
