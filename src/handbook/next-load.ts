import { type Formula, formula, type Input } from '../formula.ts'

/**
 * What a furnace does to the next load, from loads that were measured. A load is one sample of the furnace, however many
 * pieces it holds. Source of all: derived; textbook statistics, held against drawn loads.
 */
const length = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1 })
const quantile = (meaning: string): Input<''> => ({ meaning, unit: '', from: 0 })
const k: Input<'pieces'> = { meaning: 'loads measured', unit: 'pieces', from: 2, whole: true }

const t_w = quantile("Student's t of the pieces of a whole load, 1 - 0.025 / pieces")
const s_w = length('spread within a load')
const SOURCE = 'derived: textbook statistics; a whole next load lies within in 19 of 20'

export const nextLoadBand: Formula<{ t_b: ''; s_b: 'mm'; k: 'pieces'; t_w: ''; s_w: 'mm' }, 'mm'> = formula({
  symbol: 'h',
  meaning: 'half width of the band that holds a whole next load',
  unit: 'mm',
  expression: 'sqrt(t_b^2 * s_b^2 * (1 + 1 / k) + t_w^2 * s_w^2)',
  inputs: {
    t_b: quantile("Student's t of the loads, 0.975"),
    s_b: length('spread between the means of the loads'),
    k,
    t_w,
    s_w,
  },
  source: SOURCE,
  example: { given: { t_b: 3.18245, s_b: 0.0011955, k: 4, t_w: 3.1407, s_w: 0.00099955 }, gives: 0.005287, digits: 6 },
  value: ({ t_b, s_b, k, t_w, s_w }) => Math.sqrt(t_b ** 2 * s_b ** 2 * (1 + 1 / k) + t_w ** 2 * s_w ** 2),
})

export const fewLoadsBand: Formula<{ V: ''; tau: 'mm'; t_w: ''; s_w: 'mm' }, 'mm'> = formula({
  symbol: 'h',
  meaning: 'half width of the band that holds a whole next load, leaning on the handbook',
  unit: 'mm',
  expression: 'sqrt(1.96^2 * (V + tau^2) + t_w^2 * s_w^2)',
  inputs: {
    V: { meaning: 'variance of the mean, mm²', unit: '', from: 0, upTo: 1 },
    tau: length('spread between loads, assumed'),
    t_w,
    s_w,
  },
  source: SOURCE,
  example: { given: { V: 6.178e-7, tau: 0.0008, t_w: 3.83345, s_w: 0.00093 }, gives: 0.004188, digits: 6 },
  value: ({ V, tau, t_w, s_w }) => Math.sqrt(1.96 ** 2 * (V + tau ** 2) + t_w ** 2 * s_w ** 2),
})

/** Between the means of loads, where nobody has measured enough to know: estimate. */
export const ASSUMED_SPREAD = 0.0008

/** Loads from which their own spread counts, and no longer the handbook's. */
export const LOADS_ENOUGH = 3
