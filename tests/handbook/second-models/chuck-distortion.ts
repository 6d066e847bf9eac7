/** Lobes at the mouth, over those at the middle of the jaws, for a grip at one end. Fitted to the same solutions. */
export const MOUTH_FACTOR = 1.3
