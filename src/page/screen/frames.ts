/** Who has no mouse moves a table that is wider than the screen with the arrow keys: such a frame can be gone to. */
export function openFrames(): void {
  for (const frame of document.querySelectorAll<HTMLElement>('.wide, figure')) {
    if (frame.scrollWidth > frame.clientWidth) {
      frame.tabIndex = 0
      frame.setAttribute('role', 'group')
      frame.setAttribute('aria-label', 'wider than the screen: moves sideways')
    } else {
      frame.removeAttribute('tabindex')
      frame.removeAttribute('role')
      frame.removeAttribute('aria-label')
    }
  }
}
