import type { DrawnGrade, Kind, Treatment } from './drawn-grades.ts'

type Range = readonly [number, number]

const nitrided = (hardness: Range, depth: Range = [0.1, 0.3]): readonly Treatment[] => [
  { process: 'gas nitriding', hardness, depth },
  { process: 'gas nitriding', hardness, depth },
  { process: 'plasma nitriding', hardness, depth },
]
const nitrocarburised = (hardness: Range, depth: Range = [0.08, 0.12]): readonly Treatment[] => [
  { process: 'nitrocarburising', hardness, depth },
]
const salt = (hardness: Range, depth: Range = [0.08, 0.12]): readonly Treatment[] => [
  { process: 'salt-bath nitriding', hardness, depth },
]
export const induction = (hardness: Range): readonly Treatment[] => [
  { process: 'induction hardening', hardness, depth: [0.8, 1.5] },
]
const through = (hardness: Range): readonly Treatment[] => [{ process: 'through hardening', hardness }]
const carburised: readonly Treatment[] = [{ process: 'carburising', hardness: [650, 690], depth: [0.3, 1] }]

const ALL: readonly Kind[] = ['liner', 'sleeve', 'pin']
export const TUBES: readonly Kind[] = ['liner', 'sleeve']
export const CHROME: readonly string[] = ['hard chrome']

/**
 * Grades that a works is asked for: names and sections by EN 10083, 10084, 10085, 10087, 10267, ISO 683-17, EN 1561, 1563,
 * 12163, 1982, 573 and 1706, from memory; the least hardness asked of a finished nitrided surface is
 * what is left where up to half of the case is ground off: core and 0.45 to 0.65 of the rise to what hardeners' tables give the
 * grade, from memory.
 */
export const DRAWN_STEELS: readonly DrawnGrade[] = [
  {
    names: ['42CrMo4', '42CrMo4', '1.7225', '4140', 'SCM440', '708M40', 'EN19', '42CD4', '38KhM'],
    kinds: ALL,
    bar: [270, 330],
    upTo: 160,
    tempered: true,
    treatments: [
      ...nitrided([470, 530]),
      ...nitrocarburised([450, 550]),
      ...salt([450, 550]),
      ...induction([520, 560]),
    ],
    platings: CHROME,
  },
  {
    names: ['34CrMo4', '1.7220', '4135', 'SCM435', '35CD4'],
    kinds: TUBES,
    bar: [240, 310],
    upTo: 160,
    tempered: true,
    treatments: [...nitrided([440, 510]), ...nitrocarburised([450, 550])],
    platings: CHROME,
  },
  {
    names: ['50CrMo4', '1.7228', '4150'],
    kinds: TUBES,
    bar: [270, 330],
    upTo: 160,
    tempered: true,
    treatments: [...nitrided([450, 500]), ...induction([560, 600])],
    platings: CHROME,
  },
  {
    names: ['34CrNiMo6', '1.6582', '4340', '817M40', 'EN24', 'SNCM439'],
    kinds: ALL,
    bar: [290, 350],
    upTo: 160,
    tempered: true,
    treatments: nitrided([490, 560]),
  },
  {
    names: ['30CrNiMo8', '1.6580', '823M30'],
    kinds: ['sleeve', 'pin'],
    bar: [310, 370],
    upTo: 160,
    tempered: true,
    treatments: nitrided([490, 560]),
  },
  {
    names: ['31CrMoV9', '1.8519'],
    kinds: ALL,
    bar: [280, 350],
    upTo: 200,
    tempered: true,
    treatments: nitrided([550, 640]),
  },
  {
    names: ['32CrMo12', '1.7361', '722M24', 'EN40B', '30CD12'],
    kinds: TUBES,
    bar: [290, 340],
    upTo: 200,
    tempered: true,
    treatments: nitrided([550, 650]),
  },
  {
    names: ['33CrMoV12-9', '1.8522', '32CDV13'],
    kinds: TUBES,
    bar: [290, 350],
    upTo: 200,
    tempered: true,
    treatments: nitrided([560, 660]),
  },
  {
    names: ['34CrAlNi7-10', '1.8550', '34CrAlNi7'],
    kinds: TUBES,
    bar: [250, 320],
    upTo: 200,
    tempered: true,
    treatments: nitrided([590, 720], [0.15, 0.3]),
  },
  {
    names: ['34CrAlMo5-10', '1.8507', '34CrAlMo5'],
    kinds: TUBES,
    bar: [250, 300],
    upTo: 70,
    tempered: true,
    treatments: nitrided([580, 710], [0.15, 0.3]),
  },
  {
    names: ['41CrAlMo7-10', '1.8509', '905M39', 'EN41B', 'SACM645', '38CrMoAl'],
    kinds: TUBES,
    bar: [260, 330],
    upTo: 160,
    tempered: true,
    treatments: nitrided([600, 740], [0.15, 0.3]),
  },
  {
    names: ['16MnCr5', '1.7131', '5115', '16MC5'],
    kinds: ALL,
    bar: [150, 200],
    upTo: 160,
    treatments: [...carburised, ...carburised, ...nitrocarburised([420, 500])],
  },
  {
    names: ['20MnCr5', '1.7147', '5120'],
    kinds: ['sleeve', 'pin'],
    bar: [150, 210],
    upTo: 160,
    treatments: carburised,
  },
  {
    names: ['18CrNiMo7-6', '1.6587', '17CrNiMo6'],
    kinds: ['sleeve', 'pin'],
    bar: [165, 215],
    upTo: 160,
    treatments: carburised,
  },
  {
    names: ['15NiCr13', '1.5752', '655M13', 'EN36A', 'SNC815'],
    kinds: ['sleeve', 'pin'],
    bar: [165, 215],
    upTo: 160,
    treatments: carburised,
  },
  {
    names: ['C15', '1.0401', '1.1141', '1015', 'S15C', 'Ck15'],
    kinds: ['pin'],
    bar: [120, 160],
    upTo: 60,
    treatments: carburised,
  },
  {
    names: ['C45', '1.0503', '1.1191', '1045', 'S45C', 'Ck45', '080M46', 'XC48'],
    kinds: ALL,
    bar: [170, 230],
    upTo: 200,
    treatments: [...induction([500, 540]), ...nitrocarburised([300, 350])],
    platings: CHROME,
  },
  {
    names: ['C60', '1.0601', '1.1221', '1060', 'S58C'],
    kinds: ['sleeve', 'pin'],
    bar: [190, 240],
    upTo: 160,
    treatments: [...induction([560, 620]), ...through([560, 650])],
  },
  {
    names: ['38MnVS6', '1.1303'],
    kinds: ALL,
    bar: [240, 280],
    upTo: 120,
    treatments: [...induction([500, 550]), ...nitrided([380, 430]), ...nitrocarburised([380, 430])],
  },
  {
    names: ['100Cr6', '1.3505', '52100', 'SUJ2', 'EN31', '535A99', 'GCr15'],
    kinds: ['sleeve', 'pin'],
    bar: [180, 220],
    upTo: 180,
    treatments: through([650, 720]),
  },
  { names: ['100CrMo7', '1.3537'], kinds: ['sleeve'], bar: [180, 225], upTo: 180, treatments: through([650, 720]) },
  {
    names: ['S355J2', '1.0577', 'S355JR', 'St 52-3', 'S355'],
    kinds: ['sleeve', 'pin'],
    bar: [140, 190],
    upTo: 200,
    treatments: [],
    platings: CHROME,
  },
  {
    names: ['11SMn30', '1.0715', '1215', '9SMn28', '230M07'],
    kinds: ['sleeve', 'pin'],
    bar: [130, 200],
    upTo: 80,
    treatments: [],
  },
  { names: ['11SMnPb30', '1.0718', '9SMnPb28'], kinds: ['sleeve', 'pin'], bar: [130, 200], upTo: 80, treatments: [] },
  { names: ['11SMnPb37', '1.0737', '12L14'], kinds: ['sleeve', 'pin'], bar: [130, 200], upTo: 80, treatments: [] },
  {
    names: ['X20Cr13', '1.4021', '420S37', '20Kh13', 'SUS420J1'],
    kinds: ['sleeve', 'pin'],
    bar: [240, 290],
    upTo: 80,
    tempered: true,
    treatments: [],
  },
  {
    names: ['X46Cr13', '1.4034', 'Z44C14'],
    kinds: ['sleeve', 'pin'],
    bar: [200, 245],
    upTo: 80,
    treatments: through([500, 560]),
  },
]
