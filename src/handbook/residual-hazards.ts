import type { Process } from '../process.ts'

const DEFER = "The machine's manual and local safety rules come first."

const HOT_PARTS = [
  'Parts that look cold burn: treat them as hot until checked, use tongs and heat gloves.',
  'Hardening is for a qualified firm under its own rules; salt, oil or ammonia may cling to the parts: air and wash them.',
]

/**
 * The usual cautions beside an operation: what happens and what to do. They stand in for no manual, no local code and no
 * risk assessment by a qualified person.
 *
 * Source: common practice, no source, but for three: discs flung out by through drills (drill makers' assembly notes),
 * wheel speed, mounting and guarding (scopes of EN 12413 and EN 13236; 29 CFR 1910.243(c)(5)), and a hone jamming in the
 * hand (Engine Builder, 1998).
 */
const CAUTIONS: Readonly<Record<Process, readonly string[]>> = {
  saw: [
    'A whole bar is heavy, its weight is on the material sheet: lift it with an aid, support both ends, clamp the short end too.',
    'Blade and burrs cut: guard set to the bar, hands clear until the blade stands.',
    DEFER,
  ],
  turn: [
    'An over-sped or loosely held part flies: keep to the lowest limit of chuck, jaws and part; check grip length.',
    'Long bar whips behind the spindle: support it over its whole length.',
    'Chips cut like razors: door shut, stop the spindle, clear with a hook; no gloves or loose sleeves near rotation.',
    DEFER,
  ],
  drill: [
    'Work grabs as the drill breaks through, bronze most of all: clamp it, never hold it by hand, ease the feed there.',
    'A through drill may fling out a disc: guard the exit side.',
    DEFER,
  ],
  mill: [
    'Small cutters snap and slugs fly: enclosure shut, eye protection on.',
    'The rotary drifts when its brake is off: confirm clamp and brake at every index; prove a new setting in the air.',
    'Needle chips lodge in skin and eyes, slugs are hot and sharp: clear with the spindle stopped and the drive off.',
    DEFER,
  ],
  deburr: [
    'Edges and burrs cut: eye protection and cut-resistant gloves for hand tools, no gloves near a running spindle.',
    DEFER,
  ],
  'stress-relieve': [...HOT_PARTS, DEFER],
  nitride: [...HOT_PARTS, DEFER],
  'case-harden': [...HOT_PARTS, DEFER],
  'induction-harden': [...HOT_PARTS, DEFER],
  plate: ['Plating baths are poison: for a licensed firm only; rinse returned parts and wash your hands.', DEFER],
  grind: [
    'A wheel bursts from over-speed, damage or wrong mounting: never over its marked speed (m/s and rpm); look it over, ring-test it where size and shape permit, matching flanges with blotters; only trained persons mount wheels.',
    'At run-up nobody stands in the plane of the wheel: guard fitted, run a new wheel free before the first cut.',
    'Sparks and dust: grind wet with extraction; never mix aluminium and steel dust; oil mist burns.',
    DEFER,
  ],
  hone: [
    'A hone that opens outside the bore breaks, a jammed one twists the work or a hand drill away: go in and out collapsed, part clamped, side handle and clutch on a drill.',
    'Oil mist: splash guard and extraction. Washing: closed or aired washer, gloves, goggles, no flame; air gun never toward people.',
    DEFER,
  ],
  lap: ['Abrasive and solvent hurt skin and eyes: gloves, goggles, air; clean off every grain afterwards.', DEFER],
  inspect: [
    'Let parts cool to room temperature; clean with solvent only where aired, no flame; edges may be sharp.',
    DEFER,
  ],
  'crack-test': [
    'Ultraviolet lamps, ink and solvent harm eyes and skin: filtered lamp, goggles, gloves, air.',
    'The field of the magnetising bench stops pacemakers and watches: keep them away.',
    DEFER,
  ],
  mark: ['Marking fluid, laser or stamp: eyes and skin covered, safety data sheet at the bench.', DEFER],
}

export const cautionsFor = (process: Process): readonly string[] => CAUTIONS[process]
