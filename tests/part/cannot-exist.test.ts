import { describe, expect, it } from 'vitest'
import { GROOVE_DEPTHS, PROCESS_LIMITS_SOURCE, TURNING_LIMITS } from '../../src/handbook/process-limits.ts'
import { readPart } from '../../src/part/read-part.ts'
import { planRoute } from '../../src/route/plan-route.ts'
import { BUILT_IN_SHOP } from '../../src/shop/built-in-shop.ts'

type Sleeve = {
  kind?: string
  outside?: string
  bore?: string
  ports?: string
  grade?: string
  length?: string
  top?: string
}
const sleeve = ({
  kind = 'sleeve',
  outside = '42 g6',
  bore = '32 H7',
  ports = '',
  grade = '42CrMo4',
  top = '',
}: Sleeve) =>
  `part: {number: OX-098-95, title: Sleeve, revision: A, kind: ${kind}}
material: {grade: ${grade}, hardness: 300 HV}
body: {length: 60 ±0.1, outside: ${outside}, bore: ${bore}${top}}
${ports}`

/** Severity and message of what is said of the part, read and put in order. */
function said(text: string): readonly string[] {
  const { part, findings } = readPart(text, 'part.yaml')
  const all = part ? [...findings, ...planRoute(part, BUILT_IN_SHOP).findings] : findings
  return all.map(({ severity, message }) => `${severity}: ${message}`)
}
const port = (more: string) => `ports: [{name: oil, at: 0, width: 8, corner: 2, ${more}}]\n`

// Limits: common practice, no source.
describe('a part that no works can make is refused with the limit, and its near miss is not', () => {
  it.each<[string, Sleeve, Sleeve, RegExp]>([
    [
      'a wall under half a millimetre',
      { outside: '32.9 ±0.02' },
      { outside: '33.2 ±0.02' },
      /wall .* 0\.50 mm is the least/,
    ],
    [
      'a wall of less than 1.5 % of the bore',
      { bore: '{size: 100 H7}', outside: '102.8 ±0.02' },
      { bore: '{size: 100 H7}', outside: '103.2 ±0.02' },
      /1\.50 mm is the least/,
    ],
    [
      'the same in iron, half as much again',
      { bore: '100 H7', outside: '104.3 ±0.02', grade: 'EN-GJL-250' },
      { bore: '100 H7', outside: '104.7 ±0.02', grade: 'EN-GJL-250' },
      /2\.25 mm is the least/,
    ],
    [
      'a bore within hundredths of a micrometre',
      { bore: '32 ±0.00001' },
      { bore: '32 ±0.002' },
      /honing, which reaches 0\.003 mm/,
    ],
    [
      'a bore smoother than any',
      { bore: '{size: 32 H7, Ra: 0.0001}' },
      { bore: '{size: 32 H7, Ra: 0.05}' },
      /reaches 0\.05 µm Ra/,
    ],
    [
      'iron honed to a mirror',
      { bore: '{size: 32 H7, Ra: 0.1}', grade: 'EN-GJL-250' },
      { bore: '{size: 32 H7, Ra: 0.2}', grade: 'EN-GJL-250' },
      /honing of iron/,
    ],
    [
      'a bore rounder than a hone leaves',
      { bore: '{size: 32 H7, cylindricity: 0.0005}' },
      { bore: '{size: 32 H7, cylindricity: 0.001}' },
      /reaches 0\.001 mm/,
    ],
    [
      'an outside closer than grinding',
      { outside: '42 ±0.001' },
      { outside: '42 ±0.002' },
      /cylindrical grinding, which reaches 0\.003 mm/,
    ],
    [
      'a face smoother than turning',
      { top: ', bottom: {Ra: 0.2}' },
      { top: ', bottom: {Ra: 0.8}' },
      /finish turning, which reaches 0\.4 µm/,
    ],
    [
      'a bore too small to turn',
      { kind: 'pin', bore: '2.5 H9' },
      { kind: 'pin', bore: '3 H9' },
      /under 3 mm is not turned/,
    ],
    [
      'a bore two millimetres closer at one end',
      { bore: '{size: 32 H7, taper: 2}' },
      { bore: '{size: 32 H7, taper: 0.05}' },
      /taper must be .* 0\.25/,
    ],
    [
      'a port at the very top',
      { ports: port('top: 0.1, height: 6') },
      { ports: port('top: 0.5, height: 6') },
      /0\.5 mm is the least land/,
    ],
    [
      'a port at the very bottom',
      { ports: port('top: 50, bottom: 59.7') },
      { ports: port('top: 50, bottom: 59.5') },
      /0\.5 mm is the least land/,
    ],
    [
      'a groove that no insert reaches into',
      {
        outside: '[{to: 20, size: 42 g6, name: a}, {to: 20.5, size: 36 h11, name: g}, {to: 60, size: 42 g6, name: b}]',
      },
      {
        outside: '[{to: 20, size: 42 g6, name: a}, {to: 20.5, size: 39 h11, name: g}, {to: 60, size: 42 g6, name: b}]',
      },
      /groove 0\.5 mm wide and 3 mm deep; an insert of that width goes 1\.6 mm/,
    ],
    [
      'a groove in the bore narrower than any insert',
      { bore: '[{to: 20, size: 32 H7, name: a}, {to: 20.4, size: 33 H11, name: g}, {to: 60, size: 32 H7, name: b}]' },
      { bore: '[{to: 20, size: 32 H7, name: a}, {to: 20.5, size: 33 H11, name: g}, {to: 60, size: 32 H7, name: b}]' },
      /no insert is narrower than 0\.5 mm/,
    ],
  ])('%s', (_, beyond, within, message) => {
    const errors = said(sleeve(beyond)).filter(text => text.startsWith('error'))
    expect(errors.join('\n')).toMatch(message)
    expect(
      said(sleeve(within))
        .filter(text => text.startsWith('error'))
        .join('\n'),
    ).not.toMatch(message)
  })

  it('a wall that bends in the jaws is warned of: under 3 % of the bore', () => {
    expect(said(sleeve({ bore: '100 H7', outside: '104 ±0.02' })).join('\n')).toMatch(
      /warning: the wall .* under 3\.00 mm it bends/,
    )
  })
})

it('every limit is above nothing, and a wider insert never reaches less deep', () => {
  expect(PROCESS_LIMITS_SOURCE).toBe('common practice, no source')
  for (const { tolerance, roughness, form } of Object.values(TURNING_LIMITS))
    expect(Math.min(tolerance, roughness, form)).toBeGreaterThan(0)
  for (const [index, row] of GROOVE_DEPTHS.entries()) {
    expect(row.width).toBeGreaterThan(GROOVE_DEPTHS[index - 1]?.width ?? 0)
    expect(row.depth).toBeGreaterThan(GROOVE_DEPTHS[index - 1]?.depth ?? 0)
  }
})
