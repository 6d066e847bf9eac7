import type { MaterialEntry, MaterialGroup } from './materials.ts'

const row = (
  grade: string,
  group: MaterialGroup,
  source: string,
  [aliases, near = []]: readonly [aliases: readonly string[], near?: readonly string[]],
): MaterialEntry => ({ grade, group, source, aliases, near })

/**
 * Grades that a part file may name: number, and names of the United States, Japan, Russia, Britain, France, Germany and China
 * that are bought in its place, and those that are only near. The names are from memory but those of 41CrAlMo7-10, 16MnCr5,
 * C15, the free-cutting steels and AlSi12CuNiMg, which steel makers' and foundries' tables were read for. A name that two
 * grades share stands with the one that is planned alike or is met more often: 12L14, 420, SACM645.
 */
export const MATERIALS: readonly MaterialEntry[] = [
  row('42CrMo4', 'heat-treatable steel', 'ISO 683-2; EN 10083-3', [
    ['1.7225', '42CrMoS4', '1.7227', '4140', '4142', 'SCM440', '38KhM', '708M40', 'EN19', '42CD4', '42CrMo'],
  ]),
  row('34CrMo4', 'heat-treatable steel', 'ISO 683-2; EN 10083-3', [
    ['1.7220', '4135', '4137', 'SCM435', '35KhM', '35CD4', '35CrMo'],
  ]),
  row('50CrMo4', 'heat-treatable steel', 'ISO 683-2; EN 10083-3', [
    ['1.7228', '4150', '50CrMo'],
    ['SCM445', '50KhM'],
  ]),
  row('34CrNiMo6', 'heat-treatable steel', 'ISO 683-2; EN 10083-3', [
    ['1.6582', '4340', '4337', 'SNCM447', 'SNCM439', '38Kh2N2MA', '817M40', 'EN24', '35NCD6'],
  ]),
  row('30CrNiMo8', 'heat-treatable steel', 'ISO 683-2; EN 10083-3', [
    ['1.6580', 'SNCM431', '823M30', '30NCD8', '31CrNiMo8'],
  ]),
  row('31CrMoV9', 'nitriding steel', 'EN 10085', [['1.8519'], ['30Kh3MF', '30CrMoV9', '1.7707']]),
  row('32CrMo12', 'nitriding steel', 'EN 10085 for 31CrMo12; memory: DIN 17211', [
    ['1.7361', '31CrMo12', '1.8515', '722M24', 'EN40B', '30CD12'],
  ]),
  row('33CrMoV12-9', 'nitriding steel', 'EN 10085', [['1.8522', '32CDV13']]),
  row('34CrAlNi7-10', 'nitriding steel', 'EN 10085', [['1.8550', '34CrAlNi7']]),
  row('34CrAlMo5-10', 'nitriding steel', 'EN 10085', [['1.8507', '34CrAlMo5']]),
  row('41CrAlMo7-10', 'nitriding steel', 'EN 10085', [
    [
      '1.8509',
      '41CrAlMo7',
      'Nitralloy 135M',
      'E7140',
      'SACM645',
      '38Kh2MYuA',
      '905M39',
      'EN41B',
      '40CAD6-12',
      '38CrMoAl',
    ],
  ]),
  row('16MnCr5', 'case-hardening steel', 'ISO 683-3; EN 10084', [
    ['1.7131', '16MnCrS5', '1.7139', '5115', '18KhG', '590M17', '16MC5', '15CrMn'],
    ['SCR415'],
  ]),
  row('20MnCr5', 'case-hardening steel', 'ISO 683-3; EN 10084', [
    ['1.7147', '20MnCrS5', '1.7149', '5120', '20MC5', '20CrMn'],
    ['SCR420', '20Kh'],
  ]),
  row('18CrNiMo7-6', 'case-hardening steel', 'ISO 683-3; EN 10084', [['1.6587', '17CrNiMo6', '18NCD6'], ['4317']]),
  row('15NiCr13', 'case-hardening steel', 'ISO 683-3; EN 10084', [
    ['1.5752', '3310', 'SNC815', '655M13', 'EN36A', '14NiCr14'],
    ['3415', '12KhN3A'],
  ]),
  row('C15', 'unalloyed steel', 'ISO 683-3; EN 10084', [
    ['1.0401', 'C15E', '1.1141', '1015', 'S15C', '15', 'Ck15', 'XC12', '080M15'],
  ]),
  row('C45', 'unalloyed steel', 'EN 10083-2', [
    ['1.0503', 'C45E', '1.1191', 'C45R', '1.1201', '1045', 'S45C', '45', 'Ck45', 'XC48', '080M46'],
  ]),
  row('C60', 'unalloyed steel', 'EN 10083-2', [
    ['1.0601', 'C60E', '1.1221', '1060', 'S58C', '60', 'Ck60', 'XC60', '070M60'],
  ]),
  row('38MnVS6', 'microalloyed steel', 'EN 10267', [['1.1303'], ['15V41', '38MnSiVS5', '1.5231']]),
  row('100Cr6', 'bearing steel', 'ISO 683-17', [
    ['1.3505', '52100', 'SUJ2', 'ShKh15', '100C6', '535A99', 'EN31', 'GCr15'],
  ]),
  row('100CrMo7', 'bearing steel', 'ISO 683-17', [['1.3537'], ['SUJ4']]),
  row('11SMn30', 'free-cutting steel', 'EN 10087; EN 10277', [
    ['1.0715', '1213', '1215', 'SUM22', '9SMn28', 'S250', '230M07'],
  ]),
  row('11SMnPb30', 'free-cutting steel', 'EN 10087; EN 10277', [['1.0718', '12L13', 'SUM22L', '9SMnPb28', 'S250Pb']]),
  row('11SMnPb37', 'free-cutting steel', 'EN 10087; EN 10277', [['1.0737', '12L14', 'SUM24L', '9SMnPb36', 'S300Pb']]),
  row('S355', 'structural steel', 'EN 10025-2', [
    ['S355J2', '1.0577', 'S355JR', '1.0045', '17G1S', 'St 52-3', '1.0570', '50D'],
    ['A572 Gr 50', 'SM490'],
  ]),
  row('X20Cr13', 'stainless steel', 'EN 10088-3', [['1.4021', '420', 'SUS420J1', '20Kh13', 'Z20C13', '420S37']]),
  row('X46Cr13', 'stainless steel', 'EN 10088-3', [
    ['1.4034', 'Z44C14'],
    ['420C', 'SUS420J2', '40Kh13'],
  ]),
  row('EN-GJL-250', 'grey iron', 'EN 1561', [['GJL-250', 'GG-25', '5.1301', '0.6025', '35B', '40B', 'FC250', 'SCh25']]),
  row('EN-GJL-300', 'grey iron', 'EN 1561', [['GJL-300', 'GG-30', '5.1302', '0.6030', '45B', 'FC300', 'SCh30']]),
  row('EN-GJS-400-15', 'ductile iron', 'EN 1563', [
    ['GJS-400-15', 'GGG-40', '5.3106', '60-40-18', 'FCD400', 'VCh40', '0.7040'],
  ]),
  row('EN-GJS-600-3', 'ductile iron', 'EN 1563', [
    ['GJS-600-3', 'GGG-60', '5.3201', 'FCD600', 'VCh60', '0.7060'],
    ['80-55-06'],
  ]),
  row('EN-GJS-700-2', 'ductile iron', 'EN 1563', [
    ['GJS-700-2', 'GGG-70', '5.3300', 'FCD700', 'VCh70', '0.7070'],
    ['100-70-03'],
  ]),
  row('EN AW-6082', 'wrought aluminium', 'EN 573-3; EN 755-2', [
    ['6082', 'EN AW-6082-T6', '6082-T6', 'AlSi1MgMn', 'AD35', '3.2315', 'AlMgSi1'],
  ]),
  row('EN AW-2618A', 'wrought aluminium', 'EN 573-3', [
    ['2618A', 'EN AW-2618A-T6', '2618A-T6', 'AlCu2Mg1.5Ni', 'A2618', 'AK4-1', 'RR58'],
    ['2618'],
  ]),
  row('AlSi12CuNiMg', 'cast aluminium', 'EN 1706', [['EN AC-48000', '336.0', 'A332', 'AC8A', 'AK12MMgN', 'LM13']]),
  row('CuSn8', 'bronze', 'EN 12163', [['CuSn8P', 'CW453K', 'CW459K', 'C52100', 'C5212', 'BrOF8-0.3', '2.1030']]),
  row('CuSn12-C', 'bronze', 'EN 1982', [['CC483K', 'CuSn12', '2.1052', 'PB2'], ['C90800']]),
  row('CuSn7Zn4Pb7-C', 'bronze', 'EN 1982', [['CC493K', 'CuSn7ZnPb', '2.1090', 'Rg7'], ['C93200']]),
]
