/** A threshold of one rule about ports. */
export type PortLimit = {
  readonly value: number
  /** Nothing for a ratio or a share. */
  readonly unit: 'mm' | 'deg' | 'ms' | ''
  readonly meaning: string
  readonly source: string
}

/** By the name of the rule and of the threshold in it. */
export type PortLimits = { readonly [rule: string]: { readonly [threshold: string]: PortLimit } }

export const PRACTICE = 'common practice, no source'
