import { onPaper, type Point } from './picture.ts'

/** Drawing scales of ISO 5455, largest first, as paper over part. */
const SCALES: readonly number[] = [50, 20, 10, 5, 2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50]

/** `2:1`, `1:5`. */
export const scaleWritten = (scale: number): string =>
  scale >= 1 ? `${Math.round(scale)}:1` : `1:${Math.round(1 / scale)}`

/** The scales at which so many millimetres of part fit the room, largest first: a drawing shrinks by going down the list. */
export const scalesThatFit = (
  part: { readonly width: number; readonly height: number },
  room: { readonly width: Point; readonly height: Point },
  largest = 50,
): readonly number[] =>
  SCALES.filter(
    scale =>
      scale <= largest && onPaper(part.width * scale) <= room.width && onPaper(part.height * scale) <= room.height,
  )
