import { createHash } from 'node:crypto'
import fc from 'fast-check'
import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import { contentLine } from '../../src/ical/content-line.ts'
import { icalendar } from '../../src/ical/icalendar.ts'
import { sha1 } from '../../src/ical/sha-1.ts'
import { OUR_SPACE, uuid5 } from '../../src/ical/uuid-5.ts'
import { demoPlan } from '../sheets/demo-packet.ts'

const octets = (text: string): number => new TextEncoder().encode(text).length

describe('a name for an event', () => {
  it('is a digest as a general library makes it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), bytes => {
        expect(Buffer.from(sha1(bytes)).toString('hex')).toBe(createHash('sha1').update(bytes).digest('hex'))
      }),
    )
  })

  it('is UUID version 5 (RFC 9562; made with a general library)', () => {
    expect(uuid5('OX-098-21/2631/130', OUR_SPACE)).toBe('65517632-3954-52da-90a9-002fda7e086e')
  })
})

describe('a line of the file', () => {
  it('is folded at 75 octets, each part as long as it may be, the space of the next counted (RFC 5545, 3.1)', () => {
    const line = 'DESCRIPTION:Nitride 16 pieces\\, depth 0.36 to 0.44 mm\\; growth of 8 to 14 µm a side. Order 4417.'
    expect(contentLine(line).split('\r\n').map(octets)).toEqual([74, 24, 0])
  })

  it('comes back whole, whatever its letters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), text => {
        const plain = text.replace(/[\r\n]/g, '')
        const folded = contentLine(plain)
        expect(folded.replace(/\r\n /g, '').replace(/\r\n$/, '')).toBe(plain)
        for (const part of folded.split('\r\n')) expect(octets(part)).toBeLessThanOrEqual(75)
      }),
    )
  })
})

describe('the calendar file of the demo liner, read by a general parser', () => {
  const plan = {
    ...demoPlan(),
    calendar: [
      { operation: 10, from: '2026-12-07', to: '2026-12-07' },
      { operation: demoPlan().orders[0]?.operations[0] ?? 0, from: '2026-12-09', to: '2027-01-07' },
    ],
  }
  const text = icalendar(plan) ?? ''
  const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map(one => new ICAL.Event(one))

  it('has an event a line of the calendar, of whole days, ending the day after the last', () => {
    expect(events.map(({ startDate, endDate }) => [String(startDate), String(endDate)])).toEqual([
      ['2026-12-07', '2026-12-08'],
      ['2026-12-09', '2027-01-08'],
    ])
    expect(events[0]?.startDate.isDate).toBe(true)
    expect(events[0]?.sequence).toBe(2520)
  })

  it('says what is done where, and whom to ring', () => {
    expect(events[0]?.summary).toBe(`10 Saw blanks, saw, batch ${plan.batch.number}`)
    expect(events[1]?.description).toContain('ring 01632 960 344.')
  })

  it('is nothing where the plan has no dates', () => {
    const { calendar: _, ...undated } = plan
    expect(icalendar(undated)).toBeUndefined()
  })
})
