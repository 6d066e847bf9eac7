/** What was typed into one cell, and the day on which it was. */
export type Typed = { readonly text: string; readonly date: string }

/** All that a person entered, by cell. */
export type Entered = {
  readonly cells: Readonly<Record<string, Typed>>
  readonly done: readonly string[]
  readonly by: string
  readonly temperature: string
}

const NOTHING: Entered = { cells: {}, done: [], by: '', temperature: '' }

export type Keeper = {
  readonly now: () => Entered
  /** Whether it will still be there tomorrow. */
  readonly change: (change: Partial<Entered>) => boolean
}

/** Kept by the browser under the fingerprint of the plan: another issue of the packet begins empty. */
export function keeperOf(fingerprint: string): Keeper {
  const key = `linerwright ${fingerprint}`
  let entered = read(key)
  return {
    now: () => entered,
    change: change => {
      entered = { ...entered, ...change }
      try {
        localStorage.setItem(key, JSON.stringify(entered))
        return true
      } catch {
        // Private windows, and browsers that keep nothing for files.
        return false
      }
    },
  }
}

function read(key: string): Entered {
  try {
    return { ...NOTHING, ...JSON.parse(localStorage.getItem(key) ?? '{}') }
  } catch {
    return NOTHING
  }
}
