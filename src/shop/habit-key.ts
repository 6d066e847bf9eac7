/** How the shop file writes a habit: `finishTurningTolerance` is `finish-turning-tolerance`. */
export const habitKey = (habit: string): string => habit.replace(/[A-Z]/g, letter => `-${letter.toLowerCase()}`)
