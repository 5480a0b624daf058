import type { IForbiddenRuleType } from "dependency-cruiser";

const notTests = String.raw`\.test\.tsx?$|/(testing|fixtures)/`;

/** Which libraries each may use: lower ones, never one beside it. All may use `shared`. */
export const libraryOrder: Readonly<Record<string, readonly string[]>> = {
  measurement: [],
  record: [],
  sheet: ["measurement"],
  handbook: ["measurement", "sheet"],
  comparison: ["measurement", "sheet", "handbook"],
  lexicon: ["measurement", "sheet"],
  booking: ["measurement", "sheet"],
  decision: ["measurement", "sheet"],
};

/** Packages that compute and do nothing else: no files, no network, no clock, no chance of their own. */
const purePackages = [
  "zod",
  "canonicalize",
  "culori",
  "pure-rand",
  "rrule-temporal",
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
