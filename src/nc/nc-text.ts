type Word = 'X' | 'Y' | 'Z' | 'A' | 'F'
export type Words = { readonly [word in Word]?: number }

/** Writes blocks of ISO 6983; a word that has not changed is left out. */
export type NcText = {
  /**
   * A comment on a line of its own. What a control may not take inside one is left out or written otherwise: brackets would end
   * it early, % ends the whole program (ISO 6983-1), and letters beyond ASCII become the nearest plain ones.
   */
  readonly comment: (text: string) => void
  /** The next block carries a number, by which a run is taken up again. */
  readonly label: () => void
  /** A block of plain words. */
  readonly block: (words: string) => void
  /** A move with its G word: nothing is written where no axis moves. */
  readonly move: (g: 'G0' | 'G1', to: Words) => void
  /** The next words are written in full. */
  readonly forget: () => void
  readonly text: () => string
}

/** `.000` to `.999`. */
const THOUSANDTHS = Array.from({ length: 1000 }, (_, thousandths) => `.${String(thousandths).padStart(3, '0')}`)

/** Three places, put together from whole numbers: a program has tens of thousands of words. */
function written(thousandths: number): string {
  const size = Math.abs(thousandths)
  const places = size % 1000
  return `${thousandths < 0 ? '-' : ''}${(size - places) / 1000}${THOUSANDTHS[places] ?? ''}`
}

const PLAIN: Readonly<Record<string, string>> = {
  '%': ' per cent',
  Ø: 'O',
  ø: 'o',
  ß: 'ss',
  Æ: 'AE',
  æ: 'ae',
  µ: 'u',
  '−': '-',
}

/** Accents are dropped, a few letters and signs written out; of the rest a question mark tells that something stood there. */
const plain = (text: string): string =>
  text
    .replace(/[()]/g, '')
    .replace(/[^\x20-\x24\x26-\x7e]/gu, letter => PLAIN[letter] ?? letter)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\x20-\x24\x26-\x7e]/gu, '?')

export function openNcText(): NcText {
  const lines: string[] = []
  let last: { [word in Word]?: number } = {}
  let number = 0
  let labelled = false
  const block = (words: string): void => {
    if (labelled) number += 10
    lines.push(labelled ? `N${number} ${words}` : words)
    labelled = false
  }
  return {
    comment: text => {
      lines.push(`(${plain(text)})`)
    },
    label: () => {
      labelled = true
    },
    block,
    move: (g, to) => {
      let words = ''
      for (const word of ['X', 'Y', 'Z', 'A'] as const) {
        const value = to[word]
        if (value === undefined) continue
        // Adding zero turns a negative zero into a plain one.
        const thousandths = Math.round(value * 1000) + 0
        if (last[word] === thousandths) continue
        last[word] = thousandths
        words += ` ${word}${written(thousandths)}`
      }
      if (words === '') return
      const feed = to.F === undefined ? undefined : Math.max(1, Math.round(to.F))
      if (g === 'G1' && feed !== undefined && last.F !== feed) {
        last.F = feed
        words += ` F${feed}`
      }
      block(`${g}${words}`)
    },
    forget: () => {
      last = {}
    },
    text: () => `%\n${lines.join('\n')}\n%\n`,
  }
}
