import { escaped } from '../pictures/picture-svg.ts'
import type { LaidDocument } from './lay-out-document.ts'

/** Where a sheet stands on the screen. */
export const anchorOf = (set: number, sheet: number): string => `sheet-${set + 1}-${sheet + 1}`

/** Every sheet by its set, to go to. */
export const contents = (sets: readonly LaidDocument[]): string => `<nav aria-label="Contents">
<h2>Contents</h2>
${sets
  .map(
    ({ set, sheets }, index) => `<p>${escaped(setName(set))}</p>
<ul>
${sheets
  .map(({ corner, heading }, sheet) => {
    const number = /^[\d ]+$/.test(corner) ? `<b>${escaped(corner)}</b> ` : ''
    return `<li><a href="#${anchorOf(index, sheet)}">${number}${escaped(heading)}</a></li>`
  })
  .join('\n')}
</ul>`,
  )
  .join('\n')}
</nav>`

/** As its sheets are counted, without the word that counts them. */
const setName = (set: string): string => set.replace(/, sheet$/, '')
