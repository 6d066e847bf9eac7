/** What the tests use of the library, which brings no types. */
declare module 'jstat' {
  type Distribution = {
    readonly cdf: (x: number, ...shape: number[]) => number
    readonly inv: (q: number, ...shape: number[]) => number
  }
  const jstat: Readonly<Record<'chisquare' | 'centralF' | 'studentt' | 'noncentralt' | 'normal', Distribution>> & {
    readonly binomial: { readonly cdf: (successes: number, trials: number, chance: number) => number }
  }
  export = jstat
}
