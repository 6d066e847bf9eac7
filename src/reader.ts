/** Who has paper of a packet without asking for it. */
export type Reader = 'floor' | 'inspection' | 'orders' | 'file'
export const READERS: readonly Reader[] = ['floor', 'inspection', 'orders', 'file']

/** Who has paper of what came back, when it is asked for; the file has all of it for a screen. */
export type ResultsReader = 'inspection' | 'grinder' | 'fitter' | 'customer' | 'file'
export const RESULTS_READERS: readonly ResultsReader[] = ['inspection', 'grinder', 'fitter', 'customer', 'file']
