import type { Keeper } from './keep.ts'

/** A box to tick on every sheet of the floor and the inspector, shown in the contents too. */
export function markDone(keeper: Keeper): void {
  for (const section of document.querySelectorAll('section')) {
    if (!section.querySelector('td.write')) continue
    const label = document.createElement('label')
    label.className = 'done'
    const box = document.createElement('input')
    box.type = 'checkbox'
    label.append(box, 'done')
    section.querySelector('header')?.append(label)
    const link = document.querySelector(`nav a[href="#${section.id}"]`)
    const mark = document.createElement('span')
    link?.append(mark)
    const show = (): void => {
      box.checked = keeper.now().done.includes(section.id)
      mark.textContent = box.checked ? ' ✓ done' : ''
    }
    box.addEventListener('change', () => {
      const others = keeper.now().done.filter(id => id !== section.id)
      keeper.change({ done: box.checked ? [...others, section.id] : others })
      show()
    })
    show()
  }
}
