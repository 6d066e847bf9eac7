// What the manual says that neither help nor schema does.

export const HEAD = `# Manual

<!-- Written by \`npm run manual\` from the help of the commands, the schemas and .build/manual-text.mjs: change those. -->

[Commands](#commands) · [The part file](#the-part-file) · [The shop file](#the-shop-file) · [The batch file](#the-batch-file) ·
[The bench file](#the-bench-file) · [The results file](#the-results-file) ·
[The trial file](#the-trial-file) · [The library](#the-library) · [Codes of findings](#codes-of-findings)

## Commands

A finding prints as \`file:line:column  severity  code  message\`, with a hint on a line of its own. Of several files each is reported
and the work goes on to the next; the status is the worst of all. A file is written whole or not at all. An option that a command
would not obey it does not take.

With \`--units inch\` tables and drawings print inches, one place more than in millimetres. A size as the drawing writes it stays as it
is and says \`mm\`; the bar by which a print is checked stays 50 mm, with its inches beside it; speeds, feeds, roughness and areas stay
metric, their unit with them.

A works that wants other paper copies \`templates/\`, changes it and gives \`--templates DIR\`. A packet that was made from something
else (part, shop, batch, quantity, date or program) is not written over without \`--force\`.

`

/** How a part is written: what a table of keys cannot say. */
export const PART_FILE = `- Lengths are millimetres and angles degrees, unless a unit is written: \`1.890 in\`, \`0.5 deg\`.
- A size is written as on a drawing: \`48 H6\` (ISO 286), \`92 ±0.05\`, \`12 +0.1/-0\`, or bare, when the general tolerance holds.
  A surface is a size, or \`{size: 48 H6, Ra: 0.3, cylindricity: 0.006}\`.
- \`outside\` bands run from the top face down, each to a depth. \`bore\` is one surface, or bands like the outside.
- \`hardening\` is what must be there *after* finishing. The planner works out what to order.
- \`stock: {outside: 0.20, bore: 0.20, hone: 0.03}\` fixes the stock on diameter and has it judged; left out, the planner chooses.
  \`lap: 0.008\` is what a ring lap takes off a pin.
- \`plating\` has the bore built up and honed to its drawn size. \`thickness\` is per side as left after honing: a figure, one with a
  tolerance, or \`min 0.06\`. The planner works out the bore before and as plated, the thickness left at the worst place, chamfers,
  stress relief and bake, and writes the plater's order. \`stock: {hone: 0.05}\` is then what is honed off the layer, \`preplate\` what
  is honed off before it. Baths are for licensed platers: the plan orders, it gives no recipe.
- A port is a window in the *finished* bore. \`at\` is the azimuth of its centre line, counter-clockwise seen from the head. \`opens\` is
  the crank angle after top dead centre, or \`top\` its depth below the top face. \`width\` is the chord from side edge to side edge, or
  \`arc\` its angle; \`corner\` the radius on the unrolled bore, or \`{cut: 1.5}\` in the cutter's plane. \`up\` is how steeply the stream
  rises toward the head; \`back\` turns it away from azimuth 0. \`bridge\` leaves a bar down the middle; \`mirror: true\` makes the second port.
- With \`head-volume\` the compression ratios are reckoned; with \`skirt\` and \`rings\` free port, inlet, ring pegs and corners are checked.
- A pin with one plain diameter goes through the shop's centreless grinder, where a machine is called one and \`tools\` has its
  \`centreless wheel\` and \`regulating wheel\`; else it is ground between centres. It is lapped where grinding does not leave the
  roughness, the roundness or the tolerance.
- A misspelt key, a size that cannot be, a duplicate: each is a finding with line, column and what to write instead.

`

/** What stands before the keys of the shop file. */
export const SHOP_FILE = `It is \`shop.yaml\` beside the part, or what \`--shop FILE\` names. Without one a built-in shop is planned for, and the plan says so.
Figures that are left out are the built-in shop's: common practice, no source, unless a working says otherwise. Measure your own.

`

/** What the package gives to a program. tests/package/library.test.ts holds it against what is exported. */
export const LIBRARY = `## The library

Text in, plain data and bytes out. Nothing reads a file or the clock, so the same input gives the same bytes; \`README.md\` has a
whole program. Findings, sizes and units are as everywhere: millimetres, degrees, minutes.

| from | function | gives |
|---|---|---|
| \`linerwright\` | \`readPart(text, file)\` \`readShop(text, file)\` \`readBatch(text, file)\` | what a file says, typed, or findings with line and column |
| | \`partTemplate(kind, number, schema)\` | a commented part file to start from |
| | \`makePlan({ part, shop, batch, issue })\` | the Plan, plain data, and its findings; \`BUILT_IN_SHOP\` is the shop that is planned for without a file |
| | \`drawPictures(plan, measure, units)\` | every drawing by name, from the Plan alone; \`measureText\` is how wide a text is unless another typeface is meant |
| | \`pictureSvg(picture, options)\` | a drawing as SVG |
| | \`ncPrograms(plan)\` | the programs of the ports |
| | \`packet(plan, options)\` \`subcontract(plan, order, options)\` | a PDF for each reader and HTML of all; an order is one of \`plan.orders\`; the typeface is \`openTypeface(fonts)\` where the package's own is not used, and a slip in a template is a \`TemplateProblem\` |
| | \`jsonText(data)\` | plain data as \`--json\` prints it: twelve digits, the same on every machine |
| | \`hasErrors(findings)\` \`byPlace(findings)\` \`printedFinding(finding)\` | what findings amount to, in order, as a line of text |
| \`linerwright/node\` | \`loadPaper({ templates })\` | the package's own templates and typeface, each template replaced by that of the folder given |
| | \`fingerprintOf({ part, shop, batch, date })\` | the fingerprint that the command would print |

\`linerwright/browser\` is the half of it that plans, draws and writes programs, in one file that needs no Node: a page plans from the
same text as the command, to the same figures. \`linerwright/part.schema.json\`, \`shop\`, \`batch\`, \`bench\` and \`plan\` describe what is read and
what \`--json\` gives.
`
