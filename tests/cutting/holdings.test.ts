import { describe, expect, it } from 'vitest'
import { HOLDING } from '../../src/handbook/holding.ts'
import type { PlannedOperation } from '../../src/plan/plan.ts'
import { demo as demoPart, planOf } from '../orders/planned-orders.ts'

const planned = (name: string) => planOf(demoPart(name))

/** Every operation with what stands out of the chuck, what holds it there, and what is cut, written by hand from the trade's rules: common practice, no source. */
const ROUTES: Readonly<Record<string, readonly string[]>> = {
  'OX-098-21': [
    'Saw blanks',
    'Rough turn: top out of hard jaws on bar; bottom out of bored soft jaws on seat',
    'Stress relieve',
    'Finish turn: top out of bored soft jaws on seat; bottom out of expanding mandrel on bore',
    'Mill ports: top out of jaws on seat',
    'Mark, deburr, wash',
    'Nitride',
    'Grind outside: bottom out of expanding mandrel on bore',
    'Grind bore and top face',
    'Hone bore',
    'Crack test, demagnetise, clean',
    'Deburr ports again, wash',
    'Final inspection',
  ],
  'OX-098-30': [
    'Saw blanks',
    'Turn: top out of hard jaws on bar; bottom out of bored soft jaws on skirt; top out of bored soft jaws on skirt; bottom out of bored soft jaws on crown land',
    'Mark, deburr, wash',
    'Final inspection',
  ],
  'OX-098-34': [
    'Saw blanks',
    'Turn: top out of hard jaws on bar; bottom out of bored soft jaws on outside; top out of bored soft jaws on outside; bottom out of bored soft jaws on outside; bottom out of centres on the 60° chamfers of the bore',
    'Mark, deburr, wash',
    'Carburise and harden',
    'Grind outside',
    'Lap outside',
    'Crack test, demagnetise, clean',
    'Final inspection',
  ],
  'OX-105-02': [
    'Saw blanks',
    'Turn: top out of hard jaws on bar; bottom out of bored soft jaws on seat; top out of bored soft jaws on seat; bottom out of expanding mandrel on bore',
    'Mark, deburr, wash',
    'Hone bore before plating',
    'Stress relieve before plating',
    'Plate bore with nickel silicon carbide',
    'Bake after plating',
    'Hone bore',
    'Final inspection',
  ],
  'OX-112-03': [
    'Saw blanks',
    'Turn: top out of hard jaws on bar; bottom out of bored soft jaws on seat; top out of pie jaws on seat; bottom out of expanding mandrel on bore',
    'Mark, deburr, wash',
    'Hone bore',
    'Final inspection',
  ],
  'OX-131-07': [
    'Saw blanks',
    'Rough turn: top out of hard jaws on bar; bottom out of bored soft jaws on seat',
    'Stress relieve',
    'Finish turn: top out of bored soft jaws on seat; bottom out of expanding mandrel on bore',
    'Mill ports: top out of jaws on seat',
    'Mark, deburr, wash',
    'Nitride',
    'Grind outside: bottom out of expanding mandrel on bore',
    'Grind bore',
    'Crack test, demagnetise, clean',
    'Deburr ports again, wash',
    'Final inspection',
  ],
}

const told = ({ name, chuckings = [] }: PlannedOperation): string =>
  [name, chuckings.map(({ end, heldWith = 'jaws', grip }) => `${end} out of ${heldWith} on ${grip.surface}`).join('; ')]
    .filter(Boolean)
    .join(': ')

describe.each(Object.keys(ROUTES))('the route of %s', name => {
  const plan = planned(name)
  const turned = plan.operations.filter(({ process, place }) => process === 'turn' && place === 'house')

  it('is that of a good foreman, holdings included', () => {
    expect(plan.operations.map(told)).toEqual(ROUTES[name])
  })

  it('has every step of turning in a clamping, in the order of the clampings', () => {
    expect(turned.length).toBeGreaterThan(0)
    for (const { steps, chuckings = [] } of turned) {
      const order = steps.map(({ chucking = 0 }) => chucking)
      expect(order).toEqual(order.toSorted((a, b) => a - b))
      expect(new Set(order)).toEqual(new Set(chuckings.map(({ number }) => number)))
    }
  })

  it('cuts nothing under the jaws, and grips no more than there is', () => {
    for (const { number, chuckings = [], steps, purpose } of turned) {
      const before = plan.operations.findLast(({ number: other }) => other < number)?.shape
      for (const { grip, number: chucking, heldWith } of chuckings) {
        if (heldWith === 'expanding mandrel' || heldWith === 'centres') continue
        const bands = [
          ...(before?.outside ?? []),
          ...(plan.operations.find(o => o.number === number)?.shape.outside ?? []),
        ]
        const longest = Math.max(
          ...bands
            .filter(({ name: band }) => band === grip.surface || grip.surface === 'bar')
            .map(({ from, to }) => to - from),
        )
        expect(grip.length, `${purpose} ${chucking}`).toBeLessThanOrEqual(longest + 2.1)
        expect(grip.length).toBeGreaterThanOrEqual(HOLDING.grip.least)
        if (chucking === 1) continue
        const cut = steps.filter(step => step.chucking === chucking && !step.action.endsWith('lower end'))
        expect(cut.map(({ feature }) => feature)).not.toContain(grip.surface)
      }
    }
  })

  it('sets no jaws harder than a manual chuck of 200 gives, and leaves them what they need at speed', () => {
    for (const { chuckings = [] } of turned) {
      for (const { jawForce } of chuckings) {
        if (!jawForce) continue
        expect(jawForce.set * jawForce.jaws).toBeLessThanOrEqual(HOLDING.capacity)
        expect(jawForce.left).toBeLessThan(jawForce.set)
        expect(jawForce.left).toBeGreaterThan(0)
      }
    }
  })

  it('counts every load: a part that is turned round takes 1.3 min and clean jaws', () => {
    for (const { steps, chuckings = [], time } of turned) {
      const cutting = steps.reduce((sum, step) => sum + step.time, 0)
      expect(time.each - cutting).toBeGreaterThanOrEqual((chuckings.length - 1) * 1.3 + chuckings.length * 0.5)
    }
  })
})

describe('the rough turning of a flanged liner', () => {
  const rough = planned('OX-098-21').operations.find(({ purpose }) => purpose === 'rough-turn')
  const [first, second] = rough?.chuckings ?? []

  // Derived: a 40 drill at 123 N·m on a stop asks 10 543 N a jaw of raw bar Ø70; the plan's own torque is 123.4.
  it('holds the 40 drill on a stop with about 10.6 kN a jaw, and a little more for what the jaws lose', () => {
    expect(first?.jawForce?.step).toBe('drill through')
    expect(first?.jawForce?.set).toBeGreaterThan(10_543)
    expect(first?.jawForce?.set).toBeLessThan(11_000)
  })

  it('turns the seat as far as the jaws let it, and its lower end after the part is turned round', () => {
    const seat = (rough?.steps ?? []).filter(({ feature }) => feature === 'seat')
    expect(seat.map(({ action, chucking }) => [action, chucking])).toEqual([
      ['rough seat', 1],
      ['rough seat, lower end', 2],
    ])
    expect(second?.grip).toMatchObject({ surface: 'seat', length: 50 })
    expect(second?.stop).toContain('flange clear')
  })

  it('cuts less deep where soft jaws would not hold the full cut: the iron liner, half as deep', () => {
    const iron = planned('OX-112-03').operations.find(({ purpose }) => purpose === 'turn')
    const [full, eased] = (iron?.steps ?? []).filter(({ action }) => action.startsWith('rough seat'))
    expect(full?.limitedBy ?? '').not.toContain('jaws')
    expect(eased?.limitedBy).toContain('what the jaws hold')
    expect(eased?.depth).toBeLessThan(0.6 * (full?.depth ?? 0))
  })
})
