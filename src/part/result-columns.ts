/** Columns of a list with one reading a line, in the order in which the packet's screen writes them. */
export const RESULT_COLUMNS = [
  'part',
  'revision',
  'batch',
  'serial',
  'operation',
  'feature',
  'depth',
  'direction',
  'value',
  'unit',
  'gauge',
  'gauge-id',
  'temperature',
  'date',
  'by',
  'note',
] as const

export type ResultColumn = (typeof RESULT_COLUMNS)[number]
