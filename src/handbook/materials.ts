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
  | 'grey iron'
  | 'ductile iron'
  | 'wrought aluminium'
  | 'bronze'

export type MaterialEntry = {
  /** Name by its European standard: what every other table keys on. */
  readonly grade: string
  readonly group: MaterialGroup
  /** Number by EN 10027-2 or EN 1412, and names of other systems that are bought in its place. */
  readonly aliases: readonly string[]
  /** Standard of the grade; the aliases of other systems are near equivalents from memory. */
  readonly source: string
}

/** Grades that a part file may name. A near equivalent of another system is planned as the European grade. */
export const MATERIALS: readonly MaterialEntry[] = [
  {
    grade: '42CrMo4',
    group: 'heat-treatable steel',
    aliases: ['1.7225', '4140', 'SCM440', '708M40'],
    source: 'ISO 683-2; EN 10083-3',
  },
  { grade: '34CrMo4', group: 'heat-treatable steel', aliases: ['1.7220', '4135'], source: 'ISO 683-2; EN 10083-3' },
  { grade: '50CrMo4', group: 'heat-treatable steel', aliases: ['1.7228', '4150'], source: 'ISO 683-2; EN 10083-3' },
  { grade: '34CrNiMo6', group: 'heat-treatable steel', aliases: ['1.6582', '4340'], source: 'ISO 683-2; EN 10083-3' },
  { grade: '31CrMoV9', group: 'nitriding steel', aliases: ['1.8519'], source: 'EN 10085' },
  { grade: '34CrAlNi7-10', group: 'nitriding steel', aliases: ['1.8550', '34CrAlNi7'], source: 'EN 10085' },
  { grade: '34CrAlMo5-10', group: 'nitriding steel', aliases: ['1.8507', '34CrAlMo5'], source: 'EN 10085' },
  { grade: '41CrAlMo7-10', group: 'nitriding steel', aliases: ['1.8509', '41CrAlMo7'], source: 'EN 10085' },
  { grade: '32CrMo12', group: 'nitriding steel', aliases: ['1.7361'], source: 'memory: EN 10083-3 and DIN 17211' },
  { grade: '16MnCr5', group: 'case-hardening steel', aliases: ['1.7131', '5115'], source: 'ISO 683-3; EN 10084' },
  { grade: '20MnCr5', group: 'case-hardening steel', aliases: ['1.7147', '5120'], source: 'ISO 683-3; EN 10084' },
  {
    grade: 'C45',
    group: 'unalloyed steel',
    aliases: ['1.0503', '1045', 'C45E', '1.1191', 'Ck45'],
    source: 'EN 10083-2',
  },
  { grade: '38MnVS6', group: 'microalloyed steel', aliases: ['1.1303'], source: 'EN 10267' },
  { grade: '100Cr6', group: 'bearing steel', aliases: ['1.3505', '52100'], source: 'ISO 683-17' },
  { grade: '11SMn30', group: 'free-cutting steel', aliases: ['1.0715', '1213'], source: 'EN 10087; EN 10277' },
  { grade: '11SMnPb37', group: 'free-cutting steel', aliases: ['1.0737', '12L14'], source: 'EN 10087; EN 10277' },
  { grade: 'S355', group: 'structural steel', aliases: ['S355J2', '1.0577', 'S355JR', '1.0045'], source: 'EN 10025-2' },
  { grade: 'EN-GJL-250', group: 'grey iron', aliases: ['GJL-250', 'GG-25', '5.1301'], source: 'EN 1561' },
  { grade: 'EN-GJS-400-15', group: 'ductile iron', aliases: ['GJS-400-15', 'GGG-40', '5.3106'], source: 'EN 1563' },
  { grade: 'EN-GJS-600-3', group: 'ductile iron', aliases: ['GJS-600-3', 'GGG-60', '5.3201'], source: 'EN 1563' },
  {
    grade: 'EN AW-6082',
    group: 'wrought aluminium',
    aliases: ['6082', 'EN AW-6082-T6', '6082-T6', 'AlSi1MgMn'],
    source: 'EN 573-3; EN 755-2',
  },
  {
    grade: 'EN AW-2618A',
    group: 'wrought aluminium',
    aliases: ['2618A', '2618', 'EN AW-2618A-T6', '2618A-T6', 'AlCu2Mg1.5Ni'],
    source: 'EN 573-3',
  },
  { grade: 'CuSn8', group: 'bronze', aliases: ['CW453K', 'C52100'], source: 'EN 12163' },
  { grade: 'CuSn12-C', group: 'bronze', aliases: ['CC483K', 'CuSn12'], source: 'EN 1982' },
]

/** Upper and lower case, spaces and hyphens do not tell grades apart; a delivery condition (`+QT`) is not part of one. */
const plain = (written: string): string =>
  written
    .replace(/\+[A-Za-z]+$/, '')
    .replace(/[\s_-]/g, '')
    .toLowerCase()

const BY_NAME: ReadonlyMap<string, MaterialEntry> = new Map(
  MATERIALS.flatMap(entry => [entry.grade, ...entry.aliases].map(name => [plain(name), entry] as const)),
)

/** Exact look-up by grade or listed alias; no nearest match. */
export const materialOf = (written: string): MaterialEntry | undefined => BY_NAME.get(plain(written))

/** Every name that `materialOf` knows, for suggestions. */
export const MATERIAL_NAMES: readonly string[] = MATERIALS.flatMap(({ grade, aliases }) => [grade, ...aliases])

const NO_STEEL: ReadonlySet<MaterialGroup> = new Set(['grey iron', 'ductile iron', 'wrought aluminium', 'bronze'])

/** Whether a grade is a steel: iron castings, aluminium and bronze are not. A grade that is not listed is taken for one. */
export function isSteel(grade: string): boolean {
  const group = materialOf(grade)?.group
  return group === undefined || !NO_STEEL.has(group)
}
