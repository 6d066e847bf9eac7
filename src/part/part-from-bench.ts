import type { Finding, Place } from '../finding.ts'
import type { PartKind } from './part.ts'
import { asWritten, schemaLine } from './part-template.ts'
import { tidy } from './quantity.ts'
import type { Bench, BenchPort } from './read-bench.ts'

type Asked = {
  /** What findings call the bench file. */
  readonly file: string
  readonly kind: Extract<PartKind, 'liner' | 'sleeve'>
  /** Drawing number where the bench file has none. */
  readonly name: string
  readonly schema: string | undefined
}

/**
 * The part file of a liner that exists and has no drawing: every figure as it was measured, every limit a question. What a
 * part cannot be without and nobody measured is asked for; no figure is put in its place.
 */
export function partFromBench(
  bench: Bench,
  asked: Asked,
): { readonly text?: string; readonly findings: readonly Finding[] } {
  const findings = [...missingOfBody(bench, asked.file), ...bench.ports.flatMap(missingOfPort)]
  return findings.length > 0 ? { findings } : { text: textOf(bench, asked), findings }
}

function missingOfBody({ length, outside, bore, grade }: Bench, file: string): readonly Finding[] {
  const place = { file, line: 1, column: 1 }
  return [
    ...(length === undefined ? [missing('the length', 'length: 92.01', place)] : []),
    ...(outside === undefined ? [missing('the outside', 'outside: 54.98, or bands [{to: …, size: …}]', place)] : []),
    ...(bore === undefined ? [missing('the bore', 'bore: 48.012', place)] : []),
    ...(grade === undefined ? [missing('the material', 'grade: 42CrMo4, by certificate or test', place)] : []),
  ]
}

const missingOfPort = ({ name, place, top, bottom, at, arc, width, corner }: BenchPort): readonly Finding[] => [
  ...(top === undefined ? [missing(`the top edge of ${name}`, 'top: 41.23', place)] : []),
  ...(bottom === undefined ? [missing(`the bottom edge of ${name}`, 'bottom: 57.3', place)] : []),
  ...(at === undefined ? [missing(`the azimuth of ${name}`, 'at: 78, at: 1:30, or from and to', place)] : []),
  ...(arc === undefined && width === undefined
    ? [missing(`the width of ${name}`, 'width: 27, arc: 70, or from and to', place)]
    : []),
  ...(corner === undefined ? [missing(`the corner of ${name}`, 'corner: 3, by radius gauge', place)] : []),
]

const missing = (what: string, example: string, at: Place): Finding => ({
  code: 'input/missing-key',
  severity: 'error',
  message: `${what} was not measured, and a part file cannot be without it`,
  at,
  hint: `add ${example}`,
})

function textOf(bench: Bench, { file, kind, name, schema }: Asked): string {
  const { part, piece, date, length, bore, grade, hardness, engine, crownBelowTop } = bench
  const which = [piece === undefined ? '' : `piece ${piece}`, date ?? ''].filter(text => text !== '').join(', ')
  const title = kind === 'liner' ? 'Cylinder liner' : 'Valve sleeve'
  const asked = engine
    ? []
    : ['# engine: {stroke: ?, rod: ?, crown-below-top: ?}   # without it no edge has a crank angle']
  return [
    `${schemaLine(schema)}# As measured on the bench: ${onOneLine(file)}${which === '' ? '' : `, ${onOneLine(which)}`}.`,
    '# One piece says what it is, not what it may be: a bare size takes the general tolerance below. Answer the questions',
    '# behind the sizes before anything is made by this file. To hold it against another part, compare takes it as it stands.',
    `part: {number: ${asWritten(part ?? name)}, title: "${title}, as measured", revision: measured, kind: ${kind}}`,
    ...asked,
    ...(engine
      ? [
          `engine: {stroke: ${engine.stroke}, rod: ${engine.rod}, pin-offset: ${engine.pinOffset}, crown-below-top: ${crownBelowTop ?? 0}}${crownBelowTop === undefined ? '   # crown-below-top? It was not measured' : ''}`,
        ]
      : []),
    hardness === undefined
      ? `material: {grade: ${asWritten(grade ?? '')}}   # hardness? temper?`
      : `material: {grade: ${asWritten(grade ?? '')}, hardness: ${Math.round(hardness)} HV}   # temper?`,
    'body:',
    `  length: ${length}   # limits?`,
    ...outsideLines(bench),
    `  bore: ${bore}   # limits? Ra? cylindricity? Worn or as made?`,
    '# hardening: {process: ?, hardness: ?, depth: ?}   # was it hardened, how deep?',
    ...(bench.ports.length > 0 ? ['ports:'] : []),
    ...bench.ports.flatMap(portLines),
    'general-tolerance: ISO 2768-m   # as its drawing had it?',
    '',
  ].join('\n')
}

function outsideLines({ outside = [], length }: Bench): readonly string[] {
  const [only] = outside
  if (only && outside.length === 1) return [`  outside: ${only.size}   # limits? Ra? runout?`]
  return [
    '  outside:   # limits? Ra? runout?',
    ...outside.map(({ size, to, name }, index) => {
      const end = index === outside.length - 1 ? length : to
      return `    - {to: ${end}, size: ${size}${name === undefined ? '' : `, name: ${asWritten(name)}`}}`
    }),
  ]
}

function portLines({ name, at = 0, top, bottom, width, arc, corner, bridge = [], up, back }: BenchPort) {
  const [bar, ...bars] = bridge
  const more = [
    ...(bar === undefined ? [] : [`bridge: ${bars.length === 0 ? bar : `[${bridge.join(', ')}]`}`]),
    ...(up === undefined ? [] : [`up: ${up}`]),
    ...(back === undefined ? [] : [`back: ${back}`]),
  ]
  return [
    `  - name: ${asWritten(name)}`,
    `    at: ${tidy(at)}`,
    `    top: ${top}   # limits? The works' own hold for a bare edge`,
    `    bottom: ${bottom}`,
    width === undefined ? `    arc: ${tidy(arc ?? 0)}` : `    width: ${width}`,
    `    corner: ${corner}`,
    ...more.map(line => `    ${line}`),
    ...(up === undefined && back === undefined ? ['    # up? back? Level and straight out, as it stands'] : []),
  ]
}

const onOneLine = (text: string): string => text.replace(/\s+/g, ' ')
