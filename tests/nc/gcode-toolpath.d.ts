/** As much of its face as we use; the package has no types of its own. */
declare module 'gcode-toolpath' {
  type Place = { readonly x: number; readonly y: number; readonly z: number }
  type Modal = { readonly motion: string; readonly units: string; readonly distance: string }
  // biome-ignore lint/style/noDefaultExport: so the package exports it.
  export default class Toolpath {
    constructor(options: {
      readonly position: Place
      readonly addLine: (modal: Modal, from: Place, to: Place) => void
      readonly addArcCurve: () => void
    })
    loadFromStringSync(text: string): void
  }
}
