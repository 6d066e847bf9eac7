import { CARBURISED_CORE, CARBURISED_SURFACE, CHD_LIMIT } from '../handbook/carburising.ts'
import type { DepthTerm } from '../handbook/case-tolerance.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import { vickersFromRockwell } from '../handbook/hardness-conversion.ts'
import { CARBON, INDUCTION_SURFACE, martensiteHardness, SHD_SHARE } from '../handbook/induction.ts'
import { isSteel, materialOf } from '../handbook/materials.ts'
import { type NitridedGrade, nitridedGrade, type Range } from '../handbook/nitriding-steels.ts'
import { fromHandbook, type Known, known, type Origin } from '../known.ts'
import type { Part } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import type { Vickers } from '../units.ts'
import type { Notebook } from '../working.ts'

/** What the grade reaches in the process. */
export type CaseFigures = {
  readonly term: DepthTerm
  readonly surface: Range & Origin
  readonly core: Known<'HV'>
  /** Where the hardness depth ends. */
  readonly limit: Vickers
  /** Nitriding only, at 520 °C. */
  readonly depthConstant?: Range & Origin
  readonly tempered: boolean
}

/** Delivered quenched and tempered, so that a hot cycle can soften the core. */
const TEMPERED_GROUPS: ReadonlySet<string> = new Set(['heat-treatable steel', 'nitriding steel', 'bearing steel'])

const exactly = (value: number): Range => ({ least: value, usual: value, most: value })

const from = ({ least, usual, most }: Range, origin: Origin): Range & Origin => ({ least, usual, most, ...origin })

const REACHED: Origin = { from: 'shop', source: 'shop: reached by its hardener' }

/** The figures, each noted with where it comes from; or the names of those that nobody has given. */
export function caseFigures(
  notebook: Notebook,
  part: Part,
  shop: Shop,
  window: HardeningWindow,
): CaseFigures | { readonly missing: readonly string[] } {
  const { grade, hardness } = part.material
  const reached = shop.reached.find(row => row.grade === grade)
  const listed = listedFigures(notebook, grade, window)
  const book = fromHandbook(listed?.source ?? '')
  const surface = reached ? from(exactly(reached.surface), REACHED) : listed?.surface && from(listed.surface, book)
  // The bar's own hardness is the core's, as long as the temper is not passed; carburising quenches the core anew.
  const ownCore = window.term === 'CHD' ? undefined : hardness
  const core = coreOf(reached?.core, ownCore, listed?.core && known(listed.core.usual, 'HV', book))
  const depthConstant =
    reached?.depthConstant === undefined
      ? listed?.depthConstant && from(listed.depthConstant, book)
      : from(exactly(reached.depthConstant), REACHED)
  const missing = [
    ...(surface ? [] : ['surface hardness']),
    ...(core === undefined ? ['core hardness'] : []),
    ...(depthConstant || window.term !== 'NHD' ? [] : ['depth constant']),
  ]
  if (!surface || core === undefined || missing.length > 0) return { missing }

  const note = ({
    symbol,
    meaning,
    value,
    unit,
    source,
    range,
  }: {
    readonly symbol: string
    readonly meaning: string
    readonly value: number
    readonly unit: string
    readonly source: string
    readonly range?: Range | undefined
  }) =>
    notebook.note({
      about: 'case',
      symbol,
      meaning,
      value,
      unit,
      expression: range && range.least !== range.most ? `${range.least} to ${range.most}` : '',
      source,
    })
  note({
    symbol: 'H_s',
    meaning: `surface hardness of ${grade}, ${part.hardening?.process}`,
    value: surface.usual,
    unit: 'HV',
    source: surface.source,
    range: surface,
  })
  note({
    symbol: 'H_c',
    meaning: 'core hardness',
    value: core.value,
    unit: 'HV',
    source: core.source,
    range: core.from === 'handbook' ? listed?.core : undefined,
  })
  if (depthConstant && window.term === 'NHD') {
    note({
      symbol: 'K_520',
      meaning: 'depth constant at 520 °C',
      value: depthConstant.usual,
      unit: 'mm/h^0.5',
      source: depthConstant.source,
      range: depthConstant,
    })
  }
  return {
    term: window.term,
    surface,
    core,
    limit: limitHardness(window, core.value, part.hardening?.hardness?.least ?? surface.usual),
    ...(depthConstant && { depthConstant }),
    tempered: window.term === 'NHD' && (listed?.tempered ?? TEMPERED_GROUPS.has(materialOf(grade)?.group ?? '')),
  }
}

/** What the hardener reaches goes before the bar's own, and that before the grade's. */
function coreOf(
  reached: Vickers | undefined,
  own: Vickers | undefined,
  listed: Known<'HV'> | undefined,
): Known<'HV'> | undefined {
  if (reached !== undefined) return known(reached, 'HV', REACHED)
  return own === undefined ? listed : known(own, 'HV', { from: 'part', source: 'part file: hardness of the bar' })
}

/** Core and 50 HV; 550 HV; or a share of the least surface hardness, which is the one asked. */
function limitHardness({ term }: HardeningWindow, core: Vickers, asked: Vickers): Vickers {
  if (term === 'NHD') return core + 50
  return term === 'CHD' ? CHD_LIMIT : SHD_SHARE * asked
}

function listedFigures(notebook: Notebook, grade: string, { term }: HardeningWindow): NitridedGrade | undefined {
  if (term === 'NHD') return nitridedGrade(grade)
  if (term === 'CHD') return carburisedGrade(grade)
  const about = { about: 'case' }
  const tempered = INDUCTION_SURFACE[grade]
  if (tempered) {
    const at = (HRC: number) => notebook.use(vickersFromRockwell, { HRC }, about)
    const { least, most } = tempered
    const surface = { least: at(least), usual: at((least + most) / 2), most: at(most) }
    // A bar says its own hardness; a casting is not asked for it.
    const core = isSteel(grade) ? undefined : nitridedGrade(grade)?.core
    return {
      grade,
      surface,
      ...(core && { core }),
      tempered: false,
      source: `memory: ${least} to ${most} HRC after a temper at 160 to 180 °C`,
    }
  }
  const C = CARBON[grade]
  if (C === undefined) return undefined
  const HRC = notebook.use(martensiteHardness, { C }, about)
  const surface = exactly(notebook.use(vickersFromRockwell, { HRC }, about))
  return { grade, surface, tempered: false, source: `${martensiteHardness.source}; carbon by the designation` }
}

/** Case-hardening steels reach one surface hardness, whatever their name. */
function carburisedGrade(grade: string): NitridedGrade | undefined {
  if (materialOf(grade)?.group !== 'case-hardening steel' && grade !== 'C15') return undefined
  return {
    grade,
    surface: CARBURISED_SURFACE,
    core: CARBURISED_CORE,
    tempered: false,
    source: `${CARBURISED_SURFACE.source}; core ${CARBURISED_CORE.source}`,
  }
}
