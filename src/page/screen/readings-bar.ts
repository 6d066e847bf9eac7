/** The strip that stands at the foot of the window: who measures, what is counted, what can be done with it. */
export type ReadingsBar = {
  readonly by: HTMLInputElement
  readonly temperature: HTMLInputElement
  readonly exporting: HTMLButtonElement
  readonly clearing: HTMLButtonElement
  readonly count: (text: string) => void
  /** Said to whoever cannot see the cell change. */
  readonly say: (text: string) => void
}

export function readingsBar(): ReadingsBar {
  const bar = document.createElement('aside')
  bar.className = 'readings'
  bar.setAttribute('aria-label', 'Readings')
  const by = field(bar, 'Measured by')
  const temperature = field(bar, 'Parts at, °C')
  temperature.inputMode = 'decimal'
  const exporting = button(bar, 'Save readings as a file')
  const clearing = button(bar, 'Clear')
  const count = document.createElement('p')
  const status = document.createElement('p')
  status.setAttribute('role', 'status')
  bar.append(count, status)
  document.body.append(bar)
  return {
    by,
    temperature,
    exporting,
    clearing,
    count: text => {
      count.textContent = text
    },
    say: text => {
      status.textContent = text
    },
  }
}

function field(bar: HTMLElement, words: string): HTMLInputElement {
  const label = document.createElement('label')
  const input = document.createElement('input')
  input.type = 'text'
  input.autocomplete = 'off'
  label.append(words, input)
  bar.append(label)
  return input
}

function button(bar: HTMLElement, words: string): HTMLButtonElement {
  const made = document.createElement('button')
  made.type = 'button'
  made.textContent = words
  bar.append(made)
  return made
}
