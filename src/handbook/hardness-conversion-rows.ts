import type { Megapascal, Vickers } from '../units.ts'

/** One row: Vickers, Brinell, Rockwell C, tensile strength in MPa. What is absent does not exist at that hardness. */
export type ConversionRow = {
  readonly HV: Vickers
  readonly HB?: number
  readonly HRC?: number
  readonly strength?: Megapascal
}

/** Unalloyed and low-alloy steel. DIN 50150 conversion tables, two copies that agree where both have the row. */
const DIN_50150: readonly ConversionRow[] = [
  { HV: 200, HB: 190, strength: 640 },
  { HV: 205, HB: 195, strength: 660 },
  { HV: 210, HB: 199, strength: 675 },
  { HV: 215, HB: 204, strength: 690 },
  { HV: 220, HB: 209, strength: 705 },
  { HV: 225, HB: 214, strength: 720 },
  { HV: 230, HB: 219, strength: 740 },
  { HV: 235, HB: 223, strength: 755 },
  { HV: 240, HB: 228, HRC: 20.3, strength: 770 },
  { HV: 245, HB: 233, HRC: 21.3, strength: 785 },
  { HV: 250, HB: 238, HRC: 22.2, strength: 800 },
  { HV: 255, HB: 242, HRC: 23.1, strength: 820 },
  { HV: 260, HB: 247, HRC: 24, strength: 835 },
  { HV: 265, HB: 252, HRC: 24.8, strength: 850 },
  { HV: 270, HB: 257, HRC: 25.6, strength: 865 },
  { HV: 275, HB: 261, HRC: 26.4, strength: 880 },
  { HV: 280, HB: 266, HRC: 27.1, strength: 900 },
  { HV: 285, HB: 271, HRC: 27.8, strength: 915 },
  { HV: 290, HB: 276, HRC: 28.5, strength: 930 },
  { HV: 295, HB: 280, HRC: 29.2, strength: 950 },
  { HV: 300, HB: 285, HRC: 29.8, strength: 965 },
  { HV: 310, HB: 295, HRC: 31, strength: 995 },
  { HV: 320, HB: 304, HRC: 32.2, strength: 1030 },
  { HV: 330, HB: 314, HRC: 33.3, strength: 1060 },
  { HV: 340, HB: 323, HRC: 34.4, strength: 1095 },
  { HV: 350, HB: 333, HRC: 35.5, strength: 1125 },
  { HV: 360, HB: 342, HRC: 36.6, strength: 1155 },
  { HV: 370, HB: 352, HRC: 37.7, strength: 1190 },
  { HV: 380, HB: 361, HRC: 38.8, strength: 1220 },
  { HV: 390, HB: 371, HRC: 39.8, strength: 1255 },
  { HV: 400, HB: 380, HRC: 40.8, strength: 1290 },
  { HV: 410, HB: 390, HRC: 41.8, strength: 1320 },
  { HV: 420, HB: 399, HRC: 42.7, strength: 1350 },
  { HV: 430, HB: 409, HRC: 43.6, strength: 1385 },
  { HV: 440, HB: 418, HRC: 44.5, strength: 1420 },
  { HV: 450, HB: 428, HRC: 45.3, strength: 1455 },
]

/** Memory: ISO 18265 Table A.1. */
const ISO_18265_UPPER: readonly ConversionRow[] = [
  { HV: 460, HB: 437, HRC: 46.1, strength: 1485 },
  { HV: 470, HB: 447, HRC: 46.9, strength: 1520 },
  { HV: 480, HB: 456, HRC: 47.7, strength: 1555 },
  { HV: 490, HB: 466, HRC: 48.4, strength: 1595 },
  { HV: 500, HB: 475, HRC: 49.1, strength: 1630 },
  { HV: 510, HB: 485, HRC: 49.8, strength: 1665 },
  { HV: 520, HB: 494, HRC: 50.5, strength: 1700 },
  { HV: 530, HB: 504, HRC: 51.1, strength: 1740 },
  { HV: 540, HB: 513, HRC: 51.7, strength: 1775 },
  { HV: 550, HB: 523, HRC: 52.3, strength: 1810 },
  { HV: 560, HB: 532, HRC: 53, strength: 1845 },
  { HV: 570, HB: 542, HRC: 53.6, strength: 1880 },
  { HV: 580, HB: 551, HRC: 54.1, strength: 1920 },
  { HV: 590, HB: 561, HRC: 54.7, strength: 1955 },
  { HV: 600, HB: 570, HRC: 55.2, strength: 1995 },
  { HV: 610, HB: 580, HRC: 55.7, strength: 2030 },
  { HV: 620, HB: 589, HRC: 56.3, strength: 2070 },
  { HV: 630, HB: 599, HRC: 56.8, strength: 2105 },
  { HV: 640, HB: 608, HRC: 57.3, strength: 2145 },
  { HV: 650, HB: 618, HRC: 57.8, strength: 2180 },
]

/** Memory: ISO 18265 Table A.1. Nothing above 940 HV: no HRC exists there. */
const ISO_18265_HARDEST: readonly ConversionRow[] = [
  { HV: 660, HRC: 58.3 },
  { HV: 670, HRC: 58.8 },
  { HV: 680, HRC: 59.2 },
  { HV: 690, HRC: 59.7 },
  { HV: 700, HRC: 60.1 },
  { HV: 720, HRC: 61 },
  { HV: 740, HRC: 61.8 },
  { HV: 760, HRC: 62.5 },
  { HV: 780, HRC: 63.3 },
  { HV: 800, HRC: 64 },
  { HV: 820, HRC: 64.7 },
  { HV: 840, HRC: 65.3 },
  { HV: 860, HRC: 65.9 },
  { HV: 880, HRC: 66.4 },
  { HV: 900, HRC: 67 },
  { HV: 920, HRC: 67.5 },
  { HV: 940, HRC: 68 },
]

/** In rising order of every column. */
export const CONVERSION_ROWS: readonly ConversionRow[] = [...DIN_50150, ...ISO_18265_UPPER, ...ISO_18265_HARDEST]
