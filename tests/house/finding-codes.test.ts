import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'

const LIST = 'finding-code.ts'
const codes = [...readFileSync(join('src', LIST), 'utf8').matchAll(/'([a-z]+\/[a-z-]+)'/g)].map(([, code = '']) => code)
const manual = execFileSync(process.execPath, ['.build/manual.mjs', '--tables'], { encoding: 'utf8' })
const said = new Map(
  [...manual.matchAll(/^- `([a-z]+\/[a-z-]+)`: (.*)$/gm)].map(([, code = '', sentence = '']) => [code, sentence]),
)

describe('every code of a finding', () => {
  it('has a sentence in the manual: what it means and what a user does', () => {
    expect(codes.length).toBeGreaterThan(150)
    expect(codes.filter(code => !/^.{30,}\.$/.test(said.get(code) ?? ''))).toEqual([])
  })

  it('is told apart from every other', () => {
    expect(new Set(codes).size).toBe(codes.length)
    expect(new Set(said.values()).size).toBe(said.size)
  })

  it('is given by something', () => {
    const files = readdirSync('src', { recursive: true, encoding: 'utf8' }).filter(
      file => file.endsWith('.ts') && file !== LIST,
    )
    const written = files.map(file => readFileSync(join('src', file), 'utf8')).join('\n')
    expect(codes.filter(code => !written.includes(`'${code}'`))).toEqual([])
  })
})
