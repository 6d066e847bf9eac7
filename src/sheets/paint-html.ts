import { escaped, pictureSvg } from '../pictures/picture-svg.ts'
import { type Bars, barsOf } from './barcodes.ts'
import type { LaidDocument, LaidSheet } from './lay-out-document.ts'
import { type Element, isNode, type Node } from './markup.ts'
import type { TitleBlock } from './page-frame.ts'
import { styleSheet } from './style-sheet.ts'

/** Nothing is fetched, nothing runs and nothing is sent: the page is a page. W3C Content Security Policy Level 3. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'"

/** All sets as one file of HTML that needs nothing beside it: the same markup, the same sheet numbers as on paper. */
export function paintHtml(sets: readonly [LaidDocument, ...LaidDocument[]]): string {
  const [{ block, paper }] = sets
  const title = `${block.identificationNumber} rev ${block.revision}, batch ${block.batch}`
  const part = [title, block.title, ...(block.note === undefined ? [] : [block.note])].join(' · ')
  const sections = sets.flatMap(({ set, sheets, pages }) =>
    sheets.map(
      sheet => `<section>
<header><h1>${escaped(sheet.heading)}</h1><div class="corner">${escaped(sheet.corner)}</div><p>${escaped(part)}</p></header>
${written(sheet)}
${footer(block, sheet, { set, of: pages.length })}
</section>`,
    ),
  )
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="fingerprint" content="${escaped(block.fingerprint)}">
<title>${escaped(title)}</title>
<style>${styleSheet(paper)}</style>
</head>
<body>
<main>
${sections.join('\n')}
</main>
</body>
</html>
`
}

function written({ nodes, pictures }: LaidSheet): string {
  const write = (node: Node): string => {
    if (!isNode(node)) return escaped(node)
    if (node.name === 'figure') return figure(node, pictures)
    const open = `<${node.name}${attributes(node)}>`
    if (node.name === 'br' || node.name === 'hr') return open
    return `${open}${node.children.map(write).join('')}</${node.name}>`
  }
  return nodes.map(write).join('').trim()
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

function attributes({ classes, attributes: { style, scope, colspan } }: Element): string {
  const list = classes.length > 0 ? ` class="${classes.join(' ')}"` : ''
  return `${list}${style ? ` style="${escaped(style)}"` : ''}${scope ? ` scope="${escaped(scope)}"` : ''}${colspan ? ` colspan="${escaped(colspan)}"` : ''}`
}

function figure(element: Element, pictures: LaidSheet['pictures']): string {
  const text = element.attributes['data-text']
  const picture = pictures.get(element.attributes['data-picture'] ?? '')
  if (text !== undefined) {
    const bars = barsOf(element.attributes['data-code'] === 'datamatrix' ? 'datamatrix' : 'code128', text)
    return `<figure${attributes(element)}>${barsSvg(bars)}</figure>`
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
