import type { IForbiddenRuleType } from "dependency-cruiser";

const notTests = String.raw`\.test\.tsx?$|/(testing|fixtures)/`;

/** Which libraries each may use: lower ones, never one beside it. All may use `shared`. */
export const libraryOrder: Readonly<Record<string, readonly string[]>> = {
  measurement: [],
  message: [],
  sheet: ["measurement", "message"],
  wording: ["measurement", "message", "sheet"],
  lexicon: ["measurement", "sheet"],
  captions: ["measurement", "sheet", "lexicon"],
  record: ["measurement", "sheet"],
  case: ["record"],
  evidence: ["measurement", "message"],
  handbook: ["measurement", "message", "sheet", "wording"],
  comparison: ["measurement", "message", "sheet", "wording", "handbook"],
  tables: ["measurement", "message", "sheet", "lexicon", "wording", "comparison"],
  matters: ["measurement", "message", "sheet", "wording", "handbook", "comparison"],
  booking: ["measurement", "message", "sheet", "case"],
  decision: ["measurement", "sheet"],
  paper: ["measurement", "message", "sheet", "wording", "handbook", "comparison", "matters", "decision"],
};

/** Packages that compute and do nothing else: no files, no network, no clock, no chance of their own. */
const purePackages = [
  "zod",
  "canonicalize",
  "culori",
  "d3-dsv",
  "double-metaphone",
  "fastest-levenshtein",
  "fflate",
  "intl-messageformat",
  "pure-rand",
  "rrule-temporal",
  "saxes",
  "temporal-polyfill",
  String.raw`@stdlib/[a-z-]+`,
];

const inPackage = (names: readonly string[]): string => `node_modules/(${names.join("|")})(/|$)`;

const libraryRule = ([library, below]: [string, readonly string[]]): IForbiddenRuleType => ({
  name: `library-${library}`,
  comment: `${library} uses shared and ${below.length === 0 ? "nothing else" : below.join(", ")}`,
  severity: "error",
  from: { path: `^libs/${library}/src`, pathNot: notTests },
  to: { path: "^(libs|apps|tests|fixtures)/", pathNot: `^libs/(${[library, ...below].join("|")})/src` },
});

/** The web application's floors from the top; each may use those under it. Two that stand beside each other share a line. */
const webFloors = [
  ["shell"],
  ["pages"],
  ["features"],
  ["entities"],
  ["ui", "offline"],
  ["service", "strings"],
];

const webFloor = (floor: readonly string[], at: number): IForbiddenRuleType => ({
  name: `web-floor-${floor.join("-")}`,
  comment: `${floor.join(", ")} uses what is below it, never what is above or beside it`,
  severity: "error",
  from: { path: `^apps/web/src/(${floor.join("|")})/`, pathNot: notTests },
  to: {
    path: "^apps/web/src/",
    pathNot: [
      "^apps/web/src/$1/",
      ...webFloors.slice(at + 1).map((below) => `^apps/web/src/(${below.join("|")})/`),
    ],
  },
});

/** Who may import whom, as rules that forbid the rest. */
export const importRules: readonly IForbiddenRuleType[] = [
  {
    name: "shared-uses-zod-only",
    severity: "error",
    from: { path: "^shared/src", pathNot: notTests },
    to: { pathNot: `^shared/src|${inPackage(["zod"])}` },
  },
  ...Object.entries(libraryOrder).map(libraryRule),
  {
    name: "libraries-are-pure",
    comment: "no built-in of Node, which all reach outside, and no package that does",
    severity: "error",
    from: { path: "^libs/[^/]+/src", pathNot: notTests },
    to: { pathNot: `^(libs|shared|apps)/|${inPackage(purePackages)}` },
  },
  {
    name: "applications-stand-alone",
    severity: "error",
    from: { path: "^apps/([^/]+)/src", pathNot: notTests },
    to: { path: "^apps/", pathNot: "^apps/$1/" },
  },
  {
    name: "web-knows-no-database",
    severity: "error",
    from: { path: "^apps/web/src" },
    to: { path: String.raw`node_modules/(@prisma|prisma|pg|pg-boss)(/|$)|/database/` },
  },
  ...webFloors.map(webFloor),
  {
    name: "web-stands-on-floors",
    comment: "every folder of the web application is a floor",
    severity: "error",
    from: {
      path: "^apps/web/src/[^/]+/",
      pathNot: `^apps/web/src/(${webFloors.flat().join("|")})/`,
    },
    to: {},
  },
  {
    name: "web-subjects-apart",
    comment:
      "a page or feature never reaches inside another: what two need is an entity, what joins two is a page",
    severity: "error",
    from: { path: "^apps/web/src/(pages|features)/([^/]+)/", pathNot: notTests },
    to: {
      path: "^apps/web/src/$1/[^/]+/",
      pathNot: ["^apps/web/src/$1/$2/", String.raw`^apps/web/src/features/[^/]+/index\.ts$`],
    },
  },
  {
    name: "platform-knows-no-capability",
    severity: "error",
    from: { path: "^apps/api/src/platform" },
    to: { path: "^apps/api/src/(capabilities|commands|demo)" },
  },
  {
    name: "capabilities-meet-at-the-front",
    comment: "one capability uses another only through what that one's index offers",
    severity: "error",
    from: { path: "^apps/api/src/capabilities/([^/]+)/" },
    to: {
      path: "^apps/api/src/capabilities/[^/]+/",
      pathNot: ["^apps/api/src/capabilities/$1/", String.raw`^apps/api/src/capabilities/[^/]+/index\.ts$`],
    },
  },
  {
    name: "no-cycles",
    comment: "of what runs; types alone are gone by then",
    severity: "error",
    from: { pathNot: "/generated/" },
    to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only"] } },
  },
  {
    name: "nothing-unresolved",
    severity: "error",
    from: { path: "^(shared|libs|apps/(api|cli))/", pathNot: "/generated/" },
    to: { couldNotResolve: true },
  },
];
