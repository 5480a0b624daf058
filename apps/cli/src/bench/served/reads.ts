import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import { quantile, requestsPerProcessorSecond, type Target } from "./load.ts";
import type { Ground } from "./ground.ts";

const ROUNDS = 5;
const REQUESTS = 1_000;
const STORED = "comparison document";

type Read = { statement: string; path: string; values: unknown[] };

const beyondAll = "ffffffff-ffff-ffff-ffff-ffffffffffff";

/** What the buyer of the main case reads: the stored comparison, and one of every kind of other read. */
const readsOf = ({ organizations: who, comparison, vehicle, report }: Ground): Read[] => {
  const page = (statement: string, path: string, nulls: number): Read => ({
    statement,
    path: `/api/v1/${path}?limit=25`,
    values: [who, beyondAll, 25, ...Array.from({ length: nulls }, () => null)],
  });
  return [
    {
      statement: STORED,
      path: `/api/v1/comparisons/${comparison}/document`,
      values: [who, comparison],
    },
    { statement: "comparison", path: `/api/v1/comparisons/${comparison}`, values: [who, comparison] },
    { statement: "car", path: `/api/v1/vehicles/${vehicle}`, values: [who, vehicle] },
    { statement: "report", path: `/api/v1/report-versions/${report}`, values: [who, report] },
    page("comparisons", "comparisons", 1),
    page("cars", "vehicles", 0),
    page("orders", "orders", 2),
    page("questions", "questions", 2),
    page("releases", "releases", 3),
    page("summaries", "summaries", 2),
    page("decisions", "decisions", 1),
  ];
};

async function shareOfFloor(service: Target, floor: Target, path: string): Promise<number> {
  const shares: number[] = [];
  for (let round = 0; round <= ROUNDS; round += 1) {
    const bare = await requestsPerProcessorSecond(floor, path, REQUESTS);
    const whole = await requestsPerProcessorSecond(service, path, REQUESTS);
    // The first round warms both up.
    if (round > 0) shares.push(whole / bare);
  }
  return quantile(shares, 0.5);
}

export async function measureReads(ground: Ground, { print }: BenchOptions): Promise<BenchRow[]> {
  const { service, floor } = ground;
  const reads = readsOf(ground);
  await floor.served.ask(reads);
  const shares: [statement: string, share: number][] = [];
  for (const { statement, path } of reads) {
    const share = await shareOfFloor(service, floor, path);
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
