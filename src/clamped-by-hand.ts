/** The words of a control that clamp and free an axis, and how it is done where there are none. */
type ClampWords = {
  readonly clamp?: string
  readonly unclamp?: string
  readonly tiltAxis?: string
  readonly tiltClamp?: string
  readonly tiltUnclamp?: string
  readonly clamping?: 'by hand' | 'automatic'
}

/** The axes that a hand clamps or frees round each turn, for which a program stops. */
export function clampedByHand(words: ClampWords): readonly ('rotary' | 'tilt')[] {
  if (words.clamping === 'automatic') return []
  const rotary = words.clamp === undefined || words.unclamp === undefined
  const tilt = words.tiltAxis !== undefined && (words.tiltClamp === undefined || words.tiltUnclamp === undefined)
  return [...(rotary ? (['rotary'] as const) : []), ...(tilt ? (['tilt'] as const) : [])]
}
