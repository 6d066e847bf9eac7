import { describe, expect, it } from 'vitest'
import { setValues } from '../../src/part/set-values.ts'
import { changedBy, settingOf } from '../../src/part/setting.ts'

describe('what --set says', () => {
  it.each([
    ['stock.bore=0.16', { path: 'stock.bore', value: '0.16' }],
    ['exhaust.opens+=2', { path: 'exhaust.opens', value: '2', by: '+' }],
    ['main transfer.opens -= 1.5', { path: 'main transfer.opens', value: ' 1.5', by: '-' }],
    ['engine.pin-offset=-1', { path: 'engine.pin-offset', value: '-1' }],
    ['body.bore=48 H6', { path: 'body.bore', value: '48 H6' }],
    ['nothing', undefined],
    ['=1', undefined],
    ['+=1', undefined],
  ])('%s', (text, setting) => {
    expect(settingOf(text)).toEqual(setting)
  })
})

describe('a number changed where it stands', () => {
  it.each([
    ['106', '+', '2', '108'],
    ['16.10', '-', '0.4', '15.70'],
    ['0.1', '+', '0.2', '0.3'],
    ['48 H6', '+', '0.1', '48.1 H6'],
    ['1.890 in', '-', '0.01', '1.880 in'],
    ['-0.3', '+', '0.5', '0.2'],
    ['92 ±0.05', '+', '1', '93 ±0.05'],
  ] as const)('%s %s= %s is %s', (present, by, value, changed) => {
    expect(changedBy(present, by, value)).toBe(changed)
  })
  it.each([
    ['level', '1'],
    ['', '1'],
    ['5', 'much'],
    ['5', ''],
  ])('"%s" cannot be changed by "%s"', (present, value) => {
    expect(changedBy(present, '+', value)).toBeUndefined()
  })
})

const TEXT = `part: {number: OX-1}
ports:
  - {name: exhaust, at: 0, opens: 106, height: 16.1}
  - {name: main transfer, at: 78, mirror: true, opens: 121}
  - {name: 'no. 3', at: 180, top: 44}
`
const set = (path: string, value: string, by?: '+' | '-') =>
  setValues(TEXT, 'liner.yaml', [{ path, value, ...(by && { by }) }])

describe('a port by its name alone', () => {
  it.each([
    ['exhaust.opens', 'ports.0.opens'],
    ['main transfer.opens', 'ports.main transfer.opens'],
    ['no. 3.top', 'ports.2.top'],
  ])('%s is %s', (short, long) => {
    const one = set(short, '2', '+')
    expect(one.findings).toEqual([])
    expect(one.text).toBe(set(long, '2', '+').text)
  })
  it('does not hide a key of the file', () => {
    expect(set('part.number', 'OX-2').text).toContain('number: OX-2')
    expect(set('boost.opens', '1').findings[0]?.code).toBe('input/unknown-setting')
    expect(set('exhaust.opnes', '1').findings[0]?.message).toMatch(/has no "opnes"/)
  })
  it('has nothing to add to where the file gives no value', () => {
    const { text, findings } = set('exhaust.width', '1', '+')
    expect([text, findings[0]?.code]).toEqual([undefined, 'input/unreadable'])
    expect(findings[0]?.message).toBe('exhaust.width cannot be changed by "+1": the file gives it no value')
  })
})
