import type { Fill, PathStep, Picture, Stroke } from './picture.ts'
import { tone } from './tone.ts'

export type SvgOptions = {
  /** Names of faces, best first; the last is a generic family. */
  readonly fonts?: string
  /** Size in millimetres on paper instead of none: for pictures that are measured. */
  readonly trueSize?: boolean
}

export const SVG_FONTS =
  "'DejaVu Sans Condensed', 'Arial Narrow', 'Liberation Sans Narrow', 'Roboto Condensed', Arial, sans-serif"

/** A picture as one SVG element, attributes only, numbers with at most two decimals. */
export function pictureSvg(picture: Picture, { fonts = SVG_FONTS, trueSize = false }: SvgOptions = {}): string {
  const { width, height, alternative, marks } = picture
  const millimetre = (point: number) => `${short((point * 25.4) / 72)}mm`
  const size = trueSize ? ` width="${millimetre(width)}" height="${millimetre(height)}"` : ''
  const open = `<svg xmlns="http://www.w3.org/2000/svg" role="img"${size} viewBox="0 0 ${short(width)} ${short(height)}"`
  const body = marks.map(mark => {
    switch (mark.kind) {
      case 'line':
        return `<line x1="${short(mark.x1)}" y1="${short(mark.y1)}" x2="${short(mark.x2)}" y2="${short(mark.y2)}"${stroked(mark.stroke)}/>`
      case 'circle':
        return `<circle cx="${short(mark.x)}" cy="${short(mark.y)}" r="${short(mark.radius)}"${filled(mark.fill)}${stroked(mark.stroke)}/>`
      case 'path':
        return `<path d="${mark.steps.map(step).join('')}"${filled(mark.fill)}${stroked(mark.stroke)}/>`
      case 'text': {
        const anchor = mark.anchor === 'start' ? '' : ` text-anchor="${mark.anchor}"`
        const weight = mark.bold ? ' font-weight="bold"' : ''
        const turned = mark.turned ? ` transform="rotate(${short(mark.turned)} ${short(mark.x)} ${short(mark.y)})"` : ''
        return `<text x="${short(mark.x)}" y="${short(mark.y)}" font-size="${short(mark.size)}"${anchor}${weight}${turned}>${escaped(mark.text)}</text>`
      }
      default:
        throw new Error(`a mark of no known kind: ${JSON.stringify(mark satisfies never)}`)
    }
  })
  const fontFamily = escaped(fonts)
  return `${open} font-family="${fontFamily}" fill="#000" stroke="none"><title>${escaped(alternative)}</title>${body.join('')}</svg>`
}

/** At most two decimals, no zeros behind, no negative zero. */
const short = (value: number): string => String(Math.round(value * 100) / 100 + 0)

const step = (it: PathStep): string => {
  if (it.to === 'close') return 'Z'
  if (it.to === 'curve') return `C${[it.x1, it.y1, it.x2, it.y2, it.x, it.y].map(short).join(' ')}`
  return `${it.to === 'move' ? 'M' : 'L'}${short(it.x)} ${short(it.y)}`
}

const filled = (fill: Fill | undefined): string => ` fill="${fill ? tone(fill.grey) : 'none'}"`

function stroked(stroke: Stroke | undefined): string {
  if (!stroke) return ''
  const dash = stroke.dash && stroke.dash.length > 0 ? ` stroke-dasharray="${stroke.dash.map(short).join(' ')}"` : ''
  return ` stroke="${tone(stroke.grey ?? 0)}" stroke-width="${short(stroke.width)}"${dash}`
}

export const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
