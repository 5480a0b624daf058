import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import { quantile, requestsPerProcessorSecond, type Target } from "./load.ts";
import type { BenchPerson, Ground } from "./ground.ts";

/** Short ones that take turns: what a slow second of the machine costs, it costs both. */
const ROUNDS = 24;
const REQUESTS = 250;
/** Until neither grows faster. */
const WARMING = 1_000;
const STORED = "comparison document";

/** `by`: whoever reads it, where it is not the buyer of the main case. */
type Read = { statement: string; path: string; values: unknown[]; by?: BenchPerson };

const beyondAll = "ffffffff-ffff-ffff-ffff-ffffffffffff";

const caseHome = (of: string, by: BenchPerson): Read => ({
  statement: `home of ${of}`,
  path: "/api/v1/cases?limit=25",
  values: [by.organizations, by.organizations, beyondAll, 25, true],
  by,
});

/** The first screen of each of the four, and the case of the main comparison. */
const homesOf = ({ people, organizations: who, case: id }: Ground): Read[] => [
  caseHome("a buyer", people.buyer),
  caseHome("a dealer", people.dealer),
  caseHome("an inspector", people.inspector),
  {
    statement: "home of an operator",
    path: "/api/v1/cases?limit=25",
    values: [new Date().toISOString()],
    by: people.operator,
  },
  { statement: "case", path: `/api/v1/cases/${id}`, values: [who, who, id] },
];

/** What the buyer of the main case reads: the stored comparison, and one of every kind of other read. */
const readsOf = (ground: Ground): Read[] => {
  const { organizations: who, account, comparison, vehicle, report } = ground;
  /** Whoever reads what is stated is noted, once. */
  const noted = [account];
  const page = (statement: string, path: string, nulls: number, more: string[] = []): Read => ({
    statement,
    path: `/api/v1/${path}?limit=25`,
    values: [who, beyondAll, 25, ...Array.from({ length: nulls }, () => null), ...more],
  });
  return [
    {
      statement: STORED,
      path: `/api/v1/comparisons/${comparison}/document`,
      values: [who, comparison],
    },
    { statement: "comparison", path: `/api/v1/comparisons/${comparison}`, values: [who, comparison] },
    { statement: "car", path: `/api/v1/vehicles/${vehicle}`, values: [who, vehicle, ...noted] },
    { statement: "report", path: `/api/v1/report-versions/${report}`, values: [who, report] },
    page("comparisons", "comparisons", 1),
    page("cars", "vehicles", 0),
    page("orders", "orders", 2),
    page("questions", "questions", 2, noted),
    page("releases", "releases", 3, noted),
    page("summaries", "summaries", 2),
    page("decisions", "decisions", 1),
    ...homesOf(ground),
  ];
};

async function shareOfFloor(service: Target, floor: Target, path: string): Promise<number> {
  const shares: number[] = [];
  for (const each of [floor, service]) await requestsPerProcessorSecond(each, path, WARMING);
  for (let round = 0; round < ROUNDS; round += 1) {
    const bare = await requestsPerProcessorSecond(floor, path, REQUESTS);
    const whole = await requestsPerProcessorSecond(service, path, REQUESTS);
    shares.push(whole / bare);
  }
  return quantile(shares, 0.5);
}

export async function measureReads(ground: Ground, { print }: BenchOptions): Promise<BenchRow[]> {
  const { service, floor } = ground;
  const reads = readsOf(ground);
  const shares: [statement: string, share: number][] = [];
  for (const { by, ...read } of reads) {
    const { statement, path } = read;
    await floor.served.ask([read]);
    const share = await shareOfFloor({ ...service, ...(by && { cookie: by.cookie }) }, floor, path);
    print(`${statement}: ${(100 * share).toFixed(0)} % of the floor's requests per processor-second`);
    shares.push([statement, share]);
  }
  const against = "bare http + pg running the same one statement, per processor-second";
  const others = shares.filter(([statement]) => statement !== STORED);
  const [worst, share] = others.toSorted(([, a], [, b]) => a - b)[0] ?? ["none", Number.NaN];
  const stored = shares.find(([statement]) => statement === STORED)?.[1] ?? Number.NaN;
  return [
    benchRow({
      work: "GET a stored comparison, signed in",
      against,
      value: stored,
      goal: 0.8,
      better: "higher",
    }),
    benchRow({
      work: `any other read, the worst of ${others.length} (${worst})`,
      against,
      value: share,
      goal: 0.5,
      better: "higher",
    }),
  ];
}
