import type { Degree, Millimetre } from '../units.ts'

type Named<K extends string> = { readonly kind: K; readonly name: string }

/** Flutes, or flutes and neck, go as deep as `fluteLength`, up to the shank; it stands out of the holder by `reach`. */
type Shanked = {
  /** Its place in the magazine of the machine, which a program calls it by; absent where nobody has said. */
  readonly pocket?: number
  readonly diameter: Millimetre
  readonly fluteLength: Millimetre
  readonly shank: Millimetre
  readonly reach: Millimetre
}

export type EndMill = Named<'end mill'> &
  Shanked & {
    readonly teeth: number
    /** Relieved behind its edges up to the shank; absent of a cutter that is fluted all the way, or not known to be relieved. */
    readonly neck?: Neck
  }

type Neck = {
  readonly diameter: Millimetre
  /** The edges themselves, from the tip to where the neck begins. */
  readonly edges: Millimetre
}

export type Drill = Named<'drill'> & Shanked & { readonly point: Degree }

export type TurningTool = Named<'turning tool'> & { readonly noseRadius: Millimetre }

export type BarMaterial = 'steel' | 'heavyMetal' | 'carbide' | 'damped'

export type BoringBar = Named<'boring bar'> & {
  readonly diameter: Millimetre
  /** How far it can stand out. */
  readonly reach: Millimetre
  readonly noseRadius: Millimetre
  readonly material: BarMaterial
}

type PartingBlade = Named<'parting blade'> & { readonly width: Millimetre; readonly reach: Millimetre }

type Marked<K extends string> = Named<K> & {
  readonly diameter: Millimetre
  readonly width: Millimetre
  /** Marking of the wheel in the order of ISO 525: abrasive, grit, grade, bond. */
  readonly grade: string
}

type OutsideWheel = Marked<'grinding wheel'>

export type InternalWheel = Marked<'internal wheel'> & {
  /** Known or not: a works that does not give it gets no bend of it. */
  readonly quill?: { readonly diameter: Millimetre; readonly length: Millimetre }
}

type CentrelessWheel = Marked<'centreless wheel'>

type RegulatingWheel = Named<'regulating wheel'> & { readonly diameter: Millimetre }

type FaceWheel = Named<'face wheel'> & { readonly diameter: Millimetre; readonly grade: string }

export type Abrasive = 'A' | 'C' | 'CBN'

/** The head opens to suit the bore. */
export type Hone = Named<'hone'> & {
  readonly stones: {
    readonly count: number
    readonly length: Millimetre
    readonly abrasive: Abrasive
    readonly grit: number
  }
}

/** Bored to `diameter`, charged with a compound of a grit of FEPA. */
export type RingLap = Named<'ring lap'> & {
  readonly diameter: Millimetre
  readonly length: Millimetre
  /** Marking of the compound, `A F500`. */
  readonly grade: string
  readonly grit: number
}

export type Tool =
  | EndMill
  | Drill
  | TurningTool
  | BoringBar
  | PartingBlade
  | OutsideWheel
  | InternalWheel
  | FaceWheel
  | CentrelessWheel
  | RegulatingWheel
  | Hone
  | RingLap

export type ToolKind = Tool['kind']
export type ToolOf<K extends ToolKind> = Extract<Tool, { readonly kind: K }>

/** The tools of one kind, in the order that the works lists them. */
export const toolsOf = <K extends ToolKind>(
  { tools }: { readonly tools: readonly Tool[] },
  kind: K,
): readonly ToolOf<K>[] => tools.filter((tool): tool is ToolOf<K> => tool.kind === kind)
