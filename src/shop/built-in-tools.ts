import type { Drill, EndMill, Hone, Tool } from './tool.ts'

/**
 * Four-flute solid carbide on 6 mm shanks. Common practice, no source: flutes about three diameters long, stick-out
 * three shank diameters; the long-reach ones are relieved behind the flutes, and `fluteLength` is then flutes and
 * relief; those with a long neck have edges of two diameters on a neck 0.1 mm thinner than the cutter.
 */
const END_MILLS: readonly EndMill[] = [
  { name: 'end mill 1.5', diameter: 1.5, fluteLength: 4.5, reach: 18 },
  { name: 'end mill 1.5, long reach', diameter: 1.5, fluteLength: 8, reach: 22 },
  { name: 'end mill 1.5, long neck', diameter: 1.5, fluteLength: 10, reach: 24, neck: { diameter: 1.4, edges: 3 } },
  { name: 'end mill 2', diameter: 2, fluteLength: 6, reach: 20 },
  { name: 'end mill 2, long reach', diameter: 2, fluteLength: 10, reach: 25 },
  { name: 'end mill 2, long neck', diameter: 2, fluteLength: 12, reach: 27, neck: { diameter: 1.9, edges: 4 } },
  { name: 'end mill 2.5', diameter: 2.5, fluteLength: 7.5, reach: 20 },
  { name: 'end mill 2.5, long reach', diameter: 2.5, fluteLength: 12, reach: 28 },
  { name: 'end mill 3', diameter: 3, fluteLength: 8, reach: 22 },
  { name: 'end mill 3, long reach', diameter: 3, fluteLength: 14, reach: 30 },
  { name: 'end mill 4', diameter: 4, fluteLength: 11, reach: 30 },
  { name: 'end mill 4, long reach', diameter: 4, fluteLength: 18, reach: 36 },
  { name: 'end mill 6', diameter: 6, fluteLength: 13, reach: 28 },
  { name: 'end mill 6, long reach', diameter: 6, fluteLength: 24, reach: 42 },
].map(tool => ({ ...tool, kind: 'end mill', teeth: 4, shank: 6 }))

/** Common practice, no source: carbide with a 140° point; over 16 mm a drill with changeable edges. */
const DRILLS: readonly Drill[] = [
  { name: 'drill 2.2', diameter: 2.2, fluteLength: 14, reach: 28, shank: 4 },
  { name: 'drill 2.7', diameter: 2.7, fluteLength: 16, reach: 30, shank: 4 },
  { name: 'drill 3.3', diameter: 3.3, fluteLength: 20, reach: 34, shank: 6 },
  { name: 'drill 4.3', diameter: 4.3, fluteLength: 24, reach: 38, shank: 6 },
  { name: 'drill 6.5', diameter: 6.5, fluteLength: 34, reach: 45, shank: 8 },
  { name: 'drill 8.5', diameter: 8.5, fluteLength: 47, reach: 60, shank: 10 },
  { name: 'drill 10', diameter: 10, fluteLength: 70, reach: 85, shank: 10 },
  { name: 'drill 14', diameter: 14, fluteLength: 90, reach: 105, shank: 14 },
  { name: 'drill 20', diameter: 20, fluteLength: 120, reach: 135, shank: 25 },
  { name: 'drill 30', diameter: 30, fluteLength: 130, reach: 150, shank: 32 },
  { name: 'drill 40', diameter: 40, fluteLength: 130, reach: 150, shank: 40 },
].map(tool => ({ ...tool, kind: 'drill', point: 140 }))

/** Common practice, no source: steel bars stand out at most four diameters, carbide six. */
const TURNING_TOOLS: readonly Tool[] = [
  { name: 'roughing tool', kind: 'turning tool', noseRadius: 0.8 },
  { name: 'finishing tool', kind: 'turning tool', noseRadius: 0.4 },
  { name: 'boring bar 10', kind: 'boring bar', diameter: 10, reach: 60, noseRadius: 0.2, material: 'carbide' },
  { name: 'boring bar 16', kind: 'boring bar', diameter: 16, reach: 96, noseRadius: 0.4, material: 'carbide' },
  { name: 'boring bar 25', kind: 'boring bar', diameter: 25, reach: 100, noseRadius: 0.4, material: 'steel' },
  { name: 'boring bar 32', kind: 'boring bar', diameter: 32, reach: 128, noseRadius: 0.4, material: 'steel' },
  {
    name: 'boring bar 32, roughing',
    kind: 'boring bar',
    diameter: 32,
    reach: 128,
    noseRadius: 0.8,
    material: 'steel',
  },
  { name: 'parting blade 3', kind: 'parting blade', width: 3, reach: 24 },
]

/**
 * Marked in the order of ISO 525: abrasive, grit, grade, bond. The outside wheel follows Machinery's Handbook, 31st ed.,
 * p. 1317 (nitrided steel: special fused alumina, grit 60, grade I, vitrified); the rest is common practice, no source.
 */
const WHEELS: readonly Tool[] = [
  { name: 'wheel 350 x 40', kind: 'grinding wheel', diameter: 350, width: 40, grade: 'A 60 I 8 V' },
  {
    name: 'internal wheel 36 x 25',
    kind: 'internal wheel',
    diameter: 36,
    width: 25,
    quill: { diameter: 20, length: 80 },
    grade: 'A 80 I 8 V',
  },
  {
    name: 'internal wheel 20 x 20',
    kind: 'internal wheel',
    diameter: 20,
    width: 20,
    quill: { diameter: 14, length: 56 },
    grade: 'A 80 I 8 V',
  },
  { name: 'face wheel 100 x 32', kind: 'face wheel', diameter: 100, grade: 'A 60 I 8 V' },
]

/** Common practice, no source. */
const HONES: readonly Hone[] = [
  { name: 'hone, 60 mm stones, 150 grit', kind: 'hone', stones: { count: 6, length: 60, abrasive: 'A', grit: 150 } },
  { name: 'hone, 60 mm stones, 220 grit', kind: 'hone', stones: { count: 6, length: 60, abrasive: 'A', grit: 220 } },
  { name: 'hone, 60 mm stones, 280 grit', kind: 'hone', stones: { count: 6, length: 60, abrasive: 'A', grit: 280 } },
  { name: 'hone, 60 mm stones, 400 grit', kind: 'hone', stones: { count: 6, length: 60, abrasive: 'A', grit: 400 } },
  {
    name: 'hone, 60 mm stones, 150 grit for iron',
    kind: 'hone',
    stones: { count: 6, length: 60, abrasive: 'C', grit: 150 },
  },
  {
    name: 'hone, 60 mm stones, 220 grit for iron',
    kind: 'hone',
    stones: { count: 6, length: 60, abrasive: 'C', grit: 220 },
  },
  { name: 'hone, 30 mm stones, 280 grit', kind: 'hone', stones: { count: 4, length: 30, abrasive: 'A', grit: 280 } },
]

export const BUILT_IN_TOOLS: readonly Tool[] = [...END_MILLS, ...DRILLS, ...TURNING_TOOLS, ...WHEELS, ...HONES]
