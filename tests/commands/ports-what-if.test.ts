import { describe, expect, it } from 'vitest'
import { run } from '../../src/commands/program.ts'
import type { Plan } from '../../src/plan/plan.ts'
import type { PlannedPort } from '../../src/ports/port.ts'
import { demo, desk } from './fake-world.ts'

const liner = { 'liner.yaml': demo('OX-098-21.yaml'), 'shop.yaml': demo('shop.yaml') }

/** Piston travel of the slider-crank without offset, as in any textbook of engines (Heywood, 1988, 2.2). */
const travel = (S: number, L: number, degrees: number): number => {
  const [R, t] = [S / 2, (degrees * Math.PI) / 180]
  return R + L - R * Math.cos(t) - Math.sqrt(L * L - (R * Math.sin(t)) ** 2)
}
/** Its inverse in closed form. */
const opening = (S: number, L: number, x: number): number => {
  const [R, u] = [S / 2, S / 2 + L - x]
  return (Math.acos((u * u + R * R - L * L) / (2 * R * u)) * 180) / Math.PI
}

async function asked(...argv: string[]) {
  const world = desk(liner)
  const status = await run(['ports', 'liner.yaml', ...argv, '--json'], world)
  return { status, data: JSON.parse(world.printed()), said: world.complained() }
}
const portIn = ({ ports }: { ports: readonly PlannedPort[] }, name: string): PlannedPort => {
  const port = ports.find(port => port.name === name)
  if (!port) throw new Error(`no ${name}`)
  return port
}

describe('ports --set', () => {
  it('shows a port opened later before and after, by the slider-crank, and its setting moved as far', async () => {
    const { status, data } = await asked('--set', 'exhaust.opens+=2')
    const [was, is] = [portIn(data.before, 'exhaust'), portIn(data.after, 'exhaust')]
    // The demo engine: stroke 54, rod 100, crown 0.4 below the top face.
    const deeper = travel(54, 100, 108) - travel(54, 100, 106)
    expect(status).toBe(0)
    expect([was.opens, is.opens, is.duration]).toEqual([106, 108, 144])
    expect(is.top - was.top).toBeCloseTo(deeper, 9)
    // Milled short by what the wall between the two edges stretches in hardening: all of the 92 mm that the flange, 4 thick, leaves
    // over is stretched alike.
    const world = desk(liner)
    await run(['plan', 'liner.yaml', '--json'], world)
    const { faces, limits } = (JSON.parse(world.printed()) as Plan).axial?.stretch ?? { faces: [] }
    const reached = (name: string) => faces.find(({ face }) => face === name)?.depth ?? Number.NaN
    const share = (reached('bottom') - reached('flange')) / (92 - 4)
    expect(share).toBeGreaterThan(1)
    expect((was.windows[0]?.x ?? 0) - (is.windows[0]?.x ?? 0)).toBeCloseTo(
      deeper * (1 - share * (limits?.nominal ?? Number.NaN)),
      9,
    )
    expect(data.after.gasExchange.blowdown.angle).toBeCloseTo(13, 9)
  })
  it('prints timing, what the ports do together, and only the settings that change', async () => {
    const world = desk(liner)
    expect(await run(['ports', 'liner.yaml', '--set', 'exhaust.opens-=1'], world)).toBe(0)
    expect(world.printed()).toMatch(/^exhaust +106\.00 .* 105\.00 /m)
    expect(world.printed()).toMatch(/^blowdown +15\.0 +16\.0 +\+1\.0 +°$/m)
    expect(world.printed()).toMatch(/^exhaust at -18\.7 +X +/m)
    expect(world.printed()).not.toMatch(/^boost at 180\.0 /m)
  })
  it('writes no file and no program meanwhile', async () => {
    const world = desk(liner)
    expect(await run(['ports', 'liner.yaml', '--set', 'exhaust.opens+=2', '--nc', 'nc'], world)).toBe(2)
    expect(world.complained()).toMatch(/--nc writes what the part file says/)
    const drawing = desk(liner)
    expect(await run(['ports', 'liner.yaml', '--set', 'exhaust.opens+=2', '--svg', 'svg'], drawing)).toBe(2)
    expect(drawing.complained()).toMatch(/--svg draws what the part file says, or a sweep/)
  })
})

describe('ports --sweep', () => {
  const gasket = ['--sweep', 'engine.crown-below-top=0.2:0.8:0.3']
  it('with --as-made moves the timing of edges that stay, as a gasket does', async () => {
    const { data } = await asked(...gasket, '--as-made')
    const top = 0.4 + travel(54, 100, 106)
    expect(data.points.map(({ value }: { value: number }) => value)).toEqual([0.2, 0.5, 0.8])
    for (const point of data.points) {
      const exhaust = portIn(point, 'exhaust')
      expect(exhaust.top).toBeCloseTo(top, 9)
      expect(exhaust.opens).toBeCloseTo(opening(54, 100, top - point.value), 9)
    }
  })
  it('without it keeps the openings and moves the edges', async () => {
    const { data } = await asked(...gasket)
    for (const point of data.points) {
      expect(portIn(point, 'exhaust').opens).toBe(106)
      expect(portIn(point, 'exhaust').top).toBeCloseTo(point.value + travel(54, 100, 106), 9)
    }
  })
  it('with --svg draws timing, blowdown and time-areas over the values, and says where', async () => {
    const world = desk(liner)
    expect(await run(['ports', 'liner.yaml', '--sweep', 'exhaust.opens=104:110:1', '--svg', 'svg'], world)).toBe(0)
    expect(world.printed()).toMatch(/^svg\/OX-098-21-B-exhaust\.opens\.svg$/m)
    const drawn = String(world.files.get('svg/OX-098-21-B-exhaust.opens.svg'))
    expect(drawn).toMatch(/<title>Timing and areas of OX-098-21 against exhaust\.opens from 104 to 110\./)
    for (const title of ['opens, degrees after top dead centre', 'blowdown, degrees', 'specific time-area, s/m'])
      expect(drawn).toContain(title)
  })
  it('takes a port by its name, and values below zero', async () => {
    const { data } = await asked('--sweep', 'boost.opens=121:125:2')
    expect(data.points.map((point: { ports: PlannedPort[] }) => portIn(point, 'boost').opens)).toEqual([121, 123, 125])
    const proud = await asked('--sweep', 'engine.crown-below-top=-0.2:0.2:0.2')
    expect(proud.data.points).toHaveLength(3)
  })
})

describe('ports --solve', () => {
  it('opens the exhaust where the blowdown is what is wanted: the transfer opens at 121', async () => {
    const { status, data } = await asked('--solve', 'exhaust.opens:blowdown=17.5')
    expect([status, data.solve.value]).toEqual([0, 103.5])
    expect(data.after.gasExchange.blowdown.angle).toBeCloseTo(17.5, 9)
  })
  it.each([
    ['exhaust.height', 'time-area', 0.0152],
    ['main transfer.width', 'time-area', 0.0105],
    ['exhaust.opens', 'blowdown-time-area', 0.0005],
    ['boost.opens', 'mean-time-area', 0.0126],
  ])('%s for a %s: what it finds, planned anew, gives it', async (path, figure, wanted) => {
    const { data } = await asked('--solve', `${path}:${figure}=${wanted}`)
    const again = await asked('--set', `${path}=${data.solve.exact}`)
    const { areas, together, blowdown } = again.data.after.gasExchange
    const flow = path.startsWith('exhaust')
      ? areas.find(({ role }: { role: string }) => role === 'exhaust')
      : together[0]
    const found = {
      'time-area': flow.specificTimeArea,
      'mean-time-area': flow.meanAreaTimeArea,
      'blowdown-time-area': blowdown.specificTimeArea,
    }
    expect(found[figure as keyof typeof found]).toBeCloseTo(wanted, 9)
    // A drawing has two places.
    expect(data.solve.value).toBeCloseTo(data.solve.exact, 2)
    expect(again.data.after.ports.length).toBe(4)
  })
  it('refuses with the place where no value reaches it, and says what is reached', async () => {
    const { status, data, said } = await asked('--solve', 'exhaust.height:time-area=0.05')
    expect(status).toBe(1)
    expect(data.findings[0].code).toBe('input/no-solution')
    expect(said).toMatch(
      /^liner\.yaml:\d+:\d+ {2}error {2}input\/no-solution {2}exhaust\.height: no height from .* it runs from [\d.]+ to 0\.015/m,
    )
  })
  it('names the key that the file gives instead', async () => {
    const { data } = await asked('--solve', 'exhaust.top:time-area=0.015')
    expect(data.findings[0].message).toBe('exhaust.top: the file does not give exhaust by its top')
  })
  it('names the ports that the part has to who asks for another', async () => {
    const { data } = await asked('--solve', 'third transfer.width:time-area=0.01')
    expect(data.findings[0].hint).toBe('as in exhaust.height; the ports are exhaust, main transfer, boost')
  })
  it.each(['exhaust.height', 'exhaust.height=1', 'exhaust.height:colour=1', 'exhaust.height:blowdown=much'])(
    '%s is refused with what it wants',
    async text => {
      const world = desk(liner)
      expect(await run(['ports', 'liner.yaml', '--solve', text], world)).toBe(2)
      expect(world.complained()).toMatch(/--solve wants path:figure=value/)
    },
  )
})

describe('plan --set and --sweep', () => {
  it('shows what changes of sizes, stock and ports', async () => {
    const world = desk(liner)
    expect(await run(['plan', 'liner.yaml', '--set', 'stock.bore+=0', '--set', 'boost.opens+=1'], world)).toBe(1)
    expect(world.complained()).toMatch(/stock\.bore cannot be changed by "\+0": the file gives it no value/)
    const other = desk(liner)
    expect(await run(['plan', 'liner.yaml', '--set', 'boost.opens+=1'], other)).toBe(0)
    expect(other.printed()).toMatch(/Mill ports +boost top edge depth/)
    expect(other.printed()).toMatch(/^boost +123\.00 .* 124\.00 /m)
    expect(other.printed()).toMatch(/Case to order: as it stands/)
  })
  it('sweeps stock and ports at once', async () => {
    const world = desk(liner)
    expect(await run(['plan', 'liner.yaml', '--sweep', 'stock.bore=0.1:0.3:0.1', '--json'], world)).toBe(0)
    const { stock, ports } = JSON.parse(world.printed())
    expect([stock.points.length, ports.length]).toEqual([3, 3])
  })
})
