import type { Units } from '../figures.ts'
import { drawSmaller, openPictures } from '../pictures/draw-pictures.ts'
import type { Plan } from '../plan/plan.ts'
import type { Reader } from '../reader.ts'
import { type NamedDocument, type Printed, type PrintOptions, printDocuments } from './print-document.ts'
import { packetData } from './screen-data.ts'
import { type PacketSet, packetSets } from './sets.ts'
import type { Paper } from './theme.ts'
import { titleBlock } from './title-block.ts'
import { paperFigures } from './views/paper-figures.ts'

export type PacketOptions = PrintOptions & {
  readonly paper: Paper
  readonly units: Units
  /** Whose paper is wanted; left out: everybody's. */
  readonly readers?: readonly Reader[]
}

/** The paper of a batch, one document a reader; the screen, which is the file's, has all of them and what nobody carries about. */
export const packet = (plan: Plan, options: PacketOptions): Promise<Printed> =>
  printSets(plan, options, wholePacket(options))

/** Every set for its reader. */
function wholePacket({ readers }: Pick<PacketOptions, 'readers'>): Choice {
  const wants = (reader: Reader): boolean => readers === undefined || readers.includes(reader)
  return {
    onPaper: ({ reader }) => reader !== 'asked' && reader !== 'file' && wants(reader),
    onScreen: () => wants('file'),
  }
}

/** What is chosen of the sets of a packet, and of their sheets. */
export type Choice = {
  readonly onPaper: (set: PacketSet) => boolean
  readonly onScreen: (set: PacketSet) => boolean
  /** Left out: all sheets of a set. */
  readonly only?: (names: readonly string[]) => boolean
  /** Printed in every head. */
  readonly note?: string
}

/** Prints what is chosen of a packet. */
export const printSets = (plan: Plan, options: PacketOptions, choice: Choice): Promise<Printed> =>
  printDocuments(documentsOf(plan, options, choice), packetData(plan, options.units), options)

/** What is chosen of a packet, drawn and filled, before it is laid out. */
function documentsOf(plan: Plan, options: PacketOptions, choice: Choice): readonly NamedDocument[] {
  const { paper, units, typeface, formats } = options
  const { note, only } = choice
  const pictures = openPictures(plan, typeface.measure, units)
  const smaller = drawSmaller(plan, typeface.measure, units)
  const block = titleBlock(plan, note)
  return packetSets(plan, pictures.names, paperFigures(units)).map((set): NamedDocument => {
    const { name, title, way, reader, sheets } = set
    return {
      name,
      onPaper: formats.pdf && choice.onPaper(set),
      onScreen: formats.html && choice.onScreen(set),
      ...(only && { only }),
      set: title,
      way,
      screenOnly: reader === 'file',
      block,
      sheets,
      pictures,
      paper,
      smaller,
    }
  })
}
