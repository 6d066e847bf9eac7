/** What the help and the manual say of a command. */
export type CommandHelp = {
  /** For the list of commands. */
  readonly summary: string
  /** What it does, prints and writes. */
  readonly says: string
  readonly examples: readonly string[]
}

export type CommandName =
  | 'new'
  | 'check'
  | 'route'
  | 'stock'
  | 'ports'
  | 'plan'
  | 'workings'
  | 'traveller'
  | 'subcontract'
  | 'quote'
  | 'record'
  | 'compare'
  | 'trial'

const BESIDE = 'Findings go to standard error.'

export const HELP: Readonly<Record<CommandName, CommandHelp>> = {
  new: {
    summary: 'write a commented part, shop, batch or results file to start from',
    says: 'Writes a part file that plans as it stands, with a comment beside what is less than plain; its drawing number is the name of the file. A shop, a batch and a results file name every key with what it is, its unit and what holds where it is left out; the keys behind a # say nothing until it is taken away. The shop file says what the built-in works is, and its fixture is to be measured before any program. With --plan a results file has a line for all that is measured after one operation, on every piece that it is measured on. Prints what to do next. A file that is there already stays.',
    examples: [
      'linerwright new liner parts/OX-130-01.yaml',
      'linerwright new liner parts/old-liner.yaml --from bench.yaml',
      'linerwright new shop parts/shop.yaml',
      'linerwright new batch parts/batch-2632.yaml',
      'linerwright new results after-turning.yaml --plan out/OX-098-21-B-2631 --operation 40',
    ],
  },
  check: {
    summary: 'read, plan, and list every problem',
    says: 'Reads and plans every part and lists what is wrong, with line, column and what to do; a shop or a batch file is judged by itself. The findings are the result: they go to standard output, a count of them after each file. Writes nothing.',
    examples: ['linerwright check parts/OX-098-21.yaml', 'linerwright check parts/*.yaml --json'],
  },
  route: {
    summary: 'the operations in order, each with the reasons for its place',
    says: `Prints the operations: process, machine or outside, surfaces, how the part is held, and why each stands where it does. --why gives one operation with the rules that hold it after and before others, each with its source and with what would happen otherwise. --alternatives plans the next best routes whole and holds them beside the planned one: set-ups, visits to firms, time, stock and case; first the other orders that every rule allows, then what giving up one rule that asks for an operation would make. ${BESIDE} Writes nothing.`,
    examples: [
      'linerwright route parts/OX-098-21.yaml',
      'linerwright route parts/OX-098-21.yaml --why 90',
      'linerwright route parts/OX-098-21.yaml --alternatives 3',
    ],
  },
  stock: {
    summary: 'stock left for each finishing operation: least, most, what is needed, case left',
    says: `Prints the stock of every finishing operation, whether it cleans up and whether case is left, the chances over a batch, and what all of it rests on. --set shows the same with a value changed, --sweep with a whole range of values; neither changes a file. It goes no further than it needs, so that findings are those of route, stock and batch: check lists all of them. ${BESIDE}`,
    examples: [
      'linerwright stock parts/OX-098-21.yaml --set stock.bore=0.16',
      'linerwright stock parts/OX-098-21.yaml --sweep stock.bore=0.10:0.40:0.02 --svg out',
    ],
  },
  ports: {
    summary: 'port edges, areas, timings and the fixture setting of every window',
    says: `Prints edges and timings in the finished bore, tilt, rotary and axes for each window, areas and what stands beside them from engines in use. --set shows timing, areas and the settings that change before and after, --sweep timing and areas over a range of values; --as-made keeps the edges of a liner that is cut, so that a gasket moves its timing. --solve finds the height, width, arc, opening, top or bottom of a port that gives a time-area, mean-time-area, blowdown, blowdown-time or blowdown-time-area. A port goes by its name. --measured reads what was measured of a liner on the bench (bore, crown-below-top, and of each port by its name top, bottom, width or arc, at, or the side edges from and to, in degrees or as on a clock seen from the head) and prints its difference from the plan in mm and crank degrees. None of these changes a file. ${BESIDE} With --nc it writes the programs and a list of those that belong together, once the shop file has the fixture as measured; with --svg the drawings, or of a sweep the picture of timing, blowdown and time-areas; their names are printed. Prove every program dry; the machine's own manual has the last word.`,
    examples: [
      'linerwright ports parts/OX-098-21.yaml',
      'linerwright ports parts/OX-098-21.yaml --nc out/nc --svg out/svg',
      'linerwright ports parts/OX-098-21.yaml --set "exhaust.opens+=2"',
      'linerwright ports parts/OX-098-21.yaml --sweep engine.crown-below-top=0.2:0.8:0.1 --as-made',
      'linerwright ports parts/OX-098-21.yaml --solve exhaust.opens:blowdown=16',
      'linerwright ports parts/OX-098-21.yaml --measured bench.yaml',
    ],
  },
  plan: {
    summary: 'the whole plan',
    says: `Prints bar, operations with times and sizes to hold, stock and what it rests on. --json prints everything that is known of the plan, findings too, as the plan's schema describes it. --set shows what changes of sizes, times, stock and ports, --sweep stock and ports over a range of values; neither changes a file. ${BESIDE} Writes nothing.`,
    examples: [
      'linerwright plan parts/OX-098-21.yaml --quantity 24 --json > plan.json',
      'linerwright plan parts/OX-098-21.yaml --set stock.bore=0.22',
    ],
  },
  workings: {
    summary: 'every figure with its formula, numbers and source',
    says: `Prints every figure that the plan rests on: symbol, value, what it is, formula, the numbers in it, and where it comes from. ${BESIDE} Writes nothing.`,
    examples: ['linerwright workings parts/OX-098-21.yaml --operation 90'],
  },
  traveller: {
    summary: 'the packet of paper that goes round the shop with the batch',
    says: `Issues the packet of every part into a folder of its own, OUT/PART-REVISION-BATCH, and prints the names of the files. Each reader has a document: floor.pdf goes round with the pieces, inspection.pdf is the inspector's, order-1-FIRM.pdf and so on go out with the pieces; packet.html is the file copy, which has all of them and open questions, stock and workings too; plan.json is the plan as issued. The same input gives the same bytes. What is issued is kept: for the same part and batch a plan of another fingerprint is refused, but with --force, when every sheet says what it replaces. --sheet prints lost sheets again from plan.json, by operation number or name, each marked as a copy. --labels prints labels.pdf besides: a tag for each piece and a label for the box of each visit, with their codes, on a grid of labels in the middle of the sheet. A plan with errors gets no paper. ${BESIDE}`,
    examples: [
      'linerwright traveller parts/OX-098-21.yaml --batch 2631 --quantity 24',
      'linerwright traveller parts/OX-098-21.yaml --batch 2631 --sheet 80,ports',
      'linerwright traveller parts/OX-098-21.yaml --batch 2631 --labels 70x37',
    ],
  },
  subcontract: {
    summary: 'the order and specification for one outside operation',
    says: `Issues the order for one visit to a firm into the folder of its part and batch, as traveller does, and prints the names of the files; operations that follow on at one firm are one order. --operation may be left out where the part goes out once. --json gives the order itself as well; --as prints nothing but the order, in plain text for an e-mail or as YAML, and writes no file. A plan with errors gets no order. ${BESIDE}`,
    examples: ['linerwright subcontract parts/OX-098-21.yaml --operation 90 --batch 2631'],
  },
  quote: {
    summary: 'what a batch costs and when it is done, for one or several quantities',
    says: `Prints what a batch costs by the rates, prices and price lists of the shop file: least, usual, most, what drives it and what goes into lost pieces; with a day to begin on, the days of every operation by the works' and the firms' own working days, the day that can be promised, when to send and to ring, and what waits longest. --calendar writes the days of the first quantity as a calendar file. ${BESIDE}`,
    examples: [
      'linerwright quote parts/OX-098-21.yaml --quantity 6,12,24,48 --start 2026-12-07',
      'linerwright quote parts/OX-098-21.yaml --batch 2631 --start 2026-12-07 --calendar out/2631.ics',
    ],
  },
  record: {
    summary: 'judge what was measured by the plan as issued, and learn from it',
    says: `Reads results in YAML or CSV, one or several, and judges every reading by the plan that the paper was issued from: in limits, in doubt with what settles it, or out, by the guard band of the gauge and at 20 °C where temperatures are given. After hardening it prints for every piece the sizes it can be ground to, so that it cleans up and keeps its case, in the order to grind them, and the length that puts its timing edge right; what the batch stands at and how sure the number wanted still is; and what hardening did, from the same pieces before and after. What is read is added to the book of the batch, book.yaml beside the plan, in which no line is ever changed; without results it prints where the batch stands. What hardening did is shown as a row for the shop file, with what it would save; --keep adds it there and touches nothing else. --pair pairs the pistons of a tray with the bores as they were measured last: most pairs inside the clearance, then the least worst, then the least in all. --for prints what there is into the folder of the batch: the results against their limits (inspection), the list by which pieces are ground (grinder), pairs and tags for them (fitter), what was measured on the finished pieces (customer), or all of it for a screen (file). ${BESIDE} With an error in a file nothing is added.`,
    examples: [
      'linerwright record parts/OX-098-21.yaml --batch parts/batch-2631.yaml',
      'linerwright record parts/OX-098-21.yaml after-nitriding.yaml --lost 9@80="window cut at the wrong side"',
      'linerwright record parts/OX-098-21.yaml --batch 2631 --pair pistons.csv --clearance 0.057..0.073',
      'linerwright record parts/OX-098-21.yaml after-nitriding.yaml --batch 2631 --for grinder,inspection',
      'linerwright record parts/OX-098-21.yaml list.csv --batch 2631 --columns serial=Nr,seat=D1 --operation 110',
    ],
  },
  compare: {
    summary: 'two revisions of a part side by side, and what is to be set anew',
    says: `Plans both for one works, quantity and date (those of the plan as issued where one is given) and prints what differs: drawing, timing and areas, sizes that operations leave with how much of their tolerance they move by, stock and case, route; what is to be set anew in shop order, window by window; the paper to withdraw by set and sheet; the orders to recall; and after which operation a piece in work can still become the new part, by measuring or by cutting again, or cannot. A change of timing within what milling varies is said to be so. --json has every place at which the plans differ. The shop file is that beside the old part. ${BESIDE} Writes nothing.`,
    examples: [
      'linerwright compare parts/OX-098-21.yaml parts/revision-C/OX-098-21.yaml --batch parts/batch-2631.yaml',
      'linerwright compare out/OX-098-21-B-2631/plan.json parts/revision-C/OX-098-21.yaml',
    ],
  },
  trial: {
    summary: 'liners run against each other in one engine: what the runs show, and how sure it is',
    says: `Reads the runs of a trial of two or three liners in one engine, on a propeller, a pump or a brake arm, and says whether a difference of power is shown, with its interval: drift taken out, the fitting of a liner as what is repeated, exact permutation beside it, and the budget of the doubt. Where nothing is shown it says how many fittings would show it; that liners are equal it never says. Air, steady temperatures and the law of the load are checked, runs that something speaks against are named and kept, and power is corrected for air by the rule the file names, beside the verdict, where the air moved. --plan says how to run it: how often to fit each liner for the difference that would matter, in which order so that a drift of the engine drops out, what to keep the same and to read, with a table to fill in at the engine. ${BESIDE} Writes nothing. An engine on a stand can maim: local rules, the engine maker's book and qualified people come first.`,
    examples: ['linerwright trial parts/trial-2655.yaml --plan', 'linerwright trial parts/trial-2655.yaml'],
  },
}

/** What every command ends with. */
export const EXIT_STATUS = `Exit status:
  0  fine
  1  the part or the plan has errors
  2  the command line cannot be carried out, or a file cannot be read or written
  3  a fault of the program itself`
