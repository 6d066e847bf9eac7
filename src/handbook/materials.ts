import { MATERIALS } from './material-rows.ts'

/** What a grade is, as far as cutting and hardening treat it alike. */
export type MaterialGroup =
  | 'heat-treatable steel'
  | 'nitriding steel'
  | 'case-hardening steel'
  | 'unalloyed steel'
  | 'microalloyed steel'
  | 'bearing steel'
  | 'free-cutting steel'
  | 'structural steel'
  | 'stainless steel'
  | 'grey iron'
  | 'ductile iron'
  | 'wrought aluminium'
  | 'cast aluminium'
  | 'bronze'

export type MaterialEntry = {
  /** Name by its European standard: what every other table keys on. */
  readonly grade: string
  readonly group: MaterialGroup
  /** Number by EN 10027-2 or EN 1412, and names of other countries that are bought in its place. */
  readonly aliases: readonly string[]
  /** Names of grades that are near it and not the same: planned as this one, and said. */
  readonly near: readonly string[]
  /** Standard of the grade; the aliases of other systems are near equivalents from memory. */
  readonly source: string
}

/** Letters of the Russian standards that are written in Latin ones, the longer first. */
const CYRILLIC: readonly (readonly [RegExp, string])[] = [
  [/х/g, 'kh'],
  [/ю/g, 'yu'],
  [/ш/g, 'sh'],
  [/ч/g, 'ch'],
  [/м/g, 'm'],
  [/а/g, 'a'],
  [/в/g, 'v'],
  [/с/g, 's'],
  [/т/g, 't'],
  [/н/g, 'n'],
  [/г/g, 'g'],
  [/к/g, 'k'],
  [/б/g, 'b'],
  [/р/g, 'r'],
  [/о/g, 'o'],
  [/ф/g, 'f'],
  [/д/g, 'd'],
]

/**
 * Upper and lower case, spaces and hyphens do not tell grades apart, nor does the name of the list that a name is from; a
 * delivery condition (`+QT`) is not part of one.
 */
const plain = (written: string): string => {
  const bare = written
    .replace(/\+[A-Za-z]+$/, '')
    .toLowerCase()
    .replace(/^(aisi|sae|w\.?-?nr\.?|bs|jis|gost)\s*/, '')
    .replace(/[\s_-]/g, '')
    .replace(/,/g, '.')
  return CYRILLIC.reduce((text, [letter, latin]) => text.replace(letter, latin), bare)
}

const BY_NAME: ReadonlyMap<string, MaterialEntry> = new Map(
  MATERIALS.flatMap(entry => [entry.grade, ...entry.aliases].map(name => [plain(name), entry] as const)),
)
const BY_NEAR_NAME: ReadonlyMap<string, MaterialEntry> = new Map(
  MATERIALS.flatMap(entry => entry.near.map(name => [plain(name), entry] as const)),
)

/** Exact look-up by grade or listed alias; no nearest match. */
export const materialOf = (written: string): MaterialEntry | undefined =>
  BY_NAME.get(plain(written)) ?? BY_NEAR_NAME.get(plain(written))

/** Whether the name is that of a grade which is only near the one that it is planned as. */
export const isNearName = (written: string): boolean => !BY_NAME.has(plain(written)) && BY_NEAR_NAME.has(plain(written))

/** Every name that `materialOf` knows, for suggestions. */
export const MATERIAL_NAMES: readonly string[] = MATERIALS.flatMap(({ grade, aliases, near }) => [
  grade,
  ...aliases,
  ...near,
])

const NO_STEEL: ReadonlySet<MaterialGroup> = new Set([
  'grey iron',
  'ductile iron',
  'wrought aluminium',
  'cast aluminium',
  'bronze',
])

/** Whether a grade is a steel: iron castings, aluminium and bronze are not. A grade that is not listed is taken for one. */
export function isSteel(grade: string): boolean {
  const group = materialOf(grade)?.group
  return group === undefined || !NO_STEEL.has(group)
}

/** Taken by a magnet: steel and iron, not aluminium and bronze. */
export const isMagnetic = (grade: string): boolean => isSteel(grade) || /iron/.test(materialOf(grade)?.group ?? '')
