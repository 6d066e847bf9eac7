import { expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const files = { 'part.yaml': demo('OX-131-07.yaml'), 'shop.yaml': demo('shop.yaml') }
const WRITE = ['ports', 'part.yaml', '--nc', 'nc'] as const
const isProgram = (path: string): boolean => path.endsWith('.nc')

/** The same desk with the folder there, as the disk would have it. */
const withFolder = (world: ReturnType<typeof desk>) => ({
  ...world,
  exists: (path: string) => path === 'nc' || world.exists(path),
})

it('no program of another fingerprint is written over unasked, what is stale is named, and a list says what belongs', async () => {
  const world = desk(files)
  expect(await run(WRITE, world)).toBe(0)
  const written = [...world.files.keys()].filter(isProgram)
  expect(written.length).toBeGreaterThan(1)
  const list = String(world.files.get('nc/OX-131-07-A-programs.txt'))
  for (const path of written) expect(list).toContain(path.replace('nc/', ''))

  const [first = ''] = written
  const older = String(world.files.get(first)).replace(/fingerprint: \w+/, 'fingerprint: 0123456789ab')
  const stale = 'nc/OX-131-07-A-9-tilt-45-mill-windows-end-mill-3.nc'
  const later = withFolder(desk({ ...files, [first]: older, [stale]: older }))
  expect(await run(WRITE, later)).toBe(2)
  expect(later.complained()).toContain('0123456789ab')
  expect(later.files.get(first)).toBe(older)

  expect(await run([...WRITE, '--force'], later)).toBe(0)
  expect(later.files.get(first)).not.toBe(older)
  expect(later.complained()).toContain(`${stale}: stale, of fingerprint 0123456789ab`)
  expect(later.files.get(stale)).toBe(older)
})

it('no program is written without a shop file: the fixture is one that nobody measured', async () => {
  const world = desk({ 'part.yaml': files['part.yaml'] })
  expect(await run(WRITE, world)).toBe(2)
  expect(world.complained()).toMatch(
    /ports\/fixture-not-measured[\s\S]+no program is written on a fixture that nobody measured/,
  )
  expect([...world.files.keys()].filter(isProgram)).toEqual([])
})
