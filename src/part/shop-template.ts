import { BUILT_IN_MACHINES } from '../shop/built-in-machines.ts'
import type { Machine } from '../shop/shop.ts'
import { type Described, keysExplained, keysWithText, toRead } from './commented.ts'
import { schemaLine } from './part-template.ts'
import schema from './shop.schema.json' with { type: 'json' }

const OFFERED: Readonly<Record<string, string>> = {
  'shop.address': 'Sluice Lane 4, Oxmere',
  'shop.telephone': "'01632 960 171'",
  'shop.e-mail': 'liners@oxmere-pumps.example',
  'shop.contact': 'R. Tarn',
  'shop.days': '[Mon, Tue, Wed, Thu, Fri]',
  'shop.closed': '[2026-12-24 to 2027-01-01]',
  'shop.currency': 'crowns',
  'habits.ovality': '0.02',
  'habits.bow': '0.01',
  'nc-words.tool-change': "'T{tool} M6'",
  'nc-words.clamp': 'M10',
  'nc-words.unclamp': 'M11',
  'nc-words.coolant-on': 'M8',
  'nc-words.coolant-off': 'M9',
  'nc-words.spindle-up': 'G53 G0 Z0',
  'nc-words.tilt-clamp': 'M12',
  'nc-words.tilt-unclamp': 'M13',
  'nc-words.tilt-axis': 'B',
  'nc-words.clamping': 'by hand',
  'fixture.head-faces': '+X',
  'fixture.positive-rotary': 'Y to Z',
  'fixture.positive-tilt': 'Z to X',
  'fixture.rotary-limits': '[-360, 360]',
  'fixture.tilt-limits': '[-10, 60]',
  'fixture.chuck.face-distance': '70',
  'fixture.chuck.kind': 'jaws',
  'fixture.rotary.diameter': '90',
  'fixture.rotary.length': '110',
  'fixture.plate.from': '-160',
  'fixture.plate.to': '70',
  'fixture.plate.width': '110',
  'fixture.plate.top': '0',
  'fixture.head.diameter': '130',
  'fixture.head.spindle-length': '110',
  'fixture.head.fully-up': '330',
}

const { properties } = schema

/** Behind a # as a whole: what is not written, the built-in works says. */
const section = (key: 'habits' | 'nc-words' | 'port-checks' | 'fixture', says: string): string => {
  const node: Described = properties[key]
  return [...toRead(says), `#${key}:`, ...keysWithText(node, { offered: OFFERED }, 1, `${key}.`)].join('\n')
}

const list = (key: 'firms' | 'machines' | 'tools' | 'gauges' | 'measured' | 'reached', says: string): string => {
  const node: Described = properties[key].items
  return [...toRead(says), ...keysExplained(node)].join('\n')
}

/** A machine as the shop file writes it. */
const machineLine = (machine: Machine): string => {
  const { workCentre, name, processes, speedLimit, power, setup, handling } = machine
  const figures = Object.entries({ 'speed-limit': speedLimit, power, setup, handling })
  const written = figures.flatMap(([key, value]) => (value === undefined ? [] : [`${key}: ${value}`]))
  return `#  - {${[`work-centre: ${workCentre}`, `name: ${name}`, `processes: [${processes.join(', ')}]`, ...written].join(', ')}}`
}

/** A commented shop file to start from: it says no more than the built-in works does, until a # is taken away. */
export const shopTemplate = (
  schemaAt?: string,
): string => `${schemaLine(schemaAt)}# What the works knows of itself. What is not written here, the built-in works says. To say it yourself take away the # at
# the start of a line, and that of the key above it. The figure there is the one that holds now, or an example. The names
# are invented. Lengths are millimetres and times as said, unless a unit is written.

shop:
${keysWithText(properties.shop, { filled: { 'shop.name': 'Our works' }, offered: OFFERED }, 1, 'shop.').join('\n')}

${list('firms', 'Outside firms. Each of your own goes above `built-in`, whose firms have no names and do what yours do not.')}
firms:
#  - name: Quillfen Hardening
#    processes: [nitride, stress-relieve, case-harden, induction-harden]
#    address: Kiln Yard, Quillfen
#    telephone: '01632 960 344'
#    e-mail: loads@quillfen-hardening.example
#    contact: M. Averil
#    lead-time: 8 to 12
#    closed: [2026-12-21 to 2027-01-01]
#    minimum: 180
#    per-kg: 6.50
#    prices: [{processes: [stress-relieve], minimum: 65, per-kg: 1.90}]
#    carriage-charge: 20
  - built-in

# ${properties.rates.description}
#rates: {saw: 45, lathe: 62, mill: 70, cylindrical grinder: 66, bench: 45, inspection bench: 48}

# ${properties['bar-prices'].description}
#bar-prices: {42CrMo4: 2.60, 31CrMoV9: 3.90, 16MnCr5: 2.20}

${list('machines', 'Work centres. The built-in ones stand behind the #: take it away from those that you have, change them, and delete `built-in`. With it left there, what you write is added.')}
machines:
  - built-in
${BUILT_IN_MACHINES.map(machineLine).join('\n')}

${list('tools', 'Tools on hand: what you write is added to the built-in ones. Delete `built-in` once all of yours are here.')}
tools:
  - built-in
#  - {name: end mill 5, kind: end mill, price: 19, diameter: 5, teeth: 4, flute-length: 13, shank: 6, reach: 30}
#  - {name: drill 12, kind: drill, diameter: 12, flute-length: 80, shank: 12, reach: 95, point: 140}

${list('gauges', 'Gauges: what you write is added to the built-in ones. Delete `built-in` once all of yours are here.')}
gauges:
  - built-in
#  - {name: outside micrometer 100 to 125, kind: outside, from: 100, to: 125, resolution: 0.001, uncertainty: 0.007}

${section('habits', 'What the works holds and leaves. Measure your own: these are common practice.')}

${list('measured', `${properties.measured.description} The command \`record\` proposes rows.`)}
#measured:
#  - process: gas nitriding
#    grade: 42CrMo4
#    firm: Quillfen Hardening
#    pieces: 18
#    date: 2026-06-12
#    depth: 0.40
#    wall: 3.5
#    diameter: 55
#    length: 92
#    growth:
#      outside: {least: 0.0130, nominal: 0.0160, most: 0.0190}
#      bore: {least: 0.0035, nominal: 0.0065, most: 0.0095}
#      length: {least: 0.033, nominal: 0.040, most: 0.047}
#    ovality: 0.018
#    bow: 0.010

${list('reached', properties.reached.description)}
#reached:
#  - {grade: 42CrMo4, surface: 620 HV, core: 300 HV}

${section('port-checks', properties['port-checks'].description)}

${section('nc-words', `${properties['nc-words'].description} The machine's own manual has the last word.`)}

${section('fixture', `${properties.fixture.description} MEASURE IT BEFORE ANY PROGRAM: the figures here are invented, and none of them is your machine's. No program is written until they stand here as measured. Prove every program dry.`)}
`
