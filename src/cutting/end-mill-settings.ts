import type { EndMill } from '../shop/tool.ts'
import type { CuttingTask } from './cutting-task.ts'
import { type EndMillSetting, endMillSetting } from './end-mill-setting.ts'
import { figure } from './figure.ts'

export type SettingOf = (mill: EndMill) => EndMillSetting

/** How end mills run in the work, each settled once, when it is first asked for. */
export type EndMillSettings = { readonly of: SettingOf; readonly settled: ReadonlyMap<string, EndMillSetting> }

/** Nothing where the work is too hard to mill, and it is told. */
export function endMillSettings(task: CuttingTask): EndMillSettings | undefined {
  const { grade, HB, milling } = task.material
  if (!milling) {
    task.report({
      code: 'cutting/too-hard-to-cut',
      severity: 'error',
      message: `no end-milling data for ${grade} at ${figure(HB)} HB`,
      hint: 'buy the bar softer: small end mills are planned up to 325 HB in steel',
      path: '/material/hardness',
    })
    return undefined
  }
  const settings = new Map<string, EndMillSetting>()
  return {
    settled: settings,
    of: mill => {
      const known = settings.get(mill.name) ?? endMillSetting(task, milling, mill)
      settings.set(mill.name, known)
      return known
    },
  }
}
