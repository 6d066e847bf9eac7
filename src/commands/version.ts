import manifest from '../../package.json' with { type: 'json' }

export const PROGRAM: string = manifest.name
export const VERSION: string = manifest.version
