import type { PacketData } from '../page/packet-data.ts'
import { escaped, pictureSvg } from '../pictures/picture-svg.ts'
import { type Bars, barsOf } from './barcodes.ts'
import type { LaidDocument, LaidSheet } from './lay-out-document.ts'
import { type Element, isNode, type Node } from './markup.ts'
import type { TitleBlock } from './page-frame.ts'
import { anchorOf, contents } from './screen-contents.ts'
import { jsonInPage, type PageScript } from './screen-data.ts'
import { screenStyle } from './screen-style.ts'
import { styleSheet } from './style-sheet.ts'

/** Nothing is fetched and nothing is sent; one script runs, the page's own. W3C Content Security Policy Level 3. */
const policy = (script?: PageScript): string =>
  [
    "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'",
    ...(script ? [`script-src '${script.digest}'`] : []),
  ].join('; ')

/** What the page does beside being read. */
export type OnScreen = { readonly script: PageScript; readonly data: PacketData }

/** All sets as one file of HTML that needs nothing beside it: the same markup, the same sheet numbers as on paper. */
export function paintHtml(sets: readonly [LaidDocument, ...LaidDocument[]], screen?: OnScreen): string {
  const [{ block, paper }] = sets
  const title = `${block.identificationNumber} rev ${block.revision}, batch ${block.batch}`
  const part = [title, block.title, ...(block.note === undefined ? [] : [block.note])].join(' · ')
  const sections = sets.flatMap(({ set, sheet: { width, height }, sheets, pages }, of) =>
    sheets.map(
      (sheet, index) => `<section id="${anchorOf(of, index)}"${width > height ? ' class="across"' : ''}>
<header><h2>${escaped(sheet.heading)}</h2><div class="corner">${escaped(sheet.corner)}</div><p>${escaped(part)}</p></header>
${written(sheet)}
${footer(block, sheet, { set, of: pages.length })}
</section>`,
    ),
  )
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(screen?.script)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="fingerprint" content="${escaped(block.fingerprint)}">
<title>${escaped(title)}</title>
<style>${styleSheet(paper)}${screenStyle(paper)}</style>
</head>
<body>
<header class="title"><h1>${escaped(title)}</h1><p>${escaped(block.title)}</p></header>
${contents(sets)}
<main>
${sections.join('\n')}
</main>
${screen ? scripts(screen) : ''}</body>
</html>
`
}

const scripts = ({ script, data }: OnScreen): string =>
  `<script type="application/json" id="packet">${jsonInPage(data)}</script>
<script>${script.text}</script>
`

/** The heads of a sheet stand under the title of the packet and the sheet's own. */
const DEEPER: Readonly<Record<string, string>> = { h2: 'h3', h3: 'h4' }

function written({ nodes, pictures }: LaidSheet): string {
  const write = (node: Node, scope = 'row'): string => {
    if (!isNode(node)) return escaped(node)
    if (node.name === 'figure') return figure(node, pictures)
    const name = DEEPER[node.name] ?? node.name
    const open = `<${name}${attributes(node)}${node.name === 'th' && !node.attributes['scope'] ? ` scope="${scope}"` : ''}>`
    if (name === 'br' || name === 'hr') return open
    const all = `${open}${node.children.map(child => write(child, node.name === 'thead' ? 'col' : scope)).join('')}</${name}>`
    // A table too wide for a small screen is moved in its own frame, not the page with it.
    return name === 'table' ? `<div class="wide">${all}</div>` : all
  }
  return nodes
    .map(node => write(node))
    .join('')
    .trim()
}

function footer(
  block: TitleBlock,
  { documentType, from, to }: LaidSheet,
  { set, of }: { readonly set: string; readonly of: number },
): string {
  const numbers = of === 0 ? 'on screen only' : from === to ? `${from} of ${of}` : `${from} to ${to} of ${of}`
  const cells: readonly (readonly [string, string])[] = [
    ['Legal owner', block.legalOwner],
    ['Part', `${block.identificationNumber} rev ${block.revision}`],
    ['Title', block.title],
    ['Document', documentType],
    ['Batch', block.batch],
    ['Issued', block.dateOfIssue],
    ['Creator', block.creator],
    ['Fingerprint', block.fingerprint],
    [set, numbers],
  ]
  return `<footer>${cells.map(([name, value]) => `<span>${name} <b>${escaped(value)}</b></span>`).join(' ')}</footer>`
}

const KEPT = ['style', 'scope', 'colspan', 'data-number', 'data-piece'] as const

function attributes({ classes, attributes }: Element): string {
  const list = classes.length > 0 ? ` class="${classes.join(' ')}"` : ''
  return KEPT.reduce((all, name) => {
    const value = attributes[name]
    return value ? `${all} ${name}="${escaped(value)}"` : all
  }, list)
}

function figure(element: Element, pictures: LaidSheet['pictures']): string {
  const text = element.attributes['data-text']
  const picture = pictures.get(element.attributes['data-picture'] ?? '')
  if (text !== undefined) {
    const bars = barsOf(element.attributes['data-code'] === 'datamatrix' ? 'datamatrix' : 'code128', text)
    return `<figure${attributes({ ...element, classes: [...element.classes, 'code'] })}>${barsSvg(bars)}</figure>`
  }
  return picture ? `<figure${attributes(element)}>${pictureSvg(picture, { trueSize: true })}</figure>` : ''
}

/** A code as a picture of its bars, in its true size, so that a reader gun takes it from the printed page too. */
function barsSvg({ width, height, rectangles, text }: Bars): string {
  return pictureSvg(
    {
      width,
      height,
      alternative: `code: ${text}`,
      marks: [
        {
          kind: 'path',
          fill: { grey: 0 },
          steps: rectangles.flatMap(({ x, y, width, height }) => [
            { to: 'move', x, y },
            { to: 'line', x: x + width, y },
            { to: 'line', x: x + width, y: y + height },
            { to: 'line', x, y: y + height },
            { to: 'close' },
          ]),
        },
      ],
    },
    { trueSize: true },
  )
}
