import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { expect, it } from 'vitest'

const SCRIPTS = ['tests', '.build'].flatMap(folder =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => /\.[mc]js$/.test(name))
    .map(name => join(folder, name)),
)

// The compiler does not read them, and most are run by hand.
it.each(SCRIPTS)('%s finds the modules that it imports', script => {
  const asked = [...readFileSync(script, 'utf8').matchAll(/(?:from|import\() ?'(\.[^']+)'/g)].map(
    ([, path]) => path ?? '',
  )
  const missing = asked.filter(path => !existsSync(join(dirname(script), path)))
  expect(missing).toEqual([])
})

it('knows the scripts of the campaigns', () => {
  expect(SCRIPTS).toEqual(expect.arrayContaining(['tests/campaign/kill.mjs', 'tests/campaign/mutate.mjs']))
})
