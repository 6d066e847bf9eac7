import { describe, expect, it } from 'vitest'
import { jsonText } from '../../src/commands/json.ts'
import { complain } from '../../src/commands/outer-shell.ts'
import { run } from '../../src/commands/program.ts'
import { FileProblem } from '../../src/commands/world.ts'
import { demo, desk } from './fake-world.ts'

const part = { 'part.yaml': demo('OX-112-03.yaml'), 'shop.yaml': demo('shop.yaml') }
const other = { 'other.yaml': demo('OX-105-02.yaml') }

describe('the outer shell', () => {
  const shown = (error: unknown, trace = false) => {
    let text = ''
    const err = (more: string) => {
      text += more
    }
    return { status: complain(error, { err, runsOn: 'a desk' }, trace), text }
  }

  it('a refusal is one line and status 2, whatever stands in it', () => {
    const { status, text } = shown(new FileProblem('a\nb\u001b[31m\u0085: cannot be read'))
    expect(status).toBe(2)
    expect(text).toBe('linerwright: a\\u000ab\\u001b[31m\\u0085: cannot be read\n')
  })

  it('a fault of ours is one short line that says so and what to send, status 3', () => {
    const { status, text } = shown(new TypeError(`x is not a function\n${'minified'.repeat(100_000)}`))
    expect(status).toBe(3)
    expect(text).toMatch(/^linerwright: a fault of the program, not of your files: TypeError: x is not a function \(/)
    expect(text).toMatch(/send this line .* part, shop and batch files/)
    expect(text.trimEnd()).not.toContain('\n')
    expect(text.length).toBeLessThan(600)
  })

  it('a fault of ours shows where it is when that is asked for, and not before', () => {
    expect(shown(new TypeError('x'), true).text).toMatch(/\n\s+at .*outer-shell\.test/)
    expect(shown(new TypeError('x')).text).not.toMatch(/\n\s+at /)
  })

  it('catches what a command throws, with --trace anywhere on the line', async () => {
    const broken = desk(part)
    const world = {
      ...broken,
      today: () => {
        throw new TypeError('the clock has stopped')
      },
    }
    expect(await run(['plan', 'part.yaml'], world)).toBe(3)
    expect(broken.complained()).toMatch(/TypeError: the clock has stopped/)
    expect(broken.complained()).not.toMatch(/\n\s+at /)
    expect(await run(['plan', 'part.yaml', '--trace'], world)).toBe(3)
    expect(broken.complained()).toMatch(/\n\s+at /)
  })
})

describe('several files', () => {
  it('one that cannot be read is reported where it stands, the others are done, and the worst status is last', async () => {
    const world = desk({ ...part, ...other })
    expect(await run(['check', 'part.yaml', 'nowhere.yaml', 'other.yaml'], world)).toBe(2)
    expect(world.printed()).toMatch(/^part\.yaml: /m)
    expect(world.printed()).toMatch(/^other\.yaml: /m)
    expect(world.complained()).toBe('linerwright: nowhere.yaml: cannot be read: there is no such file\n')
  })

  it('traveller lists what it has written although a later file is refused', async () => {
    const world = desk({ ...part, ...other })
    expect(await run(['traveller', 'part.yaml', 'nowhere.yaml', '--format', 'html'], world)).toBe(2)
    expect(world.printed()).toBe('out/OX-112-03-A-draft/packet.html\nout/OX-112-03-A-draft/plan.json\n')
    expect(world.files.has('out/OX-112-03-A-draft/packet.html')).toBe(true)
  })

  it('a bar on a terminal is cleared before anything is written beside it', async () => {
    const files = { ...part, 'a.yaml': part['part.yaml'], 'b.yaml': part['part.yaml'] }
    const quiet = desk(files)
    const world = { ...quiet, terminal: { out: true, err: true, colour: false, columns: 30 } }
    expect(await run(['check', 'part.yaml', 'a.yaml', 'nowhere.yaml', 'b.yaml'], world)).toBe(2)
    expect(quiet.complained()).toContain('\r\u001b[Klinerwright: nowhere.yaml: cannot be read')
    expect(quiet.complained().endsWith('\r\u001b[K')).toBe(true)
    for (const line of quiet.complained().replaceAll('\r\u001b[K', '\n').split('\n')) {
      if (/[█░]/.test(line)) expect([...line].length).toBeLessThan(30)
    }
  })
})

describe('options', () => {
  it.each([
    ['check', '--operation', '10'],
    ['check', '--units', 'inch'],
    ['stock', '--operation', '10'],
    ['ports', '--operation', '10'],
    ['plan', '--operation', '10'],
    ['traveller', '--operation', '10'],
    ['workings', '--units', 'inch'],
  ])('%s does not take %s, which it would not obey', async (name, ...option) => {
    const world = desk(part)
    expect(await run([name, 'part.yaml', ...option], world)).toBe(2)
    expect(world.complained()).toContain(`unknown option '${option[0]}'`)
  })

  it.each([['workings', '--json'], ['workings'], ['route', '--json'], ['route'], ['subcontract']])(
    '%s refuses an operation that the route does not have, with the list of those it has',
    async (...argv) => {
      const world = desk(part)
      const [name = '', ...rest] = argv
      expect(await run([name, 'part.yaml', '--operation', '11', ...rest], world)).toBe(2)
      expect(world.complained()).toMatch(/there is no operation 11: 10 Saw blanks, 20 /)
      expect(world.printed()).toBe('')
    },
  )

  it.each(['route', 'workings'])(
    '%s --operation shows that operation and no other, as text and as data',
    async name => {
      const world = desk(part)
      expect(await run([name, 'part.yaml', '--operation', '20', '--json'], world)).toBe(0)
      const { operations, workings } = JSON.parse(world.printed())
      const numbers = (operations ?? workings).map(
        (one: { number?: number; operation?: number }) => one.number ?? one.operation,
      )
      expect(new Set(numbers)).toEqual(new Set([20]))
    },
  )
})

describe('plain data', () => {
  it('carries twelve digits, so that the last ones of the machine never show', () => {
    expect(jsonText({ sum: 0.1 + 0.2, small: 1.234567890123456e-9, count: 123_456_789_012_345 })).toBe(
      '{\n  "sum": 0.3,\n  "small": 1.23456789012e-9,\n  "count": 123456789012345\n}\n',
    )
  })

  it('the whole plan has no number with more', async () => {
    const world = desk(part)
    await run(['plan', 'part.yaml', '--json'], world)
    let count = 0
    JSON.parse(world.printed(), (_, value) => {
      if (typeof value !== 'number') return value
      count++
      expect(value).toBe(Number(value.toPrecision(12)))
      return value
    })
    expect(count).toBeGreaterThan(500)
  })
})

describe('an empty shop file', () => {
  it('is a finding, not the built-in shop', async () => {
    const world = desk({ ...part, 'shop.yaml': '' })
    expect(await run(['check', 'part.yaml'], world)).toBe(1)
    expect(world.printed()).toMatch(/^shop\.yaml:1:1 {2}error {2}input\/empty/m)
  })

  it('is no hindrance to a part that has none: the built-in shop stands in', async () => {
    const world = desk({ 'part.yaml': part['part.yaml'] })
    expect(await run(['stock', 'part.yaml', '--set', 'fixture.face-distance=90'], world)).toBe(0)
  })
})
