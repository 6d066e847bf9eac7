import type { Place } from '../finding.ts'
import type { OwnColumns } from '../part/read-own-list.ts'
import type { LostPiece, Results } from '../part/results.ts'
import type { ResultsReader } from '../reader.ts'
import type { Clearance } from '../record/pair-pistons.ts'
import type { Options } from './options.ts'
import { UsageProblem } from './world.ts'

export type RecordOptions = Omit<Options, 'for'> & {
  /** Print what came back for them. */
  readonly for?: readonly ResultsReader[]
  readonly columns?: string
  readonly lost?: readonly string[]
  /** Add what was learnt to the shop file. */
  readonly keep?: boolean
  /** CSV of a tray of pistons. */
  readonly pair?: string
  /** `0.057..0.073` */
  readonly clearance?: string
}

/** `serial=Nr,seat=D1` */
export function columnsOf(text: string | undefined): OwnColumns | undefined {
  if (text === undefined) return undefined
  const pairs = text.split(',').map((pair): [string, string] => {
    const [ours = '', theirs = ''] = pair.split('=').map(side => side.trim())
    if (ours === '' || theirs === '')
      throw new UsageProblem(`--columns wants our name and theirs, as in serial=Nr,seat=D1, got "${pair}"`)
    return [ours, theirs]
  })
  return new Map(pairs)
}

/** `0.057..0.073`, or with what is wanted between: `0.057..0.065..0.073`. */
export function clearanceOf({ pair, clearance }: Pick<RecordOptions, 'pair' | 'clearance'>): Clearance | undefined {
  if (pair === undefined && clearance === undefined) return undefined
  if (pair === undefined || clearance === undefined)
    throw new UsageProblem(
      '--pair and --clearance go together: a tray of pistons, and the clearance as in 0.057..0.073',
    )
  const ends = clearance.split('..').map(Number)
  const [least, middle, top] = ends
  const most = top ?? middle
  const wanted = top === undefined && least !== undefined && most !== undefined ? (least + most) / 2 : middle
  const given = [least, wanted, most].every(value => value !== undefined && Number.isFinite(value))
  if (
    !given ||
    ends.length > 3 ||
    least === undefined ||
    most === undefined ||
    wanted === undefined ||
    !(least <= wanted && wanted <= most && least < most)
  )
    throw new UsageProblem(`--clearance wants least and most, as in 0.057..0.073, got "${clearance}"`)
  return { least, most, wanted }
}

const LOST = /^([A-Z]?\d+)(?:@(\d+))?(?:=(.*))?$/

/** `7@80=corner chipped`: which piece, at which operation, why. */
export function lostOf(texts: readonly string[], date: string): readonly Results[] {
  if (texts.length === 0) return []
  const at: Place = { file: '--lost', line: 1, column: 1 }
  const lost = texts.map((text): LostPiece => {
    const [, serial, operation, why] = LOST.exec(text.trim()) ?? []
    if (serial === undefined) throw new UsageProblem(`--lost wants a piece, as in 7@80="corner chipped", got "${text}"`)
    return {
      serial,
      at,
      ...(operation !== undefined && { operation: Number(operation) }),
      ...(why !== undefined && why !== '' && { why }),
    }
  })
  return [{ file: '--lost', date, readings: [], lost, at }]
}
