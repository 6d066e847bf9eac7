import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import { demo, desk } from './fake-world.ts'

const part = demo('OX-131-07.yaml')
const files = { 'p.yaml': part, 'shop.yaml': demo('shop.yaml') }

describe('--batch with a number', () => {
  it.each([
    ['', 'number is an empty text'],
    ['  ', 'number is an empty text'],
    ['26\n31', 'number has a line end or a control character in it'],
    ['26\u001b[31m31', 'number has a line end or a control character in it'],
    ['26\u202e31', 'number has a line end or a control character in it'],
    ['1'.repeat(5000), 'characters; at most'],
    ['1'.repeat(61), 'number has 61 characters; paper has room for 60'],
  ])('%j is refused as in a batch file, in one line', async (batch, why) => {
    const world = desk(files)
    expect(await run(['stock', 'p.yaml', '--batch', batch], world)).toBe(2)
    expect(world.complained()).toContain(`linerwright: --batch: `)
    expect(world.complained()).toContain(why)
    expect(world.complained().length).toBeLessThan(300)
    expect(world.complained().trimEnd()).not.toMatch(/\n/)
    expect(world.printed()).toBe('')
  })

  it.each(['2631', '24-117', 'B 7/2', "O'Hara: {x}", '007'])('%j is taken as it stands', async batch => {
    const world = desk(files)
    expect(await run(['plan', 'p.yaml', '--json', '--batch', batch], world)).toBe(0)
    expect(JSON.parse(world.printed()).batch.number).toBe(batch)
  })
})

describe('letters that the typeface lacks', () => {
  it('are a warning of check, at their place, and the packet is printed with a box for each', async () => {
    const titled = part.replace('title: Valve sleeve', 'title: Valve 銹 sleeve 🙂')
    const world = desk({ ...files, 'p.yaml': titled })
    expect(await run(['check', 'p.yaml', '--batch', '2631 🙂'], world)).toBe(0)
    expect(world.printed()).toMatch(
      /^p\.yaml:3:\d+ {2}warning {2}input\/letters {2}title has "銹" \(U\+92B9\), "🙂" \(U\+1F642\)/m,
    )
    expect(world.printed()).toMatch(/^--batch:1:1 {2}warning {2}input\/letters {2}number has "🙂"/m)
    expect(await run(['traveller', 'p.yaml', '--batch', '2631 🙂'], world)).toBe(0)
    expect([...world.files.keys()].filter(name => name.startsWith('out/'))).toHaveLength(7)
  })

  it('in a part number give a scan code in plain ASCII and files under the name', async () => {
    const world = desk({ ...files, 'p.yaml': part.replace('number: OX-131-07', 'number: ÖX-漢-7') })
    expect(await run(['traveller', 'p.yaml', '--format', 'html'], world)).toBe(0)
    expect([...world.files.keys()]).toContain('out/ÖX-漢-7-A-draft/packet.html')
    expect(String(world.files.get('out/ÖX-漢-7-A-draft/packet.html'))).toContain("default-src 'none'")
  })
})

describe('what a file says on the terminal', () => {
  it('moves no cursor and sets no colour: control characters are written out', async () => {
    const world = desk({ ...files, 'p.yaml': part.replace('grade: 42CrMo4', 'grade: "\\e[31m42\\rCrMo4"') })
    expect(await run(['check', 'p.yaml'], world)).toBe(1)
    expect(world.printed()).not.toMatch(/(?!\n)\p{Cc}/u)
  })
})
