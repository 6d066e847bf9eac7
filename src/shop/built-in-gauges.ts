import type { Gauge } from './shop.ts'

/**
 * Gauges of a small works, for 10 to 100 mm work at 20 ± 2 °C in a trained hand. Uncertainties are expanded, k = 2:
 * common practice, no source, consistent with budgets after the GUM (JCGM 100) for a 55 mm outside and a 48 mm bore.
 * Listed from the coarse to the fine within a kind. The limits of error of the micrometers and the caliper are those of
 * DIN 863 and DIN 862.
 */
export const BUILT_IN_GAUGES: readonly Gauge[] = [
  { name: 'digital caliper', kind: 'outside', from: 0, to: 150, resolution: 0.01, uncertainty: 0.035 },
  { name: 'outside micrometer', kind: 'outside', from: 0, to: 100, resolution: 0.001, uncertainty: 0.006 },
  {
    name: 'outside micrometer set on a block',
    kind: 'outside',
    from: 0,
    to: 100,
    resolution: 0.001,
    uncertainty: 0.003,
  },
  {
    name: 'comparator set on a master disc',
    kind: 'outside',
    from: 5,
    to: 100,
    resolution: 0.0005,
    uncertainty: 0.0015,
  },

  { name: 'digital caliper, inside', kind: 'bore', from: 10, to: 150, resolution: 0.01, uncertainty: 0.04 },
  { name: 'three-point bore micrometer', kind: 'bore', from: 12, to: 100, resolution: 0.001, uncertainty: 0.0045 },
  {
    name: 'two-point bore gauge set on a ring',
    kind: 'bore',
    from: 10,
    to: 100,
    resolution: 0.001,
    uncertainty: 0.003,
  },
  // The budget of an air plug in a 48 mm bore comes to 1.34 µm.
  { name: 'air plug with two setting rings', kind: 'bore', from: 10, to: 100, resolution: 0.0001, uncertainty: 0.0015 },

  { name: 'digital caliper, depth', kind: 'depth', from: 0, to: 150, resolution: 0.01, uncertainty: 0.04 },
  { name: 'height gauge', kind: 'depth', from: 0, to: 300, resolution: 0.01, uncertainty: 0.03 },
  { name: 'height instrument with probe', kind: 'depth', from: 0, to: 300, resolution: 0.001, uncertainty: 0.0045 },

  { name: 'digital caliper, length', kind: 'length', from: 0, to: 150, resolution: 0.01, uncertainty: 0.035 },
  { name: 'outside micrometer, length', kind: 'length', from: 0, to: 150, resolution: 0.001, uncertainty: 0.006 },

  // For form `from` and `to` are the diameters that the gauge takes.
  { name: 'dial indicator', kind: 'form', from: 0, to: 300, resolution: 0.01, uncertainty: 0.0125 },
  { name: 'lever indicator', kind: 'form', from: 0, to: 300, resolution: 0.002, uncertainty: 0.0035 },

  // Ra, µm: 5 to 10 % of the reading for the instrument; the scatter from place to place is not the gauge's.
  { name: 'stylus roughness tester', kind: 'roughness', from: 0.02, to: 12.5, resolution: 0.001, uncertainty: 0.1 },

  // HV; memory: about 3 % of the reading at loads under HV1.
  { name: 'Vickers tester', kind: 'hardness', from: 100, to: 1300, resolution: 1, uncertainty: 0.03 },

  // Degrees: 36 seconds of arc, the middle of 10 to 60.
  { name: 'rotary head', kind: 'angle', from: 0, to: 360, resolution: 0.001, uncertainty: 0.01 },

  { name: 'gauge pins', kind: 'contour', from: 0.5, to: 20, resolution: 0.01, uncertainty: 0.01 },
  { name: 'magnifier with a scale', kind: 'edge', from: 0, to: 10, resolution: 0.05, uncertainty: 0.03 },
  { name: "toolmaker's microscope, edges", kind: 'edge', from: 0, to: 50, resolution: 0.001, uncertainty: 0.007 },
  { name: 'gauge blocks, go and not go', kind: 'groove', from: 0.5, to: 25, resolution: 0.005, uncertainty: 0.002 },
  { name: "toolmaker's microscope", kind: 'contour', from: 0, to: 50, resolution: 0.001, uncertainty: 0.007 },

  { name: 'eye and ten-power lens', kind: 'visual', from: 0, to: 1000, resolution: 0, uncertainty: 0 },
]
