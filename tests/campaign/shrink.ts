import { parse, stringify } from 'yaml'
import { type Case, judge } from './judge.ts'

/** Tries for one fault; a case that still has it after so many is small enough to read. */
const MOST_TRIES = 150

/**
 * The smallest case that still shows a fault of the same kind: keys, list entries and whole files are dropped one at a
 * time as long as the fault stays. Text that is no YAML loses lines instead.
 */
export async function shrunk(big: Case, kind: string): Promise<Case> {
  let best = big
  let tries = 0
  for (let better = true; better && tries < MOST_TRIES; ) {
    better = false
    for (const candidate of smaller(best)) {
      tries += 1
      if (tries > MOST_TRIES) break
      const { faults } = await judge(candidate)
      if (!faults.some(fault => fault.kind === kind)) continue
      best = candidate
      better = true
      break
    }
  }
  return best
}

function* smaller(big: Case): Generator<Case> {
  for (const [name, text] of Object.entries(big.files)) {
    const others = Object.fromEntries(Object.entries(big.files).filter(([other]) => other !== name))
    if (name !== 'part.yaml' && big.commands.every(argv => !argv.includes(name))) yield { ...big, files: others }
    for (const shorter of smallerTexts(text)) yield { ...big, files: { ...big.files, [name]: shorter } }
  }
}

function* smallerTexts(text: string): Generator<string> {
  let data: unknown
  try {
    data = parse(text)
  } catch {
    data = undefined
  }
  if (typeof data !== 'object' || data === null) {
    const lines = text.split('\n')
    for (const index of lines.keys()) yield lines.toSpliced(index, 1).join('\n')
    return
  }
  for (const less of without(data)) yield stringify(less)
}

/** The value with one of its keys or entries left out, outer ones first. */
function* without(value: unknown): Generator<unknown> {
  if (Array.isArray(value)) {
    for (const index of value.keys()) yield value.toSpliced(index, 1)
    for (const [index, inner] of value.entries()) for (const less of without(inner)) yield value.with(index, less)
    return
  }
  if (typeof value !== 'object' || value === null) return
  const entries = Object.entries(value)
  for (const [key] of entries) yield Object.fromEntries(entries.filter(([other]) => other !== key))
  for (const [key, inner] of entries) for (const less of without(inner)) yield { ...value, [key]: less }
}
