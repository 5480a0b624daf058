/**
 * What is mutated and by which tests a change must be noticed, a library or a part of one each, and the queue of
 * changes on a device (its hook aside, which takes a page).
 * Left out of the tests is what would take minutes for every mutant: thousands of generated reports, whole reports of
 * the demo, tens of thousands of readings. The score is won without them.
 */
const library = (name, { mutate = [], leftOut = [] } = {}) => ({
  name,
  mutate: [`libs/${name}/src/**/*.ts`, `!libs/${name}/src/**/*.test.ts`, ...mutate],
  include: [`libs/${name}/src/**/*.test.ts`],
  exclude: [`libs/${name}/src/**/*.property.test.ts`, ...leftOut],
});

/** How a rule of the handbook finds what it reads: against the stories, not against the tests beside each rule. */
const finding = [
  "libs/handbook/src/cross-checks/*.ts",
  "libs/handbook/src/*/rule.ts",
  "libs/handbook/src/readers/*.ts",
  "libs/handbook/src/view/*.ts",
];

export const mutated = [
  library("measurement"),
  library("sheet", { mutate: ["!libs/sheet/src/version-1/**"] }),
  library("handbook", {
    mutate: [...finding.map((path) => `!${path}`), "!libs/handbook/src/*/examples.ts"],
    leftOut: [
      "libs/handbook/src/rules/growth.test.ts",
      "libs/handbook/src/rules/exact-claims.test.ts",
      "libs/handbook/src/cross-checks/**",
    ],
  }),
  {
    name: "cross-checks",
    mutate: [...finding, "!libs/handbook/src/**/*.test.ts"],
    include: ["libs/handbook/src/cross-checks/*.test.ts"],
    exclude: ["libs/handbook/src/cross-checks/units.test.ts"],
  },
  library("comparison", { leftOut: ["libs/comparison/src/**/demo-pairs.test.ts"] }),
  library("decision"),
  library("booking", { leftOut: ["libs/booking/src/**/*.properties.test.ts"] }),
  library("record"),
  library("matters"),
  library("case"),
  library("wording"),
  {
    name: "offline",
    mutate: [
      "apps/web/src/offline/*.ts",
      "!apps/web/src/offline/*.test.ts",
      "!apps/web/src/offline/use-*.ts",
    ],
    include: ["apps/web/src/offline/*.test.ts"],
    exclude: ["apps/web/src/offline/*.property.test.ts"],
  },
];
