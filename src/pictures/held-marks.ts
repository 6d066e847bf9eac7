import { length, type Units } from '../figures.ts'
import type { FixturePlan } from '../ports/fixture-plan.ts'
import type { PortWindow } from '../ports/port.ts'
import type { Fixture } from '../shop/shop.ts'
import type { Degree, Millimetre } from '../units.ts'
import { type MachinePoint, tiltedPlace } from './set-up.ts'

/** Of the spindle, as much as shows that it goes on. */
const SPINDLE: Millimetre = 8
/** Where the works' tool list does not say how long the cutter is. */
const FLUTES_OF_DIAMETER = 3

/** One cylinder of the cutter, its shank, its holder or the spindle: machine Z from below, half its width. */
export type HolderStep = { readonly half: Millimetre; readonly from: Millimetre; readonly to: Millimetre }

/** From the tip at its lowest upward: flutes, shank, holder, spindle. */
export function holderSteps({ holder }: Fixture, { cutter, plunge, held }: PortWindow): readonly HolderStep[] {
  const tip = plunge.zThrough
  if (!held) return [{ half: cutter / 2, from: tip, to: plunge.zTop + FLUTES_OF_DIAMETER * cutter }]
  const shank = tip + Math.min(held.flutes ?? FLUTES_OF_DIAMETER * cutter, held.stickOut)
  const nose = tip + held.stickOut
  const spindle = nose + holder.length
  return [
    { half: cutter / 2, from: tip, to: shank },
    { half: held.shank / 2, from: shank, to: nose },
    { half: holder.diameter / 2, from: nose, to: spindle },
    { half: holder.spindleDiameter / 2, from: spindle, to: spindle + SPINDLE },
  ]
}

/** The chuck behind its front face: it faces +X. */
export function chuckCorners(fixture: Fixture, face: Millimetre, tilt: Degree): readonly MachinePoint[] {
  const { diameter, length } = fixture.chuck
  return [
    [face, 1],
    [face, -1],
    [face - length, -1],
    [face - length, 1],
  ].map(([x = 0, side = 1]) => tiltedPlace({ x, z: fixture.pivotHeight + (side * diameter) / 2 }, tilt))
}

/** Behind the chuck as much of the rotary's body as shows that it goes on, the far end open. */
export function rotaryCorners(fixture: Fixture, face: Millimetre, tilt: Degree): readonly MachinePoint[] {
  const { chuck, rotary } = fixture
  if (!rotary) return []
  const behind = face - chuck.length
  const far = behind - Math.min(rotary.length, SPINDLE)
  return [
    [far, 1],
    [behind, 1],
    [behind, -1],
    [far, -1],
  ].map(([x = 0, side = 1]) => tiltedPlace({ x, z: fixture.pivotHeight + (side * rotary.diameter) / 2 }, tilt))
}

/** Stick-out and what comes closest, for the label of a window. */
export const heldLines = ({ held }: PortWindow, units: Units): readonly string[] =>
  held
    ? [
        `sticks out ${length(held.stickOut, units, 1)}; ${held.by} ${held.room < 0 ? `strikes ${held.to} by ${length(-held.room, units, 1)}` : `clears ${held.to} by ${length(Math.min(held.room, 99), units, 1)}`}`,
      ]
    : []

/** What holder and chuck were drawn from. */
export function assumedWords(
  { holder, chuck, rotary, head }: Fixture,
  figures: FixturePlan['assumed'] = [],
  units: Units = 'mm',
): string {
  const whole = (value: Millimetre): string => length(value, units, units === 'mm' ? 0 : 1)
  const assumed = figures.filter(figure => figure === 'holder' || figure === 'chuck')
  const sizes = [
    `Holder Ø${whole(holder.diameter)} × ${whole(holder.length)}`,
    `spindle Ø${whole(holder.spindleDiameter)}`,
    ...(head ? [`head Ø${whole(head.diameter)} from ${whole(head.spindleLength)} up`] : []),
    `chuck Ø${whole(chuck.diameter)}`,
    ...(rotary ? [`rotary Ø${whole(rotary.diameter)} × ${whole(rotary.length)}`] : []),
  ].join(', ')
  return assumed.length === 0 ? `${sizes}.` : `${sizes}; ${assumed.join(' and ')} not measured: built-in figures.`
}
