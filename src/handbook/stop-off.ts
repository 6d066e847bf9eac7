/** What keeps a surface from taking case. */
export type StopOff = {
  readonly method: string
  /** µm. */
  readonly thickness?: { readonly least: number; readonly most: number }
  readonly processes: readonly string[]
  readonly use: string
  readonly source: string
}

export const STOP_OFFS: readonly StopOff[] = [
  {
    method: 'copper plate',
    thickness: { least: 18, most: 25 },
    processes: ['gas nitriding', 'salt-bath nitriding', 'nitrocarburising'],
    use: 'threads and seats, on ground surfaces; 25 to 40 µm on rougher ones; strip it before grinding',
    source: 'memory: nitriding practice; in a salt bath the only usual mask',
  },
  {
    method: 'bronze plate',
    thickness: { least: 12, most: 25 },
    processes: ['gas nitriding'],
    use: 'as copper',
    source: 'memory',
  },
  {
    method: 'tin plate',
    thickness: { least: 10, most: 15 },
    processes: ['gas nitriding'],
    use: 'fine surfaces: thin, or it runs; never in a salt bath',
    source: 'memory; one text states 20 to 30 µm (Doroshenko, p. 31)',
  },
  {
    method: 'stop-off paint',
    processes: ['gas nitriding', 'plasma nitriding', 'nitrocarburising', 'carburising'],
    use: 'threads and cross-holes: two coats, fully dry, as its maker says',
    source: 'common practice, no source',
  },
  {
    method: 'caps and plugs',
    processes: ['plasma nitriding'],
    use: 'fitted tight',
    source: 'common practice, no source',
  },
]

export const stopOffsFor = (process: string): readonly StopOff[] =>
  STOP_OFFS.filter(({ processes }) => processes.includes(process))
