import type { Units } from '../../figures.ts'
import { length, roundedDown } from '../../figures.ts'
import type { FaceTurn } from '../../record/face-take-off.ts'
import type { Turn } from '../../record/in-hand.ts'

/** What to do with a piece that came back, in the words of whoever grinds it. */
export function whatToDo({ window, inHand }: Pick<Turn, 'window' | 'inHand'>, units: Units): string {
  switch (window.verdict) {
    case 'grind as planned':
      return 'grind as planned'
    case 'part of the limits only':
      return window.narrow ? 'that part of the limits only, and set truer' : 'that part of the limits only'
    case 'set true':
      return `set true within ${roundedDown(window.bears.most, 3, units)} for ${length(inHand.eccentricity, units)}`
    case 'cannot clean up':
      return 'will not clean up: do not straighten; concession, plate, or another use'
    case 'case too thin':
      return 'case too thin even when centred: deepen before grinding, or a concession'
    case 'too oval or bowed for its case':
      return 'too oval or bowed for its case'
  }
}

/** What to do with the top face of one. */
export const whatToFace = ({ verdict, thin }: Pick<FaceTurn, 'verdict' | 'thin'>): string =>
  [
    ...(verdict === 'edge put right'
      ? []
      : [
          verdict === 'held by the length'
            ? 'the length allows no more'
            : 'edge out of its limits: ask before grinding',
        ]),
    ...(thin ? ['may not clean up'] : []),
  ].join('; ')
