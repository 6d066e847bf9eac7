import { onPaper } from '../pictures/picture.ts'
import { type Paper, sheetOf } from './theme.ts'

const written = (paper: Paper, way: 'upright' | 'across'): string => {
  const { left, right } = sheetOf(paper, way)
  return `${((right - left) / onPaper(1)).toFixed(1)}mm`
}

/**
 * What only a screen has: contents beside the sheets, frames for wide tables, a dark ground, cells that take a reading. A verdict is
 * told in words and by the shape of the frame; colour carries nothing.
 */
export const screenStyle = (paper: Paper): string => `
header.title { display: block; padding: 4mm 0 0 }
header.title h1 { font-size: 14pt; line-height: 8mm }
nav, .readings { font-size: 11pt; line-height: 6mm }
nav h2 { font-size: 11pt; line-height: 6mm }
nav p { margin-top: 2mm; font-weight: bold }
nav li { padding: 0 }
nav li::before { content: none }
nav a { display: block; padding: 1mm 0; color: inherit }
:focus-visible { outline: 0.75mm solid; outline-offset: 0.5mm }
.wide { max-width: 100% }
.readings { display: flex; flex-wrap: wrap; gap: 2mm 6mm; align-items: center; padding: 2mm 4mm; border-top: 0.5mm solid; background: var(--ground) }
.readings > * { margin: 0 }
.readings label, .done { display: inline-flex; gap: 2mm; align-items: center }
.readings input[type=text] { width: 24mm; border: 0.25mm solid var(--edge); border-radius: 1mm }
.readings [role=status] { flex-basis: 100%; min-height: 6mm }
input, button { font: inherit; color: inherit; background: transparent; min-height: 8mm; padding: 0 1mm }
button { border: 0.5mm solid; border-radius: 1mm; padding: 0 3mm }
input[type=checkbox] { width: 6mm; height: 6mm; accent-color: var(--ink) }
td.write input { display: block; width: 100%; min-width: 14mm; border: 0; font-variant-numeric: tabular-nums }
td.write.reading { min-width: 19mm }
.verdict { display: block; font-size: 8pt; line-height: 3mm; white-space: nowrap; padding-bottom: 1mm }
td.write[data-verdict="in doubt"] { border: 0.5mm dashed }
td.write[data-verdict=out] { border: 1mm double; font-weight: bold }
td.write[data-verdict="no number"] { border: 0.5mm dotted }
@media print { nav, .readings, .done { display: none } header.title { display: none } }
@media screen {
body { padding: 0 4mm }
section { scroll-margin-top: 4mm }
section.across { width: ${written(paper, 'across')} }
section:not(.across) { width: ${written(paper, 'upright')} }
section + section { border-top: 0.5mm dashed var(--line); padding-top: 8mm }
.wide { overflow-x: auto }
figure { overflow-x: auto }
.readings { position: sticky; bottom: 0 }
nav { column-width: 60mm; column-gap: 6mm }
nav ul { break-inside: avoid-column }
}
@media screen and (min-width: 1200px) {
body { display: grid; grid-template-columns: 64mm minmax(0, 1fr); column-gap: 6mm; align-items: start }
header.title, .readings { grid-column: 1 / -1 }
nav { column-width: auto; position: sticky; top: 0; max-height: calc(100vh - 30mm); overflow-y: auto }
}
@media screen and (max-width: 700px) {
.columns { display: block }
.wide td:first-child:not(.num, [colspan]) { min-width: 30mm }
.columns > * + * { margin-top: 4mm }
body { padding: 0 2mm }
.readings { gap: 1mm 3mm; padding: 1mm 0; font-size: 10pt; line-height: 5mm }
.readings input[type=text] { width: 17mm }
.readings [role=status]:empty { display: none }
}
@media screen and (prefers-color-scheme: dark) {
:root { --ink: #e8e8e8; --ground: #161616; --line: #5a5a5a; --edge: #8f8f8f }
figure svg { filter: invert(1) hue-rotate(180deg) }
figure.code svg { filter: none; padding: 2mm; background: #fff }
}
`
