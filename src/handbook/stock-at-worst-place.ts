import { type Formula, formula, type Input } from '../formula.ts'

/**
 * What a finishing cut takes at the worst place of a surface, and what it must take: eccentricity, form and the layer that
 * has to go. Per side.
 */
const diameter = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1000 })
const small = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: -1000, upTo: 1000 })
const error = (meaning: string): Input<'mm'> => ({ meaning, unit: 'mm', from: 0, upTo: 1000 })

const e = error('eccentricity of the surface to the axis it is cut about, radial')
const f = error('form error, radial')
const r = error('what must go for the surface to clean up, per side')

export const formError: Formula<{ o: 'mm'; b: 'mm' }, 'mm'> = formula({
  symbol: 'f',
  meaning: 'form error, radial: out of round and bow',
  unit: 'mm',
  expression: 'o / 4 + b / 2',
  inputs: { o: error('ovality, largest less smallest diameter'), b: error('bow of the axis over the length') },
  source: 'derived: the radius varies by a quarter of the ovality and, about a best-fit axis, by half of the bow',
  example: { given: { o: 0.03, b: 0.02 }, gives: 0.0175 },
  value: ({ o, b }) => o / 4 + b / 2,
})

/** A bow tilts the end faces: the slope at the end of a flat arc is four times its rise over its length. */
export const faceTilt: Formula<{ b: 'mm'; D: 'mm'; L: 'mm' }, 'mm'> = formula({
  symbol: 'f',
  meaning: 'how far the bow tilts an end face at its rim',
  unit: 'mm',
  expression: '2 * b * D / L',
  inputs: {
    b: error('bow of the axis over the length'),
    D: diameter('diameter of the face'),
    L: { ...diameter('length'), over: 0 },
  },
  source: 'derived: end slope of a parabolic arc of rise b over length L, at half the diameter',
  example: { given: { b: 0.02, D: 60, L: 100 }, gives: 0.024 },
  value: ({ b, D, L }) => (2 * b * D) / L,
})

export const sumOfEccentricities: Formula<{ e_1: 'mm'; e_2: 'mm' }, 'mm'> = formula({
  symbol: 'e',
  meaning: 'eccentricity of the surface to the axis it is cut about, radial',
  unit: 'mm',
  expression: 'e_1 + e_2',
  inputs: {
    e_1: error('between the surface that locates and the surface cut'),
    e_2: error('run-out of what holds the part'),
  },
  source: 'derived: worst case, both the same way',
  example: { given: { e_1: 0.015, e_2: 0.005 }, gives: 0.02 },
  value: ({ e_1, e_2 }) => e_1 + e_2,
})

export const layerToRemove: Formula<{ Rz: 'µm'; T: 'µm' }, 'mm'> = formula({
  symbol: 'r',
  meaning: 'roughness and damaged layer to cut through, per side',
  unit: 'mm',
  expression: '(Rz + T) / 1000',
  inputs: {
    Rz: { meaning: 'roughness height left by the cut before', unit: 'µm', from: 0, upTo: 500 },
    T: { meaning: 'damaged layer left by the cut before', unit: 'µm', from: 0, upTo: 500 },
  },
  source: 'memory: Kovan; Kosilova & Meshcheryakov, vol. 1',
  example: { given: { Rz: 20, T: 10 }, gives: 0.03 },
  value: ({ Rz, T }) => (Rz + T) / 1000,
})

/** Through the roughness that the compound layer has grown on; where that is fine, still a little beyond the layer. */
export const hardenedLayerToRemove: Formula<{ Rz: 'µm'; C: 'mm'; m: 'mm' }, 'mm'> = formula({
  symbol: 'r',
  meaning: 'compound layer and the roughness of the soft cut under it, per side',
  unit: 'mm',
  expression: 'C + max(Rz / 1000, m)',
  inputs: {
    Rz: { meaning: 'roughness height left by the last soft cut', unit: 'µm', from: 0, upTo: 500 },
    C: { meaning: 'thickest compound layer', unit: 'mm', from: 0, upTo: 0.1 },
    m: { meaning: 'least cut beyond the layer, so that none stays', unit: 'mm', from: 0, upTo: 0.1 },
  },
  source: 'memory: Kovan, with the compound layer for the damaged layer; m common practice, no source',
  example: { given: { Rz: 20, C: 0.015, m: 0.005 }, gives: 0.035 },
  value: ({ Rz, C, m }) => C + Math.max(Rz / 1000, m),
})

export const leastAtWorstPlace: Formula<{ S: 'mm'; e: 'mm'; f: 'mm' }, 'mm'> = formula({
  symbol: 'z_least',
  meaning: 'least taken per side, at the worst place',
  unit: 'mm',
  expression: 'S / 2 - e - f',
  inputs: { S: small('least stock on diameter'), e, f },
  source: 'derived: arithmetic sum of eccentricity and form',
  example: { given: { S: 0.14, e: 0.02, f: 0.02 }, gives: 0.03 },
  value: ({ S, e, f }) => S / 2 - e - f,
})

export const mostAtWorstPlace: Formula<{ S: 'mm'; e: 'mm'; f: 'mm' }, 'mm'> = formula({
  symbol: 'z_most',
  meaning: 'most taken per side, at the worst place',
  unit: 'mm',
  expression: 'S / 2 + e + f',
  inputs: { S: small('most stock on diameter'), e, f },
  source: 'derived: arithmetic sum of eccentricity and form',
  example: { given: { S: 0.229, e: 0.02, f: 0.02 }, gives: 0.1545 },
  value: ({ S, e, f }) => S / 2 + e + f,
})

export const cleanUpMargin: Formula<{ z_least: 'mm'; r: 'mm' }, 'mm'> = formula({
  symbol: 'margin',
  meaning: 'cleaned up with this to spare, at the worst place',
  unit: 'mm',
  expression: 'z_least - r',
  inputs: { z_least: small('least taken per side'), r },
  source: 'derived: a surface cleans up where more comes off than must go',
  example: { given: { z_least: 0.035, r: 0.03 }, gives: 0.005 },
  value: ({ z_least, r }) => z_least - r,
})

export const caseMargin: Formula<{ N: 'mm'; z: 'mm'; N_asked: 'mm' }, 'mm'> = formula({
  symbol: 'margin',
  meaning: 'case left beyond the depth asked for, at the worst place',
  unit: 'mm',
  expression: 'N - z - N_asked',
  inputs: {
    N: error('least case depth as hardened'),
    z: small('most taken per side by all finishing operations'),
    N_asked: error('depth asked for after finishing'),
  },
  source: 'derived: grinding moves the surface, not the limit hardness',
  example: { given: { N: 0.4, z: 0.15, N_asked: 0.2 }, gives: 0.05 },
  value: ({ N, z, N_asked }) => N - z - N_asked,
})
