import { stripVTControlCharacters } from 'node:util'
import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const liner = { 'liner.yaml': demo('OX-098-21.yaml'), 'shop.yaml': demo('shop.yaml') }
const COMMANDS = ['new', 'check', 'route', 'stock', 'ports', 'plan', 'traveller', 'subcontract', 'workings']

describe('the command line', () => {
  it.each(COMMANDS)('%s --help shows a worked example', async name => {
    const world = desk()
    expect(await run([name, '--help'], world)).toBe(0)
    expect(world.printed()).toMatch(new RegExp(`Examples?:\\n  linerwright ${name} `))
  })

  it.each([
    [['chek', 'liner.yaml'], /unknown command 'chek'\s+\(Did you mean check\?\)/],
    [['stock', 'liner.yaml', '--untis', 'inch'], /unknown option '--untis'\s+\(Did you mean --units\?\)/],
    [['stock'], /missing required argument 'part'/],
    [['stock', 'liner.yaml', '--quantity', 'many'], /a whole number from 1 to 1000 is wanted, got "many"/],
    [['stock', 'liner.yaml', '--date', '2026-02-30'], /a date YYYY-MM-DD is wanted, got "2026-02-30"/],
    [['stock', 'nowhere.yaml'], /nowhere\.yaml: cannot be read: there is no such file/],
    [['new', 'gear', 'gear.yaml'], /Allowed choices are liner, sleeve, pin, piston/],
    [['new', 'liner', 'liner.yaml'], /liner\.yaml is there already: --force writes over it/],
  ])('%j ends with status 2 and says why', async (argv, why) => {
    const world = desk(liner)
    expect(await run(argv, world)).toBe(2)
    expect(world.complained()).toMatch(why)
    expect(world.printed()).toBe('')
  })

  it.each(['route', 'stock', 'ports', 'plan', 'workings'])(
    '%s --json prints JSON and nothing else on standard output',
    async name => {
      const world = desk(liner)
      expect(await run([name, 'liner.yaml', '--json'], world)).toBe(0)
      expect(JSON.parse(world.printed())).toMatchObject({ part: { number: 'OX-098-21' } })
    },
  )

  it('a part with faults ends with status 1, each fault with its place', async () => {
    const world = desk({ ...liner, 'liner.yaml': demo('OX-098-21.yaml').replace('height: 16.1', 'hieght: 16.1') })
    expect(await run(['check', 'liner.yaml'], world)).toBe(1)
    expect(world.printed()).toMatch(/^liner\.yaml:\d+:\d+ {2}error {2}input\/unknown-key {2}unknown key "hieght"/m)
  })

  it('new writes a part file that check takes without an error', async () => {
    const world = desk()
    expect(await run(['new', 'liner', 'OX-130-01.yaml'], world)).toBe(0)
    expect(await run(['check', 'OX-130-01.yaml'], world)).toBe(0)
  })

  it('the same command prints the same bytes twice', async () => {
    const [first, second] = [desk(liner), desk(liner)]
    await run(['plan', 'liner.yaml', '--json'], first)
    await run(['plan', 'liner.yaml', '--json'], second)
    expect(first.printed()).toBe(second.printed())
  })
})

describe('what if', () => {
  it('--set shows the stock as it stands and changed, and leaves the file alone', async () => {
    const world = desk(liner)
    expect(await run(['stock', 'liner.yaml', '--set', 'stock.bore=0.22', '--json'], world)).toBe(0)
    const { before, after } = JSON.parse(world.printed())
    const bore = (side: { stock: { surface: string; onDiameter: { nominal: number } }[] }) =>
      side.stock.find(({ surface }) => surface === 'bore')?.onDiameter.nominal
    expect(bore(after)).toBeCloseTo(0.22, 6)
    expect(bore(before)).not.toBeCloseTo(0.22, 2)
    expect(world.files.get('liner.yaml')).toBe(liner['liner.yaml'])
  })

  it('a path that no file has is a finding with a suggestion', async () => {
    const world = desk(liner)
    expect(await run(['stock', 'liner.yaml', '--set', 'stock.boer=0.3'], world)).toBe(1)
    expect(world.complained()).toMatch(/input\/unknown-setting {2}stock\.boer cannot be set.*\n {2}hint: .*bore/)
  })

  it('--sweep --svg draws the margins, shaded where both ends hold', async () => {
    const world = desk(liner)
    const swept = ['stock', 'liner.yaml', '--sweep', 'stock.bore=0.10:0.40:0.02']
    expect(await run([...swept, '--svg', 'pictures'], world)).toBe(0)
    const [name, drawn] = [...world.files].find(([path]) => path.endsWith('.svg')) ?? []
    expect(world.printed().trimEnd().split('\n').at(-1)).toBe(name)
    expect(String(drawn)).toMatch(
      /^<svg [^>]*viewBox="0 0 510 380".*<title>Margins of .* from 0\.1 to 0\.4\. Both ends hold/,
    )
    expect(await run(['stock', 'liner.yaml', '--svg', 'pictures'], world)).toBe(2)
    expect(world.complained()).toMatch(/--svg draws a sweep/)
  })

  it('verdicts are coloured on a terminal that shows colour, and the columns stay where they are', async () => {
    const plain = desk(liner)
    const coloured = { ...desk(liner), terminal: { out: true, err: false, colour: true } }
    const printed: string[] = []
    await run(['stock', 'liner.yaml'], plain)
    await run(['stock', 'liner.yaml'], { ...coloured, out: text => void printed.push(text) })
    const out = printed.join('')
    expect(out).toContain('\u001b[32mok\u001b[0m')
    expect(stripVTControlCharacters(out)).toBe(plain.printed())
  })

  it('--sweep plans every value, ends included', async () => {
    const world = desk(liner)
    expect(await run(['stock', 'liner.yaml', '--sweep', 'stock.bore=0.10:0.40:0.02', '--json'], world)).toBe(0)
    const { points } = JSON.parse(world.printed())
    expect(points).toHaveLength(16)
    expect(points.map(({ value }: { value: number }) => value)).toEqual(
      Array.from({ length: 16 }, (_, i) => Math.round(10 + 2 * i) / 100),
    )
  })

  it.each(['stock.bore', 'stock.bore=1:0:0.1', 'stock.bore=0:1:0'])(
    '--sweep %s is refused with what it wants',
    async text => {
      const world = desk(liner)
      expect(await run(['stock', 'liner.yaml', '--sweep', text], world)).toBe(2)
      expect(world.complained()).toMatch(/--sweep wants path=from:to:step/)
    },
  )
})

describe('files of the ports', () => {
  it('--nc writes a program for every tilt and tool, each with its setting in the head', async () => {
    const world = desk(liner)
    expect(await run(['ports', 'liner.yaml', '--nc', 'nc'], world)).toBe(0)
    const programs = [...world.files].filter(([name]) => name.startsWith('nc/')).map(([, text]) => String(text))
    expect(programs.length).toBeGreaterThanOrEqual(6)
    for (const line of ['(tilt: 15.000)', '(cutter: 2.000)', '(head-faces: +X)']) {
      expect(programs.some(text => text.includes(line))).toBe(true)
    }
  })

  it('--svg writes the check paper at true size, in millimetres', async () => {
    const world = desk(liner)
    expect(await run(['ports', 'liner.yaml', '--svg', 'svg'], world)).toBe(0)
    expect(String(world.files.get('svg/OX-098-21-B-map-true-size.svg'))).toMatch(/^<svg [^>]*width="[\d.]+mm"/)
  })

  it('--svg draws in the units that are asked for', async () => {
    const world = desk({ 'liner.yaml': demo('OX-098-21.yaml') })
    expect(await run(['ports', 'liner.yaml', '--svg', 'svg', '--units', 'inch'], world)).toBe(0)
    expect(String(world.files.get('svg/OX-098-21-B-map-true-size.svg'))).toContain('50 mm (1.969 in)')
    expect(String(world.files.get('svg/OX-098-21-B-fixture-0.svg'))).toContain('in inches')
    const swept = ['stock', 'liner.yaml', '--sweep', 'stock.bore=0.10:0.40:0.10', '--svg', 'svg', '--units', 'inch']
    expect(await run(swept, world)).toBe(0)
    expect(String(world.files.get('svg/OX-098-21-B-stock.bore.svg'))).toContain(
      'to spare to clean up, inches each side',
    )
  })

  it('a part number with slashes stays within the folder', async () => {
    const world = desk({
      ...liner,
      'liner.yaml': demo('OX-098-21.yaml').replace('number: OX-098-21', 'number: ../OX/1'),
    })
    expect(await run(['ports', 'liner.yaml', '--nc', 'nc'], world)).toBe(0)
    const written = [...world.files.keys()].filter(name => name.endsWith('.nc'))
    expect(written.length).toBeGreaterThan(0)
    for (const name of written) expect(name).toMatch(/^nc\/[^/]+$/)
  })

  it('a plan with errors gets no files', async () => {
    const world = desk({ ...liner, 'liner.yaml': demo('OX-098-21.yaml').replace('opens: 106', 'opens: 20') })
    expect(await run(['ports', 'liner.yaml', '--nc', 'nc', '--json'], world)).toBe(1)
    expect([...world.files.keys()].some(name => name.startsWith('nc/'))).toBe(false)
  })
})

it('prints what stops a plan before what does not, wherever it stands in the file', async () => {
  const text = demo('OX-098-21.yaml').replace('depth: min 0.25', 'depth: min 0.95')
  const world = desk({ ...liner, 'liner.yaml': text })
  expect(await run(['check', 'liner.yaml'], world)).toBe(1)
  const order = ['error', 'warning', 'note']
  const found = [...world.printed().matchAll(/^liner\.yaml:\d+:\d+ {2}(\w+) {2}/gm)].map(
    ([, severity = '']) => severity,
  )
  expect(new Set(found).size).toBeGreaterThan(1)
  expect(found).toEqual(found.toSorted((a, b) => order.indexOf(a) - order.indexOf(b)))
  expect(found[0]).toBe('error')
})
