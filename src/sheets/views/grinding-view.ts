import { angle, signed } from '../../figures.ts'
import type { FaceList } from '../../record/face-take-off.ts'
import type { GrindingList, Turn } from '../../record/in-hand.ts'
import type { PaperFigures } from './paper-figures.ts'
import { whatToDo, whatToFace } from './piece-words.ts'

/** One line a piece, in the order to grind them. */
export type GrindingView = {
  readonly unit: string
  readonly limits: string
  readonly case: string
  readonly setUp: string
  readonly pieces: readonly {
    readonly piece: string
    readonly stands: string
    readonly make: string
    readonly runOut: string
    readonly takes: string
    readonly todo: string
    readonly granted: string
  }[]
  readonly lost: readonly { readonly piece: string; readonly stands: string; readonly todo: string }[]
}

export function grindingView(list: GrindingList, figures: PaperFigures, units: 'mm' | 'inch'): GrindingView {
  const { length, notOver } = figures
  const stands = ({ inHand: { least, most } }: Turn): string => `${length(least, 3)} to ${length(most, 3)}`
  return {
    unit: figures.unit,
    limits: figures.limits(list, 'hole', 3),
    case: list.case
      ? `${length(list.case.certified, 2)} ${figures.unit} ${list.case.by === 'certificate' ? 'certified' : 'ordered'}; ${length(list.case.wanted)} to be left, with what a later operation takes`
      : '',
    setUp:
      list.setUpPiece === undefined
        ? 'No piece bears an error in setting up: indicate each.'
        : `Set up with piece ${list.setUpPiece}, which bears most. Dress before the pieces with a narrow window.`,
    pieces: list.turns.map(turn => {
      const { from, to } = turn.window
      return {
        piece: turn.serial,
        stands: stands(turn),
        make:
          from === undefined || to === undefined
            ? 'set true first'
            : figures.limits({ lower: from, upper: to }, 'hole', 3),
        runOut: notOver(Math.max(0, turn.window.bears.most), 3),
        takes: turn.takes ? `${length(turn.takes.least, 3)} to ${length(turn.takes.most, 3)}` : '',
        todo: turn.window.verdict === 'grind as planned' ? '' : whatToDo(turn, units),
        granted: turn.assumed.join('; '),
      }
    }),
    lost: list.lost.map(turn => ({ piece: turn.serial, stands: stands(turn), todo: whatToDo(turn, units) })),
  }
}

/** The top face of each piece, to put the edge that times the engine right. */
export type FaceView = {
  readonly unit: string
  readonly port: string
  readonly wanted: string
  readonly limits: string
  readonly timed: boolean
  readonly pieces: readonly {
    readonly piece: string
    readonly edge: string
    readonly length: string
    readonly off: string
    readonly comes: string
    readonly sooner: string
    readonly todo: string
    readonly granted: string
  }[]
}

export function faceView({ port, wanted, length: limits, turns }: FaceList, figures: PaperFigures): FaceView {
  const { length } = figures
  return {
    unit: figures.unit,
    port,
    wanted: length(wanted, 3),
    limits: figures.limits(limits, 'hole', 3),
    timed: turns.some(({ sooner }) => sooner !== undefined),
    pieces: turns.map(turn => ({
      piece: turn.serial,
      edge: length(turn.edge, 3),
      length: length(turn.length, 3),
      off: turn.off === undefined ? '' : length(turn.off, 3),
      comes: length(turn.comes, 3),
      sooner: turn.sooner === undefined ? '' : signed(angle(turn.sooner, 2)),
      todo: whatToFace(turn),
      granted: turn.assumed.join('; '),
    })),
  }
}
