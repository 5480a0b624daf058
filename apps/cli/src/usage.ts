const compare = `compare A.json B.json [--all | --json | --html FILE | --worklist] [--costs FILE [--asking AMOUNT]]
compare A.json B.json C.json … [--json]
  Sets two reports on one car against each other: A is what was stated, B what was found.
  Three or more become a table of who says what, in which nobody is outvoted.
  Two are answered on one screen: what stops the money, the matters worst first, what nobody knows, what to ask.
  --all        print every line behind it
  --json       print the result by its contract
  --html FILE  write one self-contained page
  --costs FILE price what is to be put right by this table of costs, beside what is asked with --asking AMOUNT;
               an invented table to try it with: fixtures/demo/cost-table.json
  --worklist   print what to read or look at again to settle what is open`;

const read = `read FILE [--table] [--beside REPORT.json]
  Reads an inspector's own sheet (CSV, XLSX) as the draft of a report, and prints its JSON; a report that was exported as a
  table comes back whole. Captions of a spoken walkaround (WebVTT, SubRip, text with times) become the draft of a statement.
  --table      print every row or claim, what it becomes, how sure or firm that is, and what was never mentioned
  --beside FILE a report on the same car: its car and day stand for what a sheet does not say`;

const exported = `export REPORT.json FILE.csv|FILE.xlsx
  Writes a report as a table, a row a finding; read brings it back as the same report. No cell of it can be a formula.`;

const show = `show COMPARISON.json A.json B.json [--all | --html FILE] [--costs FILE [--asking AMOUNT]]
  Shows a comparison that was made before, with the two reports it was made from.`;

const bench = `bench [--json FILE] [NAME …]
  Measures the goals and prints them beside what they are measured against.`;

const judged = `judged [DIR] [--json]
  Runs cases that were judged beforehand (fixtures/judged, or a folder of the same form) and counts where the
  comparison says what a judge wants.`;

const check = `record check FILE [--keys FILE]
  Checks a sealed report or summary that was downloaded: that not a byte of it was changed since it was sealed, and that the
  service signed that. Get the service's keys from the service itself, at /api/v1/record/keys.`;

/** What each command takes. */
export const usage = {
  compare,
  read,
  export: exported,
  show,
  bench,
  judged,
  check,
  all: [compare, read, exported, show, bench, judged, check].join("\n\n"),
};
