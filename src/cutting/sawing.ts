import { SAWING, SHOP_TIMES } from '../handbook/shop-times.ts'
import { type CuttingTask, type PlannedCuts, START_AT } from './cutting-task.ts'

/** One cut through the bar a piece, by area of section. */
export function sawBlanks(task: CuttingTask): PlannedCuts {
  const { after, material, shop, notebook, operation } = task
  const outside = Math.max(...after.outside.map(({ diameter }) => diameter))
  const bore = after.bore.length > 0 ? Math.min(...after.bore.map(({ diameter }) => diameter)) : 0
  const section = (Math.PI / 4) * (outside ** 2 - bore ** 2)
  const { rate, speed } = SAWING[material.family]
  const time = section / 100 / rate
  notebook.note({
    operation: operation.number,
    about: 'length',
    symbol: 't',
    meaning: 'sawing time by area of section',
    value: time,
    unit: 'min',
    expression: `${Number(section.toPrecision(6))} / 100 / ${rate}`,
    source: 'common practice, no source',
  })
  return {
    steps: [
      {
        tool: 'bandsaw blade',
        action: 'saw blank',
        feature: 'length',
        cuttingSpeed: speed,
        spindleSpeed: 0,
        feed: 0,
        feedUnit: 'mm/rev',
        tableFeed: outside / time,
        depth: outside,
        passes: 1,
        time: time + SHOP_TIMES.rapid,
        remarks: [START_AT, `kerf ${shop.habits.sawKerf} mm`],
      },
    ],
  }
}
