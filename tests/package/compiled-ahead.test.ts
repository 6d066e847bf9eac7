import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { Script } from 'node:vm'
import { afterAll, describe, expect, it } from 'vitest'
import { BUILT, ROOT } from '../commands/built-command.ts'

const dist = join(ROOT, 'dist')
// Beside the package's own files, which the command finds above its folder.
const copy = mkdtempSync(join(ROOT, 'node_modules/.compiled-'))
afterAll(() => rmSync(copy, { recursive: true }))
cpSync(dist, join(copy, 'dist'), { recursive: true })
for (const name of ['package.json', 'templates', 'parts']) symlinkSync(join(ROOT, name), join(copy, name))

const argv = ['stock', 'parts/OX-098-21.yaml', '--date', '2026-11-25']
const outputOf = (command: string) => spawnSync(process.execPath, [command, ...argv], { encoding: 'utf8', cwd: ROOT })
const copied = join(copy, 'dist/main.cjs')
const compiled = join(copy, 'dist/command.compiled')

describe('the code compiled when the package is built', () => {
  it('is taken by the Node that built it', () => {
    const source = readFileSync(join(dist, 'command.cjs'), 'latin1')
    const script = new Script(`(function (exports, require, module, __filename, __dirname) {${source}\n})`, {
      cachedData: readFileSync(join(dist, 'command.compiled')),
    })
    expect(script.cachedDataRejected).toBe(false)
  })

  it('changes nothing of what the command prints, refused or missing', () => {
    const { stdout, status } = outputOf(BUILT)
    expect(status).toBe(0)
    const whole = readFileSync(compiled)
    for (const other of [whole.subarray(0, 1000), Buffer.from('of another Node'), Buffer.alloc(0)]) {
      writeFileSync(compiled, other)
      expect(outputOf(copied)).toMatchObject({ stdout, status: 0 })
    }
    rmSync(compiled)
    expect(outputOf(copied)).toMatchObject({ stdout, status: 0 })
  })

  it('is read a byte a letter', () => {
    expect(/[^\0-\x7F]/.test(readFileSync(join(dist, 'command.cjs'), 'utf8'))).toBe(false)
  })
})
