import { describe, expect, test } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { BAD_RESULTS } from './bad-results.ts'
import { desk } from './fake-world.ts'
import { BATCH, BOOK, files } from './issued-batch.ts'

describe('a results file with', () => {
  test.each(BAD_RESULTS)('%s', async (_, file, text, finding) => {
    const world = desk(files({ [file]: text }))
    const status = await run(['record', 'liner.yaml', file, '--batch', BATCH], world)
    const [place = '', severity = '', code = ''] = finding.split(' ')
    const found = world
      .complained()
      .split('\n')
      .filter(line => line.startsWith(`${file}:`) && !line.includes('  note  '))
    expect(found[0]).toMatch(new RegExp(`^${file.replace('.', '\\.')}:${place} {2}${severity} {2}${code} {2}\\S`))
    // One slip, one finding; an error keeps all of the file out of the book, and the hint says what to do.
    expect(found).toHaveLength(1)
    expect(status).toBe(severity === 'error' ? 1 : 0)
    expect(world.files.has(BOOK)).toBe(severity !== 'error')
  })
})
