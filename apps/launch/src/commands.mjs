/** A command of this folder, run by `command.mjs`; it may start other processes, so it is told when this one is gone. */
const own = (name, words) => ({ script: ["command.mjs", name], supervised: true, words });
/** A command of the command-line application. */
const cli = (name, words) => ({ script: ["../../cli/src/main.ts", name], supervised: false, words });

/** What can be run: the script with its first words, and the line of help. */
export const commands = {
  demo: own("demo", "start the demo; --once stops after printing the report"),
  test: own("test", "every check and test; with arguments, only the test runner with these"),
  browser: own("browser", "the tests in a browser at full length"),
  faults: own("faults", "the tests of faults at full length"),
  hostile: own("hostile", "generated requests and large files at full length"),
  compare: cli("compare", "compare two report files: A.json B.json [--all | --json | --html FILE]"),
  read: cli("read", "read a sheet or captions as a draft: FILE [--table] [--beside REPORT.json]"),
  export: cli("export", "write a report as a table: REPORT.json FILE.csv|FILE.xlsx"),
  judged: cli("judged", "cases judged beforehand: [DIR] [--json]"),
  visit: cli("visit", "the plan of a first look, half a day and a day"),
  bench: own("bench", "measured goals: [--json FILE] [NAME …]"),
  mutation: own("mutation", "mutation score of the libraries: [LIBRARY …]"),
  record: own(
    "record",
    "the record: verify [--receipt FILE] [--organization ID], or check FILE [--keys FILE]",
  ),
  migration: own("migration", "draft a migration of the database: NAME"),
  dev: own("dev", "service and web application, built again on changes"),
  sbom: own("sbom", "print what site and service are built from, as CycloneDX"),
  lint: own("lint", "lint, what nothing uses, and format check"),
  typecheck: own("typecheck", "check the types, the database client made first"),
  generate: own("generate", "make again everything that is generated"),
};

/** The list of commands, with what was wrong with the one asked for. */
export function describeCommands(name) {
  const width = Math.max(...Object.keys(commands).map((key) => key.length));
  const lines = Object.entries(commands).map(
    ([key, { words }]) => `  npm run ${key.padEnd(width)}  ${words}`,
  );
  const wrong = name === undefined ? "Name a command." : `There is no command "${name}".`;
  return [wrong, "", ...lines].join("\n");
}
