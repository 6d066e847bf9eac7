import { Argument, Command, CommanderError, Option } from 'commander'
import { withoutControls } from '../refusal.ts'
import { type CommandName, EXIT_STATUS, HELP } from './help.ts'
import type { NewKind } from './new.ts'
import {
  calendarDate,
  gathered,
  labelGrid,
  listed,
  readers,
  resultsReaders,
  wholeNumber,
  wholeNumbers,
} from './options.ts'
import { complain, wantsTrace } from './outer-shell.ts'
import { VERSION } from './version.ts'
import type { View } from './view.ts'
import { STATUS, type World } from './world.ts'

const PART = 'part file in YAML'
const KINDS: readonly NewKind[] = ['liner', 'sleeve', 'pin', 'piston', 'shop', 'batch', 'results']

/** Runs one command line and returns its exit status. What a command needs is loaded when it is called, not before. */
export async function run(argv: readonly string[], world: World): Promise<number> {
  let status: number = STATUS.fine
  const program = describe(world, outcome => {
    status = outcome
  })
  try {
    await program.parseAsync([...argv], { from: 'user' })
    return status
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? STATUS.fine : STATUS.unusable
    return complain(error, world, wantsTrace(argv))
  }
}

function describe(world: World, ended: (status: number) => void): Command {
  const program = new Command('linerwright')
    .description(
      'Plans the making of ported cylinder liners and the parts that go with them, and prints the packet of paper.',
    )
    .version(VERSION, '-V, --version', 'print the version')
    .exitOverride()
    .configureOutput({ writeOut: world.out, writeErr: text => world.err(withoutControls(text)) })
    .showSuggestionAfterError()
    .showHelpAfterError('(linerwright --help lists the commands)')
    .enablePositionalOptions()

  const command = (name: CommandName): Command => {
    const { summary, says, examples } = HELP[name]
    return program
      .command(name)
      .summary(summary)
      .description(says)
      .option('--trace', 'should the program itself be at fault, print where')
      .addHelpText(
        'after',
        `\n${exampleHead(examples)}:\n${examples.map(line => `  ${line}\n`).join('')}\n${EXIT_STATUS}`,
      )
      .exitOverride()
  }

  command('new')
    .addArgument(new Argument('<kind>', 'what to make').choices(KINDS))
    .argument('<file>', 'file to write')
    .option('--schema', 'put the schema beside the file, for an editor that completes keys')
    .option(
      '--plan <file>',
      'of results: the plan as issued that they are of, or its folder; asks for what is measured',
    )
    .option('--from <file>', 'of a liner or a sleeve: the bench file of one that was measured')
    .option('--operation <n>', 'of results: after which operation, by its number', wholeNumber(100_000))
    .option('--force', 'write over a file that is there')
    .action(async (kind, file, options) => ended((await import('./new.ts')).newFile(kind, file, options, world)))

  planning(command('check'))
    .argument('<part...>', `${PART}; a shop or a batch file is checked too`)
    .action(async (files, options) => ended(await (await import('./check.ts')).check(files, options, world)))

  const view = (name: CommandName, load: () => Promise<View>, ...obeyed: readonly Obeyed[]): Command =>
    planning(command(name), ...obeyed)
      .argument('<part>', PART)
      .action(async (file, options) => {
        const [{ show }, side] = await Promise.all([import('./show.ts'), load()])
        ended(show(file, options, world, side))
      })
  planning(command('route'), 'operation')
    .argument('<part>', PART)
    .option('--why <n>', 'why this operation stands where it does, and what would happen otherwise', wholeNumber(9999))
    .option('--alternatives <n>', 'the next best routes beside the planned one, each planned whole', wholeNumber(20))
    .action(async (file, options) =>
      ended(await (await import('./route-command.ts')).routeCommand(file, options, world)),
    )
  planning(command('stock'), 'units', 'changes')
    .argument('<part>', PART)
    .option('--as-cut', 'judge the sizes as planned by the facts of --set, and choose nothing anew')
    .option('--svg <dir>', 'write the picture of a sweep into this folder')
    .action(async (file, options) => ended(await (await import('./what-if.ts')).stockCommand(file, options, world)))
  planning(command('ports'), 'units', 'changes')
    .argument('<part>', PART)
    .option(...AS_MADE)
    .option('--solve <path:figure=value>', 'the height, width or opening that gives a time-area or a blowdown')
    .option('--measured <file>', 'a liner measured on the bench, held against the plan')
    .option('--nc <dir>', 'write a program (ISO 6983) for every set-up into this folder')
    .option('--force', 'write over programs of another fingerprint')
    .option('--svg <dir>', 'write the drawings of the ports, or the picture of a sweep, into this folder')
    .action(async (file, options) => ended(await (await import('./ports-files.ts')).portsCommand(file, options, world)))
  planning(command('plan'), 'units', 'changes')
    .argument('<part>', PART)
    .option(...AS_MADE)
    .action(async (file, options) => ended(await (await import('./plan-what-if.ts')).planCommand(file, options, world)))
  view('workings', async () => (await import('./workings.ts')).workings, 'operation')

  printing(planning(command('traveller'), 'units'))
    .argument('<part...>', PART)
    .option('--for <readers>', 'whose paper, of floor, inspection, orders and file (else all of it)', readers)
    .option(
      '--sheet <names>',
      'print these sheets of the issued plan again, as 80,ports, and plan nothing anew',
      listed,
    )
    .option(
      '--labels <size>',
      'print labels.pdf too, a tag a piece and a label a box, on sheets of labels of this size in mm, as 70x37, or with the pitch behind a slash',
      labelGrid,
    )
    .action(async (files, options) => ended(await (await import('./traveller.ts')).traveller(files, options, world)))

  printing(planning(command('subcontract'), 'units', 'operation'))
    .argument('<part>', PART)
    .addOption(
      new Option('--as <form>', 'print the order itself, for an e-mail or another program, and write nothing').choices([
        'text',
        'yaml',
      ]),
    )
    .action(async (file, options) => ended(await (await import('./subcontract.ts')).subcontract(file, options, world)))

  planning(command('quote'), 'quantities')
    .argument('<part>', PART)
    .option('--calendar <file>', 'write the days as a calendar file (iCalendar, RFC 5545)')
    .action(async (file, options) => {
      const { quantity: quantities, ...others } = options
      ended((await import('./quote.ts')).quote(file, { ...others, ...(quantities && { quantities }) }, world))
    })

  planning(command('record'), 'units', 'operation')
    .argument('<part>', PART)
    .argument('[results...]', 'results files in YAML or CSV')
    .option('--out <dir>', 'folder of the paper, with the plan as issued', 'out')
    .option(
      '--columns <ours=theirs,...>',
      "columns of a firm's own list, as serial=Nr,seat=D1; --operation says after which",
    )
    .option('--keep', 'add what was learnt to the shop file, as a row of measured:')
    .option('--pair <file>', 'a tray of pistons in CSV (serial, size), to pair with the bores as measured last')
    .option('--clearance <least..most>', 'clearance of a pair, mm, as 0.057..0.073')
    .option('--lost <piece@operation=why>', 'a piece that is lost; may be given again', gathered)
    .option(
      '--for <readers>',
      'print paper beside the plan for these, of inspection, grinder, fitter, customer and file',
      resultsReaders,
    )
    .addOption(paperSize())
    .option(...OWN_TEMPLATES)
    .action(async (file, results, options) =>
      ended(await (await import('./record.ts')).record(file, results, options, world)),
    )

  planning(command('compare'), 'units')
    .argument('<old>', 'part file in YAML, or plan.json as issued')
    .argument('<new>', 'the same of the new revision')
    .action(async (old, is, options) => ended((await import('./compare.ts')).compare(old, is, options, world)))

  command('trial')
    .argument('<trial>', 'trial file in YAML')
    .option('--plan', 'say how to run it, before the first run, and judge nothing')
    .option('--json', 'plain data on standard output and nothing else there')
    .action(async (file, options) => ended(await (await import('./trial.ts')).trialCommand(file, options, world)))
  return program
}

const exampleHead = (examples: readonly string[]): string => (examples.length > 1 ? 'Examples' : 'Example')

const AS_MADE = ['--as-made', 'under --set and --sweep, ports given by their opening stay where they are cut'] as const

/** Options that some commands obey. One that a command does not obey it does not take. */
type Obeyed = 'units' | 'operation' | 'changes' | 'quantities'

/** Options of every command that plans, and of the others those that this one obeys. */
function planning(command: Command, ...obeyed: readonly Obeyed[]): Command {
  command
    .option('--shop <file>', 'shop file (else shop.yaml beside the part, else the built-in shop)')
    .option(
      '--batch <number>',
      'batch number, or a batch file (.yaml) that gives number, quantity, date and heat (else draft)',
    )
    .option('--date <YYYY-MM-DD>', 'date of issue (else that of the batch file, else today)', calendarDate)
    .option(
      '--start <YYYY-MM-DD>',
      'day that the first operation is begun on (else that of the batch file, else nothing has a date)',
      calendarDate,
    )
    .option('--json', 'plain data on standard output and nothing else there')
  if (obeyed.includes('quantities'))
    command.option('--quantity <n,…>', 'good pieces wanted, several to be held side by side', wholeNumbers(1000))
  else command.option('--quantity <n>', 'good pieces wanted (else those of the batch file, else 10)', wholeNumber(1000))
  if (obeyed.includes('operation'))
    command.option('--operation <n>', 'this operation only, by its number', wholeNumber(100_000))
  if (obeyed.includes('changes'))
    command
      .option(
        '--set <path=value>',
        'plan again with this value changed (also += and -=), and show both; may be given again',
        gathered,
      )
      .option('--sweep <path=from:to:step>', 'plan with every value from one to the other')
  if (obeyed.includes('units'))
    command.addOption(new Option('--units <units>', 'units to print').choices(['mm', 'inch']).default('mm'))
  return command
}

/** Options of the commands that print paper. */
function printing(command: Command): Command {
  return command
    .option('--out <dir>', 'folder for the paper', 'out')
    .addOption(new Option('--format <format>', 'files to write').choices(['pdf', 'html', 'both']).default('both'))
    .addOption(paperSize())
    .option(...OWN_TEMPLATES)
    .option('--force', 'replace an issued packet of another fingerprint, and say so on every sheet')
}

const paperSize = (): Option => new Option('--paper <size>', 'paper size').choices(['a4', 'letter']).default('a4')

const OWN_TEMPLATES = [
  '--templates <dir>',
  "folder with the works' own templates: those it holds replace ours of the same name",
] as const
