import type { Random } from './random.ts'

/** Keys that the files know, misspelt ones, and names that a language gives a meaning to. */
export const STRANGE_KEYS: readonly string[] = [
  ...[
    'hardening',
    'plating',
    'stock',
    'ports',
    'waive',
    'engine',
    'top',
    'bottom',
    'bore',
    'outside',
    'taper',
    'masked',
  ],
  ...['depth', 'temper', 'temperature', 'bridge', 'arc', 'duration', 'cut', 'role', 'Ra', 'cylindricity', 'runout'],
  ...['__proto__', 'constructor', 'toString', 'lenght', '', ' ', 'a/b', '~1', '0', 'ключ', '🔧', 'x'.repeat(300)],
]

const NUMBERS: readonly unknown[] = [
  ...[0, -0, -1, 1, 2, 0.1, 0.5, 5, 50, 500, 5000, 1e-9, 1e-308, 1e21, 1e308, -1e308, 2 ** 53, 1 / 3],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
]

const TEXTS: readonly string[] = [
  ...[
    '',
    ' ',
    'x',
    'none',
    'true',
    'null',
    'NaN',
    '1e400',
    '-5',
    '0x10',
    '1_000',
    '12:30',
    '2026-02-30',
    '1,5',
    '½',
    '٣',
  ],
  ...[
    '48 H6',
    '48 h6',
    '48 ±0.0001',
    '48 ±50',
    '48 +0.1/-0.2',
    '0.001 ±0.0005',
    '1e3 ±1',
    '48 H99',
    '48 ZZ7',
    '1.890 in',
    '3 in ±0.1 mm',
  ],
  ...[
    'min 0.2',
    'min 5',
    '≥ 0.01',
    '300 HV',
    '2000 HV',
    '10 HRC',
    '70 HRC',
    '620 °C',
    '3 weeks',
    '50 %',
    '25 mm',
    '0.5 deg',
  ],
  ...[
    '<b>x</b>',
    '{{part}}',
    '{{{part}}}',
    `\${x}`,
    '%d',
    '"',
    "'",
    '\\',
    '\u0000',
    '\u001b[31m',
    'a\nb',
    '\ufeff',
    '\u202e',
    '中文',
    '🔧',
    'é'.repeat(90),
  ],
  ...['x'.repeat(250), '9'.repeat(400), `110 +${'1'.repeat(200)}`, ' '.repeat(3000), `1 ${' '.repeat(500)}x`],
]

const OTHER: readonly unknown[] = [
  null,
  true,
  false,
  [],
  {},
  [1, 2, 3],
  ['seat'],
  ['bore', 'outside'],
  { size: '48 H6' },
  { cut: 1.2 },
  [[]],
]

/** mm, °, rpm and the like, made larger or smaller by as much as a slip, a unit or a wish. */
const FACTORS: readonly number[] = [
  0.001, 0.01, 0.04, 0.1, 0.3, 0.5, 0.8, 0.95, 1.05, 1.2, 1.5, 2, 3, 5, 10, 25.4, 100, 1000, -1,
]

/** Another value in the place of one: another size of the same, or something else. */
export function changedValue(random: Random, value: unknown): unknown {
  if (typeof value === 'number' && random.chance(0.75)) return scaled(random, value)
  if (typeof value === 'string' && random.chance(0.75) && /\d/.test(value)) {
    return value.replace(/\d+(?:\.\d+)?/g, digits =>
      random.chance(0.6) ? String(scaled(random, Number(digits))) : digits,
    )
  }
  if (typeof value === 'string' && random.chance(0.3) && value.length > 1) {
    const at = random.whole(0, value.length - 1)
    return random.chance(0.5)
      ? value.slice(0, at) + value.slice(at + 1)
      : value.slice(0, at) + value.slice(at).toUpperCase()
  }
  return random.any(random.any([NUMBERS, TEXTS, OTHER]) ?? OTHER)
}

const scaled = (random: Random, value: number): number =>
  Number((value * (random.any(FACTORS) ?? 1) + (random.chance(0.2) ? random.between(-2, 2) : 0)).toPrecision(6))
