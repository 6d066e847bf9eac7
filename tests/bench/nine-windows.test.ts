import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { ROOT } from '../commands/built-command.ts'

type NineWindows = (root: string, desk: string, shop: string) => Promise<() => readonly [unknown, readonly unknown[]]>

it('the work that the bench times is the work: a map, and a program for every set-up', {
  timeout: 60_000,
}, async () => {
  const { nineWindows }: { nineWindows: NineWindows } = await import(
    new URL('./nine-windows.mjs', import.meta.url).href
  )
  const desk = mkdtempSync(join(ROOT, 'node_modules/.bench-'))
  try {
    const work = await nineWindows(ROOT, desk, readFileSync(join(ROOT, 'parts/shop.yaml'), 'utf8'))
    const [map, programs] = work()
    expect(map).toHaveProperty('marks')
    expect(programs.length).toBeGreaterThan(6)
  } finally {
    rmSync(desk, { recursive: true, force: true })
  }
})
