import { QUENCH_SAFETY } from '../handbook/hardening-safety.ts'
import type { QuenchPlan } from '../hardening/quench-plan.ts'
import { AS_HARDENED } from './case-words.ts'
import { distortion, distortionReadings, formAsked, marked } from './distortion-asked.ts'
import type { Drafted } from './drafted.ts'
import { cleaning } from './hardening-order.ts'
import { oneHeat } from './identity.ts'
import type { Quantity } from './order.ts'
import type { Visit } from './order-source.ts'
import { celsius, hardness } from './quantity.ts'
import { austeniteLeft, boreFromQuench, quenchAsked } from './quench-words.ts'
import { type Draft, point, say, sentence } from './say.ts'

/** A part hard to the middle bears the heaviest loads. */
const [ROCKWELL, VICKERS] = ['HRC', 'HV30'] as const

/** What is asked on the piece; where the drawing asks none, what the temper leaves. */
const surface = ({ asked, expected }: QuenchPlan): Quantity =>
  asked
    ? hardness(ROCKWELL)('asked', 'hardness', { least: asked.HRC }, { state: AS_HARDENED })
    : hardness(ROCKWELL)('expected', 'hardness', { value: expected }, { state: AS_HARDENED, places: 1 })

/**
 * The order to the heat treater of a part that is hardened through: no depth and no masking, but how it is quenched, how soon
 * it is tempered and how hard it comes. It states requirements; the treater chooses the cycle. Common practice, no source.
 */
export function quenchOrder(visit: Visit, planned: QuenchPlan): Drafted {
  const { source, operations } = visit
  const [operation] = operations
  if (!operation) return { points: [], finish: [], returns: [], cautions: [] }
  const forms = formAsked(source)
  return {
    points: [
      ...oneHeat(visit),
      ...condition(planned),
      ...allowed(planned),
      ...quenchAsked(source, planned.quench),
      ...tempered(planned),
      ...result(planned),
      ...point('Skin', 'Protective gas or vacuum: no scale, no decarburised skin deeper than our stock takes off.'),
      ...point('Zones', 'Hard all over and to the middle: nothing is masked, and no case depth is asked.'),
      ...distortion(source, planned, forms),
      ...boreFromQuench(source, planned.quench),
      ...point('Fixturing', `${sentence(operation.holding)}.`, 'No wire and no hook on a bore or a seat.'),
      ...cleaning(source),
      ...point(
        'Certificate',
        'Hardness with scale and place; hardening temperature, quench and temper of the charge, with its number; sizes before and after.',
      ),
      ...point(
        'Nonconformance',
        'Hold the charge and ring before anything else is done.',
        source.ported
          ? 'Do not set true: a ported part cracks at its windows.'
          : 'Set true only between quench and temper, and with our consent.',
        'No second hardening without our consent.',
      ),
    ],
    finish: [],
    returns: [{ ...surface(planned), of: 'piece', readings: marked(source) }, ...distortionReadings(source, forms)],
    cautions: QUENCH_SAFETY,
  }
}

function condition({ barHardness, stressRelief: { aim } }: QuenchPlan): readonly Draft[] {
  const relieved = say`Stress relieved at ${celsius('given', 'stress-relieving temperature, aim', { value: aim })}, then finish machined.`
  return point(
    'Condition on arrival',
    barHardness === undefined
      ? 'Annealed, as the bar certificate says.'
      : say`Annealed, to ${hardness('HV')('given', 'hardness of the bar', { value: barHardness })}.`,
    relieved,
  )
}

const allowed = ({ process, medium, hardening }: QuenchPlan): readonly Draft[] =>
  point(
    'Process allowed',
    `${sentence(process)} by quench in ${medium}, and temper. Another process only with our consent; never in water.`,
    say`For information, the grade is hardened from ${celsius('planned', 'hardening temperature', hardening)}.`,
    'The treater chooses and confirms the cycle.',
  )

function tempered({ temper, stabilised, austenite }: QuenchPlan): readonly Draft[] {
  const at = celsius('planned', 'temper', { value: temper })
  return point(
    'Temper',
    say`At once after the quench, while the part is still warm to the hand: we reckon with ${at}.`,
    stabilised
      ? say`The temper must break down the ${austeniteLeft(austenite)} of austenite that the quench leaves: the part runs hot, and what is left would grow in service.`
      : say`The quench leaves ${austeniteLeft(austenite)} of austenite, which grows later. No sub-zero treatment without our consent: our sizes are planned without it.`,
    'We temper or warm the part no hotter afterwards.',
  )
}

function result(planned: QuenchPlan): readonly Draft[] {
  const { asked, expected } = planned
  return point(
    'Result',
    asked
      ? say`As hardened and tempered: ${surface(planned)} or more, which converts to ${hardness(VICKERS)('planned', 'hardness, converted', { least: asked.HV })}; hard to the middle.`
      : say`As hardened and tempered: ${surface(planned)} expected: report it.`,
    asked &&
      say`We expect ${hardness(ROCKWELL)('expected', 'hardness after the temper', { value: expected }, { places: 1 })}.`,
    'Read it on an end face, ground clean, at three places; never on a seat or in the bore.',
  )
}
