import { type SpawnSyncReturns, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT: string = fileURLToPath(new URL('../../', import.meta.url))
/** The command as it is installed: one bundle, as `npm ci` and `npm run build` leave it. */
export const BUILT: string = join(ROOT, 'dist/main.cjs')
if (!existsSync(BUILT)) throw new Error('dist/main.cjs is not there: npm run build')

export const built = (...argv: readonly string[]): SpawnSyncReturns<string> =>
  spawnSync(process.execPath, [BUILT, ...argv], { encoding: 'utf8', cwd: ROOT })

export const scratch = (): string => mkdtempSync(join(tmpdir(), 'linerwright-test-'))

/** What nobody at a terminal should ever meet. */
export const STACK_TRACE: RegExp = /\n\s+at |node:internal|\.c?js:\d+/
