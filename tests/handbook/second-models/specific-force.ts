/** kW for each cm³/s, 4140 and 4340 types, sharp tools, at the table's own feed. Source: Machinery's Handbook, 31st ed., p. 1147. */
export const POWER_CONSTANTS: readonly { readonly over: number; readonly upTo: number; readonly Kp: number }[] = [
  { over: 140, upTo: 160, Kp: 1.69 },
  { over: 160, upTo: 180, Kp: 1.77 },
  { over: 180, upTo: 200, Kp: 1.88 },
  { over: 200, upTo: 220, Kp: 1.97 },
  { over: 220, upTo: 240, Kp: 2.07 },
  { over: 240, upTo: 260, Kp: 2.18 },
  { over: 260, upTo: 280, Kp: 2.29 },
  { over: 280, upTo: 300, Kp: 2.38 },
  { over: 300, upTo: 320, Kp: 2.48 },
  { over: 320, upTo: 340, Kp: 2.62 },
  { over: 340, upTo: 360, Kp: 2.73 },
]
