import type { Plan } from '../plan/plan.ts'
import { type PacketOptions, printSets } from './packet.ts'
import type { Printed } from './print-document.ts'
import { type PacketSet, packetSets } from './sets.ts'
import { paperFigures } from './views/paper-figures.ts'

type Sheet = PacketSet['sheets'][number]

/** What a sheet of a plan may be asked for by: `80`, `ports`, `route`, each once, in the order of the packet. */
export function sheetNames(plan: Plan): readonly string[] {
  const sets = packetSets(plan, [], paperFigures('mm')).filter(({ reader }) => reader !== 'file')
  return [...new Set(sets.flatMap(({ sheets }) => sheets.flatMap(({ names }) => names)))]
}

/** Single sheets of an issued plan again, each with the number that it has in its set, and marked as a copy. */
export function sheetsAgain(plan: Plan, names: readonly string[], options: PacketOptions): Promise<Printed> {
  const isWanted = (own: readonly string[]): boolean => own.some(name => names.includes(name))
  const isAsked = (sheet: Sheet): boolean => isWanted(sheet.names)
  const isIssued = ({ reader }: PacketSet): boolean => reader !== 'asked'
  const issued = packetSets(plan, [], paperFigures('mm')).filter(set => set.sheets.some(isAsked))
  return printSets(
    plan,
    { ...options, formats: { pdf: true, html: false } },
    {
      onPaper: ({ reader, sheets }) => reader !== 'file' && sheets.some(isAsked),
      onScreen: () => false,
      only: isWanted,
      // What was not issued is no copy.
      ...(issued.some(isIssued) && { note: 'COPY of the sheet as issued' }),
    },
  )
}
