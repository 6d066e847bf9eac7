import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Finding } from '../../src/finding.ts'
import { readBatch } from '../../src/part/read-batch.ts'
import { readBench } from '../../src/part/read-bench.ts'
import { readPart } from '../../src/part/read-part.ts'
import { readShop } from '../../src/part/read-shop.ts'

const FOLDER = new URL('../fixtures/reading/', import.meta.url)
const READERS: Readonly<Record<string, (text: string, file: string) => { readonly findings: readonly Finding[] }>> = {
  part: readPart,
  shop: readShop,
  batch: readBatch,
  bench: readBench,
}

/** Expectations stand in the file, one a line: `# error 4:5 input/unknown-key`. */
const expected = (text: string): readonly string[] =>
  [...text.matchAll(/^# (error|warning|note) (\d+:\d+) (\S+)$/gm)].map(([line]) => line.slice(2))

describe('the findings of a file are the ones it expects', () => {
  it.each(readdirSync(FOLDER))('%s', name => {
    const text = readFileSync(new URL(name, FOLDER), 'utf8')
    const read = READERS[name.split('-')[0] ?? '']
    if (!read) throw new Error(`${name}: no reader`)
    const { findings, ...value } = read(text, name)
    const found = findings.map(({ severity, at, code }) => `${severity} ${at.line}:${at.column} ${code}`)
    expect(found).toEqual(expected(text))
    // Nobody plans with half a part.
    expect(Object.keys(value).length > 0).toBe(!findings.some(({ severity }) => severity === 'error'))
  })
})
