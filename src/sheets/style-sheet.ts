import { SVG_FONTS } from '../pictures/picture-svg.ts'
import { COLUMNS, type Paper, ROW_GREY, TYPE } from './theme.ts'

const grey = Math.round(ROW_GREY * 255)

/** The same page in the words of a browser: sizes, grid and margins are those of the paper. */
export const styleSheet = (paper: Paper): string => `
:root { --ink: #000; --ground: #fff; --line: rgb(${grey},${grey},${grey}); --edge: #767676 }
@page { size: ${paper === 'a4' ? 'A4' : 'letter'}; margin: 10mm 10mm 10mm 20mm }
* { box-sizing: border-box; margin: 0; padding: 0 }
body { font: ${TYPE.text}pt/4mm ${SVG_FONTS}; font-variant-numeric: tabular-nums; font-kerning: none; font-variant-ligatures: none; color: var(--ink); background: var(--ground) }
section { max-width: 100%; margin: 8mm auto; break-before: page }
section:first-of-type { break-before: auto }
header { display: grid; grid-template-columns: 1fr auto; margin-bottom: 4mm }
header .corner { grid-row: 1 / 3; grid-column: 2; font-size: ${TYPE.page}pt; line-height: 8mm; font-weight: bold }
h1, h2, h3 { font-size: ${TYPE.text}pt; line-height: 4mm }
h3 { border-top: 0.25mm solid; break-after: avoid }
h4 { font-size: ${TYPE.table}pt; line-height: 4mm; break-after: avoid }
* + h3, * + h4, * + table, * + figure, * + div, * + dl, table + *, figure + *, div + *, dl + * { margin-top: 4mm }
h3 + *, h4 + * { margin-top: 0 }
header p { margin: 0 }
section, .columns > * { min-width: 0 }
small, .small, table, dt { font-size: ${TYPE.table}pt }
.big { font-size: ${TYPE.page}pt; line-height: 8mm }
ul { list-style: none }
li { padding-left: 4mm; position: relative }
li::before { content: "–"; position: absolute; left: 0 }
ul.caution > li::before { content: "!"; font-weight: bold }
dl { display: grid; grid-template-columns: max-content 1fr; column-gap: 3mm }
table { border-collapse: collapse; width: 100%; line-height: 4mm }
table.tight { width: auto }
thead { display: table-header-group }
tr { break-inside: avoid; border-bottom: 0.25mm solid var(--line) }
tr:has(+ tr > td[colspan]) { border-bottom: 0; break-after: avoid }
thead tr:last-child { border-bottom-color: var(--ink) }
th, td { text-align: left; vertical-align: top; padding-right: 2mm; font-weight: normal }
th:last-child, td:last-child { padding-right: 0 }
thead th, b, .size { font-weight: bold }
td.size { font-size: ${TYPE.text}pt }
.num { text-align: right; white-space: pre }
.mid { text-align: center }
.right { text-align: right }
td.write { min-width: 15mm; height: 8mm; border: 0.25mm solid var(--edge); border-radius: 1mm; padding: 0 1mm }
tr:has(td.write) > * { vertical-align: middle }
table:has(td.write) { border-collapse: separate; border-spacing: 1mm 0 }
.ring { display: inline-block; min-width: 3.6mm; height: 3.6mm; line-height: 3.4mm; border: 0.25mm solid; border-radius: 2mm; text-align: center; font-size: ${TYPE.table}pt }
figure svg { display: block; max-width: 100%; height: auto }
figure.right svg { margin-left: auto }
figure.mid svg { margin: 0 auto }
.keep, .columns, .bottom { break-inside: avoid }
.columns > * { margin-top: 0 }
.columns { display: grid; grid-template-columns: repeat(${COLUMNS}, minmax(0, 1fr)); column-gap: 4mm }
${Array.from({ length: COLUMNS }, (_, index) => `.c${index + 1} { grid-column: span ${index + 1} }`).join('\n')}
.page { break-after: page }
hr { border: 0; border-top: 0.25mm solid; margin: 2mm 0 }
footer { display: flex; flex-wrap: wrap; gap: 0 6mm; margin-top: 4mm; border-top: 0.5mm solid; padding-top: 1mm; font-size: ${TYPE.table}pt }
`
