import { expect, it } from 'vitest'
import { workingsView } from '../../src/sheets/views/workings-view.ts'
import { demoPlan } from './demo-packet.ts'

// The demo works gives its own turned roughness and has measured ovality and bow; all else stands as built in.
it('says under a sum whose the numbers are that no other sum gave', () => {
  const { workings } = workingsView(demoPlan())
  const given = (symbol: string, meaning: string) =>
    new Set(workings.filter(row => row.symbol === symbol && row.meaning.startsWith(meaning)).map(row => row.given))
  expect(given('f', 'form error')).toContain('o, b measured')
  expect(given('r', 'compound layer')).toContain('Rz shop file; C handbook; m built in')
})
