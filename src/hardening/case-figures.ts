import { CARBURISED_CORE, CARBURISED_SURFACE, CHD_LIMIT } from '../handbook/carburising.ts'
import type { HardeningWindow } from '../handbook/hardening-processes.ts'
import { vickersFromRockwell } from '../handbook/hardness-conversion.ts'
import { CARBON, martensiteHardness, SHD_SHARE } from '../handbook/induction.ts'
import { materialOf } from '../handbook/materials.ts'
import { type NitridedGrade, nitridedGrade, type Range } from '../handbook/nitriding-steels.ts'
import type { Part } from '../part/part.ts'
import type { Shop } from '../shop/shop.ts'
import type { Celsius, Vickers } from '../units.ts'
import type { Notebook } from '../working.ts'

/** What the grade reaches in the process. */
export type CaseFigures = {
  readonly surface: Range
  readonly core: Vickers
  /** Where the hardness depth ends. */
  readonly limit: Vickers
  /** Nitriding only, at 520 °C. */
  readonly depthConstant?: Range
  readonly tempered: boolean
}

/** Delivered quenched and tempered, so that a hot cycle can soften the core. */
const TEMPERED_GROUPS: ReadonlySet<string> = new Set(['heat-treatable steel', 'nitriding steel', 'bearing steel'])

const exactly = (value: number): Range => ({ least: value, usual: value, most: value })

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
  const surface = reached ? exactly(reached.surface) : listed?.surface
  // The bar's own hardness is the core's, as long as the temper is not passed; carburising quenches the core anew.
  const ownCore = window.term === 'CHD' ? undefined : hardness
  const core = reached?.core ?? ownCore ?? listed?.core?.usual
  const depthConstant = reached?.depthConstant === undefined ? listed?.depthConstant : exactly(reached.depthConstant)
  const missing = [
    ...(surface ? [] : ['surface hardness']),
    ...(core === undefined ? ['core hardness'] : []),
    ...(depthConstant || window.term !== 'NHD' ? [] : ['depth constant']),
  ]
  if (!surface || core === undefined || missing.length > 0) return { missing }

  const fromShop = 'shop: reached by its hardener'
  const fromBook = listed?.source ?? ''
  const note = (symbol: string, meaning: string, value: number, unit: string, source: string, range?: Range) =>
    notebook.note({
      about: 'case',
      symbol,
      meaning,
      value,
      unit,
      expression: range && range.least !== range.most ? `${range.least} to ${range.most}` : '',
      source,
    })
  note(
    'H_s',
    `surface hardness of ${grade}, ${part.hardening?.process}`,
    surface.usual,
    'HV',
    reached ? fromShop : fromBook,
    surface,
  )
  const coreSource = reached ? fromShop : ownCore === undefined ? fromBook : 'part file: hardness of the bar'
  note('H_c', 'core hardness', core, 'HV', coreSource, reached || ownCore !== undefined ? undefined : listed?.core)
  if (depthConstant && window.term === 'NHD') {
    const source = reached?.depthConstant === undefined ? fromBook : fromShop
    note('K_520', 'depth constant at 520 °C', depthConstant.usual, 'mm/h^0.5', source, depthConstant)
  }
  return {
    surface,
    core,
    limit: limitHardness(window, core, part.hardening?.hardness?.least ?? surface.usual),
    ...(depthConstant && { depthConstant }),
    tempered: window.term === 'NHD' && (listed?.tempered ?? TEMPERED_GROUPS.has(materialOf(grade)?.group ?? '')),
  }
}

/** Core and 50 HV; 550 HV; or a share of the least surface hardness, which is the one asked. */
function limitHardness({ term }: HardeningWindow, core: Vickers, asked: Vickers): Vickers {
  if (term === 'NHD') return core + 50
  return term === 'CHD' ? CHD_LIMIT : SHD_SHARE * asked
}

function listedFigures(notebook: Notebook, grade: string, { term }: HardeningWindow): NitridedGrade | undefined {
  if (term === 'NHD') return nitridedGrade(grade)
  if (term === 'CHD') return carburisedGrade(grade)
  const C = CARBON[grade]
  if (C === undefined) return undefined
  const about = { about: 'case' }
  const HRC = notebook.use(martensiteHardness, { C }, about)
  const surface = exactly(notebook.use(vickersFromRockwell, { HRC }, about))
  return { grade, surface, tempered: false, source: `${martensiteHardness.source}; carbon by the designation` }
}

/** Case-hardening steels reach one surface hardness, whatever their name. */
function carburisedGrade(grade: string): NitridedGrade | undefined {
  if (grade !== '16MnCr5' && grade !== '20MnCr5') return undefined
  return {
    grade,
    surface: CARBURISED_SURFACE,
    core: CARBURISED_CORE,
    tempered: false,
    source: `${CARBURISED_SURFACE.source}; core ${CARBURISED_CORE.source}`,
  }
}

/** Temperature that the case is planned at: the part's own, the process's, or the works' habit. */
export function caseTemperature(part: Part, shop: Shop, window: HardeningWindow): Celsius {
  return part.hardening?.temperature ?? window.temperature.usual ?? shop.habits.nitridingTemperature
}
