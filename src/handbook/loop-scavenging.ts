import { type Formula, formula, type Input } from '../formula.ts'

/** Where the streams of a mirrored pair go in plan. Azimuths from the exhaust, headings from straight at the axis. */
const r: Input<'mm'> = { meaning: 'radius of the bore', unit: 'mm', over: 0 }
const phi: Input<'deg'> = { meaning: 'azimuth of the port from the exhaust', unit: 'deg', over: 0, under: 180 }
const psi: Input<'deg'> = {
  meaning: 'heading, turned back from straight at the axis',
  unit: 'deg',
  over: -90,
  under: 90,
}

export const meetingBehindAxis: Formula<{ r: 'mm'; phi: 'deg'; psi: 'deg' }, 'mm'> = formula({
  symbol: 'X_back',
  meaning: 'where the streams of the pair meet, behind the axis',
  unit: 'mm',
  expression: 'r * sin(psi * pi / 180) / sin((phi - psi) * pi / 180)',
  inputs: { r, phi, psi },
  source: 'derived: geometry in plan',
  example: { given: { r: 10, phi: 72, psi: 25 }, gives: 5.779 },
  value: ({ r, phi, psi }) => (r * Math.sin((psi * Math.PI) / 180)) / Math.sin(((phi - psi) * Math.PI) / 180),
})

export const meetingFraction: Formula<{ r: 'mm'; X_back: 'mm' }, ''> = formula({
  symbol: 'f',
  meaning: 'meeting point as a share of the bore, from the exhaust side',
  unit: '',
  expression: '(r + X_back) / (2 * r)',
  inputs: { r, X_back: { meaning: 'where the streams meet, behind the axis', unit: 'mm' } },
  source: 'derived: geometry in plan',
  example: { given: { r: 10, X_back: 5.779 }, gives: 0.789 },
  value: ({ r, X_back }) => (r + X_back) / (2 * r),
})

export const exitAzimuth: Formula<{ phi: 'deg'; psi: 'deg' }, 'deg'> = formula({
  symbol: 'phi_exit',
  meaning: 'azimuth at which a stream that meets nothing reaches the wall',
  unit: 'deg',
  expression: 'phi + 180 - 2 * psi',
  inputs: { phi, psi },
  source: 'derived: geometry in plan',
  example: { given: { phi: 72, psi: 25 }, gives: 202 },
  value: ({ phi, psi }) => phi + 180 - 2 * psi,
})
