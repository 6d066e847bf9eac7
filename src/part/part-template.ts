import { stringify } from 'yaml'
import type { PartKind } from './part.ts'

/**
 * A commented part file to start from, which reads as it is. `number` is put in as the drawing number, whatever
 * characters it has; `schema` is where an editor finds the schema of the file.
 */
export const partTemplate = (kind: PartKind, number = 'NEW-1', schema?: string): string =>
  `${schemaLine(schema)}${HEAD}\n${TEMPLATES[kind].replace('NUMBER', () => asWritten(number))}${FOOT}`

/** What tells an editor where the schema of the file is. */
export const schemaLine = (schema: string | undefined): string =>
  schema === undefined ? '' : `# yaml-language-server: $schema=${schema}\n`

/** Text as it may stand between brackets: in double quotes unless it is letters, digits, points and hyphens. */
export const asWritten = (text: string): string =>
  /^[A-Za-z][\w.-]*$/.test(text) ? stringify(text).trim() : JSON.stringify(text)

const HEAD = `# Lengths are millimetres and angles degrees, unless a unit is written: 1.890 in. Sizes are written as on the drawing:
# 48 H6, 55 g6, 92 ±0.05, 12 +0.1/-0, or a bare 3.5, which takes the general tolerance.
`

const FOOT = `
# Class of ISO 2768-1 for a size without a tolerance of its own.
general-tolerance: ISO 2768-m
`

const TEMPLATES: Readonly<Record<PartKind, string>> = {
  liner: `part: {number: NUMBER, title: Cylinder liner, revision: A, kind: liner}

# crown-below-top: the piston crown's edge below the liner's top face at top dead centre. head-volume: above the crown
# there, in cm³. The piston may be told of too: skirt: 60 (crown's edge to skirt's end), rings: {from: 3, to: 8, pegs: [130]}.
engine: {stroke: 54, rod: 100, pin-offset: 0, crown-below-top: 0.4, speed: 4200, head-volume: 11.5}

# temper: the tempering temperature on the bar's certificate, °C. Hardening must stay well below it.
material: {grade: 42CrMo4, hardness: 300 HV, temper: 620}

body:
  length: 92 ±0.05
  outside:                  # bands from the top face down, each to a depth
    - {to: 4, size: 62 h9, name: flange}
    - {to: 92, size: 55 g6, Ra: 0.8, runout: 0.015, name: seat}
  bore: {size: 48 H6, Ra: 0.3, cylindricity: 0.006}
  top: {Ra: 0.8, flatness: 0.01}

# As left after finishing. Delete it for a liner that is not hardened.
hardening: {process: gas nitriding, hardness: min 550 HV, depth: min 0.20}

# A bore that is plated and honed to size: hard chrome, or nickel silicon carbide. Thickness per side as left after honing.
# plating: {process: nickel silicon carbide, thickness: 0.075}

# Stock on diameter for the finishing after hardening; without it the planner chooses.
# stock: {outside: 0.20, bore: 0.20, hone: 0.03}

ports:
  - name: exhaust
    at: 0                   # azimuth of the middle on the finished bore, counter-clockwise seen from the head
    opens: 106 ±0.3         # crank degrees after top dead centre, or top: mm below the top face; bare, the works' own limits hold
    height: 16.1            # along the bore, or bottom: mm below the top face
    width: 27               # chord on the finished bore, or arc: degrees
    corner: 3               # radius on the unrolled bore, or {cut: 1.2}: radius in the cutter's plane
    bridge: 2.6             # bar left down the middle: two windows; [2.6, 2.6]: three
  - name: main transfer
    at: 78
    mirror: true            # the same again at -78
    opens: 121 ±0.5
    height: 10.4
    width: 17
    corner: 2.6
    up: 15                  # the stream rises toward the head
    back: 32                # and is turned away from azimuth 0
  - {name: boost, at: 180, opens: 123 ±0.7, height: 9.7, width: 12, corner: {cut: 1.5}, up: 50}
`,
  sleeve: `part: {number: NUMBER, title: Valve sleeve, revision: A, kind: sleeve}

# temper: the tempering temperature on the bar's certificate, °C. Hardening must stay well below it.
material: {grade: 42CrMo4, hardness: 330 HV, temper: 620}

body:
  length: 60 ±0.1
  outside: {size: 36 g6, Ra: 0.8, name: seat}
  bore: {size: 28 H7, Ra: 0.4, cylindricity: 0.008}
  top: {Ra: 1.6}

# As left after finishing.
hardening: {process: gas nitriding, hardness: min 550 HV, depth: min 0.15}

# A sleeve without a crank has no engine, and gives the top edge of its ports below the top face.
ports:
  - {name: inlet port, at: 0, top: 20, height: 6, width: 8, corner: 2}
  - {name: outlet port, at: 180, top: 34, height: 6, width: 8, corner: 2}
`,
  pin: `part: {number: NUMBER, title: Gudgeon pin, revision: A, kind: pin}

# hardness: of the bar as it comes, annealed.
material: {grade: 16MnCr5, hardness: 180 HV}

body:
  length: 42 +0/-0.1
  outside: {size: 16 h5, Ra: 0.1, roundness: 0.002}
  bore: 10 ±0.1             # drilled, where it asks no more; delete it for a solid pin

# As left after finishing: case hardening depth, to 550 HV.
hardening: {process: carburising, hardness: min 650 HV, depth: min 0.4}

# Stock on diameter for grinding and lapping after hardening; without it the planner chooses.
# stock: {outside: 0.14, lap: 0.009}
`,
  piston: `part: {number: NUMBER, title: Piston, revision: A, kind: piston}

material: {grade: EN AW-2618A}

# Planned as a turned part: pin bore, grooves, skirt oval and what turning cannot hold are made by agreement.
body:
  length: 52 ±0.1
  outside:                  # bands from the crown down, each to a depth
    - {to: 14, size: 47.75 ±0.03, Ra: 1.6, name: crown land}
    - {to: 52, size: 47.93 ±0.025, Ra: 1.6, name: skirt}
`,
}
