import { expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const files = {
  'parts/trial.yaml': demo('trial-2655.yaml'),
  'parts/shop.yaml': demo('shop.yaml'),
  'parts/OX-098-21.yaml': demo('OX-098-21.yaml'),
  'parts/revision-C/OX-098-21.yaml': demo('revision-C/OX-098-21.yaml'),
}

it('puts beside the result what compare finds between the liners, their files counted from the trial’s folder', async () => {
  const world = desk(files)
  expect(await run(['trial', 'parts/trial.yaml'], world)).toBe(0)
  expect(world.printed()).toContain('What differs between the liners: A → B')
  const other = desk(files)
  await run(['compare', 'parts/OX-098-21.yaml', 'parts/revision-C/OX-098-21.yaml', '--date', '2027-02-09'], other)
  const timing = other.printed().match(/ {2}exhaust opens at .*\n/)?.[0] ?? 'compare says nothing of the exhaust'
  expect(world.printed()).toContain(timing)
  expect(world.printed()).toContain('ports, exhaust, opens: 106 → 104')
})

it('says nothing of it where a file is missing from the trial, and which one where it is not on the disk', async () => {
  const one = desk({ ...files, 'parts/trial.yaml': files['parts/trial.yaml'].replace(', file: OX-098-21.yaml', '') })
  expect(await run(['trial', 'parts/trial.yaml'], one)).toBe(0)
  expect(one.printed()).not.toContain('What differs between the liners')
  const { 'parts/revision-C/OX-098-21.yaml': _, ...without } = files
  const gone = desk(without)
  expect(await run(['trial', 'parts/trial.yaml'], gone)).toBe(2)
  expect(gone.complained()).toContain('parts/revision-C/OX-098-21.yaml')
})
