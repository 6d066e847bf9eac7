import type { Units } from '../figures.ts'
import { inUnits, micrometre, roundedDown, roundedUp } from '../figures.ts'
import { type Measure, onPaper, type Picture } from '../pictures/picture.ts'
import { drawReadingStrip, type Strip } from '../pictures/reading-strip.ts'
import type { Plan } from '../plan/plan.ts'
import type { ResultsReader } from '../reader.ts'
import type { Learnt } from '../record/learn.ts'
import type { PairedBatch } from '../record/pair-batch.ts'
import type { Column, Recorded } from '../record/record-batch.ts'
import type { SheetToPrint } from './lay-out-document.ts'
import { type Printed, type PrintOptions, printDocuments } from './print-document.ts'
import { packetData } from './screen-data.ts'
import type { Paper, Way } from './theme.ts'
import { titleBlock } from './title-block.ts'
import { faceView, grindingView } from './views/grinding-view.ts'
import { growthName, growthView } from './views/growth-view.ts'
import { pairsView } from './views/pairs-view.ts'
import { type PaperFigures, paperFigures } from './views/paper-figures.ts'
import { resultsView, stripName } from './views/results-view.ts'
import { statementView } from './views/statement-view.ts'

/** What came back of a batch, to print. */
export type ResultsToPrint = {
  readonly plan: Plan
  readonly recorded: Recorded
  readonly pairing?: PairedBatch | undefined
  /** Of the results, the first and the last count. */
  readonly dates: readonly string[]
}

export type ResultsPaperOptions = Omit<PrintOptions, 'formats' | 'script'> & {
  readonly paper: Paper
  readonly units: Units
  readonly readers: readonly ResultsReader[]
}

/** The sheets of one reader. */
export type ResultsSet = {
  readonly reader: ResultsReader
  readonly name: string
  readonly title: string
  readonly way: Way
  readonly sheets: readonly SheetToPrint[]
}

/** Half the width of a sheet less half a gutter. */
const STRIP_WIDTH = onPaper(86)

/** Prints the results for their readers: one PDF each, and all of it for a screen where the file wants it. Same input, same bytes. */
export function resultsPaper(given: ResultsToPrint, options: ResultsPaperOptions): Promise<Printed> {
  const { paper, units, readers, typeface } = options
  const pictures = resultsPictures(given.recorded, typeface.measure, units)
  const block = titleBlock(given.plan, noteOf(given.dates))
  const documents = resultsSets(given, paperFigures(units), units).map(({ reader, name, title, way, sheets }) => ({
    name,
    onPaper: readers.includes(reader),
    onScreen: readers.includes('file'),
    set: title,
    way,
    block,
    sheets,
    pictures,
    paper,
  }))
  return printDocuments(documents, packetData(given.plan, units), {
    ...options,
    formats: { pdf: true, html: readers.includes('file') },
  })
}

const noteOf = (dates: readonly string[]): string | undefined => {
  const last = dates.at(-1)
  return last === undefined ? undefined : `results to ${last}`
}

/** Every set that there is something to print in. */
export function resultsSets(given: ResultsToPrint, figures: PaperFigures, units: Units): readonly ResultsSet[] {
  const sets: readonly ResultsSet[] = [
    {
      reader: 'inspection',
      name: 'results',
      title: 'Results',
      way: 'upright',
      sheets: readSheets(given, figures),
    },
    {
      reader: 'grinder',
      name: 'grinding',
      title: 'Grinding',
      way: 'upright',
      sheets: grinderSheets(given, figures, units),
    },
    { reader: 'fitter', name: 'pairs', title: 'Pairs', way: 'upright', sheets: pairSheets(given, figures) },
    {
      reader: 'customer',
      name: 'statement',
      title: 'Statement',
      way: 'across',
      sheets: statementSheets(given, figures),
    },
  ]
  return sets.filter(({ sheets }) => sheets.length > 0)
}

/** Readers for whom there is something to print. */
export function resultsReadersOf(given: ResultsToPrint): readonly ResultsReader[] {
  const served = resultsSets(given, paperFigures('mm'), 'mm').map(({ reader }) => reader)
  return served.length > 0 ? [...served, 'file'] : []
}

function readSheets({ plan, recorded }: ResultsToPrint, figures: PaperFigures): readonly SheetToPrint[] {
  const { columns, learnt } = recorded
  const results: SheetToPrint = {
    template: 'results',
    documentType: 'Results',
    corner: 'Results',
    heading: 'What was measured, against its limits',
    view: resultsView(plan, recorded, figures),
    names: ['results'],
  }
  return [
    ...(columns.length > 0 ? [results] : []),
    ...(learnt
      ? [
          {
            template: 'growth',
            documentType: 'Growth',
            corner: String(learnt.operation),
            heading: 'What hardening did',
            view: growthView(learnt, figures),
            names: ['growth'],
          },
        ]
      : []),
  ]
}

function grinderSheets({ recorded }: ResultsToPrint, figures: PaperFigures, units: Units): readonly SheetToPrint[] {
  const { grinding, face } = recorded
  return [
    ...grinding.map(
      (list): SheetToPrint => ({
        template: 'grinding',
        documentType: 'Grinding list',
        corner: String(list.operation),
        heading: `Grind the ${list.surface}, piece by piece`,
        view: grindingView(list, figures, units),
        names: ['grinding'],
      }),
    ),
    ...(face
      ? [
          {
            template: 'facing',
            documentType: 'Facing list',
            corner: String(face.operation),
            heading: 'Grind the top face, piece by piece',
            view: faceView(face, figures),
            names: ['facing'],
          },
        ]
      : []),
  ]
}

function pairSheets({ plan, pairing }: ResultsToPrint, figures: PaperFigures): readonly SheetToPrint[] {
  if (!pairing || pairing.pairs.length === 0) return []
  const view = pairsView(plan, pairing, figures)
  const heading = 'Which piston to which liner'
  return [{ template: 'pairs', documentType: 'Pairs', corner: 'Pairs', heading, view, names: ['pairs'] }]
}

function statementSheets({ plan, recorded, dates }: ResultsToPrint, figures: PaperFigures): readonly SheetToPrint[] {
  const view = statementView(plan, recorded, figures, dates)
  if (!view) return []
  return [
    {
      template: 'statement',
      documentType: 'Statement of measurement',
      corner: plan.part.number,
      heading: 'What was measured on the finished pieces',
      view,
      names: ['statement'],
    },
  ]
}

/** A strip for every characteristic, and one for the growth of every surface. */
export function resultsPictures(
  { columns, learnt }: Pick<Recorded, 'columns' | 'learnt'>,
  measure: Measure,
  units: Units,
): ReadonlyMap<string, Picture> {
  const draw = (strip: Strip): Picture => drawReadingStrip(strip, STRIP_WIDTH, measure)
  return new Map([
    ...columns.map((column): [string, Picture] => [stripName(column), draw(stripOf(column, units))]),
    ...(learnt?.surfaces ?? [])
      .filter(({ pieces }) => pieces.length > 0)
      .map((surface): [string, Picture] => [growthName(surface.surface), draw(growthStrip(surface))]),
  ])
}

function stripOf({ characteristic, name, unit, lower, upper, guard, places, pieces }: Column, units: Units): Strip {
  const inches = unit === 'mm' && units === 'inch'
  const shown = (value: number): number => (unit === 'mm' ? inUnits(value, units) : value)
  return {
    title: `${characteristic} ${name}, ${inches ? 'in' : unit}`,
    limits: {
      ...(lower !== undefined && { lower: shown(lower) }),
      ...(upper !== undefined && { upper: shown(upper) }),
    },
    guard: shown(guard),
    written: {
      ...(lower !== undefined && { lower: unit === 'mm' ? roundedUp(lower, places, units) : String(lower) }),
      ...(upper !== undefined && { upper: unit === 'mm' ? roundedDown(upper, places, units) : String(upper) }),
    },
    pieces: pieces.map(({ serial, least, most, verdict }) => ({
      serial,
      least: shown(least),
      most: shown(most),
      verdict,
    })),
  }
}

/** What was planned for stands in the place of limits: outside it a piece grew otherwise, which is no fault of its own. */
function growthStrip({ surface, planned, pieces }: Learnt['surfaces'][number]): Strip {
  const um = (value: number): number => Number(micrometre(value, 2))
  const limits = planned ? { lower: um(planned.least), upper: um(planned.most) } : {}
  return {
    title: `${surface}: growth a side, µm, and what was planned`,
    limits,
    guard: 0,
    written: planned ? { lower: micrometre(planned.least, 1), upper: micrometre(planned.most, 1) } : {},
    pieces: pieces.map(({ serial, growth }) => ({ serial, least: um(growth), most: um(growth), verdict: 'in limits' })),
  }
}
