/** Points, 1/72 inch: the unit of the page. */
export type Point = number

/** mm on paper in points. */
export const onPaper = (millimetre: number): Point => (millimetre * 72) / 25.4

export type Stroke = {
  /** Line width: 0.25, 0.5 or 0.7 mm on paper, see `LINE`. */
  readonly width: Point
  readonly dash?: readonly Point[]
  /** 0 black to 1 white. */
  readonly grey?: number
}

/** Thin rule, outline, and the surfaces being cut: the only three line widths of our paper. */
export const LINE: { readonly thin: Point; readonly outline: Point; readonly cut: Point } = {
  thin: onPaper(0.25),
  outline: onPaper(0.5),
  cut: onPaper(0.7),
}

/** Fill by grey alone, no colour that carries meaning: 0 black to 1 white. Our paper goes no darker than 0.88 for areas. */
export type Fill = { readonly grey: number }

export type PathStep =
  | { readonly to: 'move' | 'line'; readonly x: Point; readonly y: Point }
  /** Cubic curve. */
  | {
      readonly to: 'curve'
      readonly x1: Point
      readonly y1: Point
      readonly x2: Point
      readonly y2: Point
      readonly x: Point
      readonly y: Point
    }
  | { readonly to: 'close' }

/** One thing drawn at its final place: origin top left, y down. Painters draw marks and decide nothing. */
export type Mark =
  | {
      readonly kind: 'line'
      readonly x1: Point
      readonly y1: Point
      readonly x2: Point
      readonly y2: Point
      readonly stroke: Stroke
    }
  | { readonly kind: 'path'; readonly steps: readonly PathStep[]; readonly stroke?: Stroke; readonly fill?: Fill }
  | {
      readonly kind: 'circle'
      readonly x: Point
      readonly y: Point
      readonly radius: Point
      readonly stroke?: Stroke
      readonly fill?: Fill
    }
  | {
      readonly kind: 'text'
      readonly x: Point
      /** Of the baseline. */
      readonly y: Point
      readonly size: Point
      readonly text: string
      readonly anchor: 'start' | 'middle' | 'end'
      readonly bold?: boolean
      /** Degrees clockwise about (x, y). */
      readonly turned?: number
    }

export type Picture = {
  readonly width: Point
  readonly height: Point
  /** One sentence for who cannot see it: goes into the SVG title and the tagged PDF. */
  readonly alternative: string
  readonly marks: readonly Mark[]
}

/** Width of a text in points, as the page's typeface sets it. Given by the page, so that placement can be computed. */
export type Measure = (text: string, size: Point, bold?: boolean) => Point
