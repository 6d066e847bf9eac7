import { type Formula, formula, type Input } from '../formula.ts'

/**
 * Setting of a tilted rotary so that the cutter, which feeds along -Z, runs along the stream. Axes by ISO 841: rotary axis
 * along X at zero tilt, positive rotary turning Y toward Z, tilt about +Y (Z toward X) through the pivot.
 */
const s: Input<''> = { meaning: 'which way the head end faces: +1 for +X, -1 for -X', unit: '', from: -1, upTo: 1 }
const beta: Input<'deg'> = { meaning: 'rise of the stream toward the head', unit: 'deg', over: -90, under: 90 }
const phi: Input<'deg'> = { meaning: "azimuth of the port's centre line", unit: 'deg' }
const psi: Input<'deg'> = { meaning: 'heading of the stream in plan, from straight at the axis', unit: 'deg' }
const r: Input<'mm'> = { meaning: 'radius of the finished bore', unit: 'mm', over: 0 }
const D: Input<'mm'> = { meaning: 'face-distance of the fixture', unit: 'mm' }
const H: Input<'mm'> = { meaning: 'pivot-height of the fixture', unit: 'mm' }
const h: Input<'mm'> = { meaning: "depth of the window's centre below the top face as it stands", unit: 'mm' }
const alpha: Input<'deg'> = { meaning: "azimuth of the window's centre from the cutter's side", unit: 'deg' }

const SOURCE = 'derived: homogeneous transforms, axes by ISO 841'

export const tiltSetting: Formula<{ s: ''; beta: 'deg' }, 'deg'> = formula({
  symbol: 'tilt',
  meaning: 'tilt',
  unit: 'deg',
  expression: 's * beta',
  inputs: { s, beta },
  source: SOURCE,
  example: { given: { s: -1, beta: 50 }, gives: -50 },
  value: ({ s, beta }) => s * beta,
})

export const rotarySetting: Formula<{ s: ''; phi: 'deg'; psi: 'deg' }, 'deg'> = formula({
  symbol: 'A',
  meaning: 'rotary, positive turning Y toward Z',
  unit: 'deg',
  expression: '-s * (phi - psi)',
  inputs: { s, phi, psi },
  source: SOURCE,
  example: { given: { s: -1, phi: 72, psi: 25 }, gives: 47 },
  value: ({ s, phi, psi }) => -s * (phi - psi),
})

export const crossOffset: Formula<{ s: ''; r: 'mm'; alpha: 'deg' }, 'mm'> = formula({
  symbol: 'Y',
  meaning: "Y of the window's centre on the finished bore",
  unit: 'mm',
  expression: '-s * r * sin(alpha * pi / 180)',
  inputs: { s, r, alpha },
  source: SOURCE,
  example: { given: { s: -1, r: 10, alpha: 25 }, gives: 4.22618, digits: 5 },
  value: ({ s, r, alpha }) => -s * r * Math.sin((alpha * Math.PI) / 180),
})

export const settingX: Formula<{ s: ''; D: 'mm'; h: 'mm'; H: 'mm'; r: 'mm'; alpha: 'deg'; tilt: 'deg' }, 'mm'> =
  formula({
    symbol: 'X',
    meaning: "X of the window's centre on the finished bore",
    unit: 'mm',
    expression: '(D - s * h) * cos(tilt * pi / 180) + (H + r * cos(alpha * pi / 180)) * sin(tilt * pi / 180)',
    inputs: { s, D, h, H, r, alpha, tilt: { meaning: 'tilt', unit: 'deg' } },
    source: SOURCE,
    example: { given: { s: -1, D: 85, h: 18, H: 60, r: 10, alpha: 25, tilt: -10 }, gives: 89.44252 },
    value: ({ s, D, h, H, r, alpha, tilt }) => {
      const t = (tilt * Math.PI) / 180
      return (D - s * h) * Math.cos(t) + (H + r * Math.cos((alpha * Math.PI) / 180)) * Math.sin(t)
    },
  })

export const settingZ: Formula<{ s: ''; D: 'mm'; h: 'mm'; H: 'mm'; r: 'mm'; alpha: 'deg'; tilt: 'deg' }, 'mm'> =
  formula({
    symbol: 'Z',
    meaning: "Z of the window's centre on the finished bore",
    unit: 'mm',
    expression: '(H + r * cos(alpha * pi / 180)) * cos(tilt * pi / 180) - (D - s * h) * sin(tilt * pi / 180)',
    inputs: settingX.inputs,
    source: SOURCE,
    example: { given: { s: -1, D: 85, h: 18, H: 60, r: 10, alpha: 25, tilt: -10 }, gives: 85.89962 },
    value: ({ s, D, h, H, r, alpha, tilt }) => {
      const t = (tilt * Math.PI) / 180
      return (H + r * Math.cos((alpha * Math.PI) / 180)) * Math.cos(t) - (D - s * h) * Math.sin(t)
    },
  })

export const sineBarStack: Formula<{ tilt: 'deg'; l: 'mm' }, 'mm'> = formula({
  symbol: 'stack',
  meaning: 'gauge blocks under the sine bar for the tilt',
  unit: 'mm',
  expression: 'l * sin(tilt * pi / 180)',
  inputs: {
    tilt: { meaning: 'tilt, without its sign', unit: 'deg', from: 0, upTo: 90 },
    l: { meaning: 'sine bar, between roller centres', unit: 'mm', over: 0 },
  },
  source: 'derived: geometry',
  example: { given: { tilt: 15, l: 100 }, gives: 25.882 },
  value: ({ tilt, l }) => l * Math.sin((tilt * Math.PI) / 180),
})
