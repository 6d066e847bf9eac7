import { fixed } from '../../figures.ts'

type Word = 'X' | 'Y' | 'Z' | 'A' | 'F'
export type Words = { readonly [word in Word]?: number }

/** Writes blocks of ISO 6983 with running numbers; a word that has not changed is left out. */
export type NcText = {
  /** A comment on a line of its own; brackets inside would end it early and are left out. */
  readonly comment: (text: string) => void
  /** A block of plain words. */
  readonly block: (words: string) => void
  /** A move with its G word: nothing is written where no axis moves. */
  readonly move: (g: 'G0' | 'G1', to: Words) => void
  readonly text: () => string
}

export function openNcText(): NcText {
  const lines: string[] = []
  const last = new Map<string, string>()
  let number = 0
  const block = (words: string): void => {
    number += 10
    lines.push(`N${number} ${words}`)
  }
  return {
    comment: text => {
      lines.push(`(${text.replace(/[()]/g, '')})`)
    },
    block,
    move: (g, to) => {
      let words = ''
      for (const word of ['X', 'Y', 'Z', 'A'] as const) {
        const value = to[word]
        if (value === undefined) continue
        const text = fixed(value, 3)
        if (last.get(word) === text) continue
        last.set(word, text)
        words += ` ${word}${text}`
      }
      if (words === '') return
      const feed = to.F === undefined ? undefined : fixed(to.F, 0)
      if (g === 'G1' && feed !== undefined && last.get('F') !== feed) {
        last.set('F', feed)
        words += ` F${feed}`
      }
      block(`${g}${words}`)
    },
    text: () => `%\n${lines.join('\n')}\n%\n`,
  }
}
