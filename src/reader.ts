/** Who has paper of a packet without asking for it. */
export type Reader = 'floor' | 'inspection' | 'orders' | 'file'
export const READERS: readonly Reader[] = ['floor', 'inspection', 'orders', 'file']
