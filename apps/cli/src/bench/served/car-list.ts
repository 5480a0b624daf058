import { benchRow, type BenchOptions, type BenchRow } from "../row.ts";
import type { Ground } from "./ground.ts";
import { quantile, type Target, timesOf } from "./load.ts";

const FEW = 10_000;
const MANY = 1_000_000;
const PAGE = 25;
const PAGES = 300;
const ROUNDS = 5;

const SYLLABLES = "{ba,cor,del,fen,gus,hal,jin,kop,lur,mag,nol,pir,quat,rov,sin,tul,vex,wim,yor,zan}";
/** An invented word of three syllables, one for each number under 8,000. */
const wordOf = (number: string) =>
  ["1", "20", "400"].map((step) => `syllables[1 + ${number} / ${step} % 20]`).join(" || ");

/** Invented cars from number `$2` up to `$3`, of one dealer `$1`; two thirds are listed. Ids grow as the service's do. */
const addCars = `INSERT INTO vehicle (id, organization_id, make, model, model_year, identification, document, listed,
    revision, search, created_at, updated_at)
  SELECT format('0190%s-%s-7000-8000-%s', substr(hex, 1, 4), substr(hex, 5, 4), hex)::uuid, $1, make, model, year,
    identification, '{}', n % 3 > 0, 1, lower(concat_ws(' ', make, model, year, identification)), now(), now()
  FROM (SELECT n, lpad(to_hex(n), 12, '0') AS hex, ${wordOf("(n % 199)")} AS make, ${wordOf("(n % 6997)")} AS model,
      1950 + n % 40 AS year, 'BN' || lpad(n::text, 8, '0') AS identification
    FROM generate_series($2::bigint, $3::bigint) n, (SELECT '${SYLLABLES}'::text[] AS syllables) words) car`;

async function addUpTo({ client }: Ground, from: number, to: number): Promise<void> {
  const { rows } = await client.query<{ id: string }>(
    "SELECT organization_id AS id FROM vehicle ORDER BY id LIMIT 1",
  );
  const { rows: indexes } = await client.query<{ indexdef: string }>(
    "SELECT indexdef FROM pg_indexes WHERE indexname = 'vehicle_search'",
  );
  // Making the index anew takes a fraction of what keeping it up would.
  await client.query("DROP INDEX vehicle_search");
  await client.query(addCars, [rows[0]?.id, from, to]);
  for (const { indexdef } of indexes) await client.query(indexdef);
  await client.query("VACUUM ANALYZE vehicle");
  // What was filled in is written out now, and not while pages are asked for.
  await client.query("CHECKPOINT");
}

/** Addresses of pages spread evenly from the first to the last. */
async function pagesOf({ client }: Ground): Promise<string[]> {
  const { rows } = await client.query<{ id: string }>(
    `SELECT id FROM (SELECT id, row_number() OVER (ORDER BY id DESC) AS place, count(*) OVER () AS total FROM vehicle) v
     WHERE place % greatest(1, (total - ${PAGE}) / $1) = 0 AND place <= total - ${PAGE} ORDER BY id DESC`,
    [PAGES],
  );
  return rows.map(({ id }) => `/api/v1/vehicles?limit=${PAGE}&after=${id}`);
}

/**
 * Milliseconds each path takes of each target, the middle one of several askings: a moment the machine was busy is no page that is
 * slow. Targets and paths take turns; the first round warms all up.
 */
async function middleTimes(targets: readonly Target[], paths: readonly string[]): Promise<number[][]> {
  const times = targets.map(() => paths.map((): number[] => []));
  for (let round = 0; round <= ROUNDS; round += 1)
    for (const [at, path] of paths.entries())
      for (const [which, target] of targets.entries()) {
        const asked = await timesOf(target, [path]);
        if (round > 0) times[which]?.[at]?.push(...asked);
      }
  return times.map((each) => each.map((of) => quantile(of, 0.5)));
}

const first = `/api/v1/vehicles?limit=${PAGE}`;

/** Medians of the first page and the last, which take turns. */
async function endsOf(target: Target, last: string): Promise<{ firstPage: number; deepest: number }> {
  const both = Array.from({ length: 100 }, () => [first, last]).flat();
  const [times = []] = await middleTimes([target], both);
  const middleOf = (place: number) =>
    quantile(
      times.filter((_, at) => at % 2 === place),
      0.5,
    );
  return { firstPage: middleOf(0), deepest: middleOf(1) };
}

/** The 95th percentile of the pages there are. */
async function slowPage(ground: Ground): Promise<{ slow: number; pages: string[] }> {
  const pages = await pagesOf(ground);
  const [times = []] = await middleTimes([ground.service], pages);
  return { slow: quantile(times, 0.95), pages };
}

/** 95th percentiles of the searches, bare and through the service. */
async function slowSearches(ground: Ground): Promise<{ bare: number; whole: number }> {
  const searches = await searchesOf(ground);
  await ground.floor.served.ask(searches);
  const paths = searches.map(({ path }) => path);
  const [bare = [], whole = []] = await middleTimes([ground.floor, ground.service], paths);
  return { bare: quantile(bare, 0.95), whole: quantile(whole, 0.95) };
}

type Search = { words: string; path: string; statement: string; values: unknown[] };

/** One word that many cars have, two that few have, and one that a single car has. */
async function searchesOf({ client }: Ground): Promise<Search[]> {
  const { rows } = await client.query<{ make: string; model: string; identification: string }>(
    "SELECT lower(make) AS make, lower(model) AS model, lower(identification) AS identification FROM vehicle ORDER BY id OFFSET 500000 LIMIT 40",
  );
  return rows
    .flatMap(({ make, model, identification }) => [[make], [make, model], [identification]])
    .map((words) => ({
      words: words.join(" "),
      path: `/api/v1/vehicles?limit=${PAGE}&q=${words.join("+")}`,
      statement: words.length === 1 ? "one word alone" : "two words alone",
      values: [PAGE + 1, ...words.map((word) => `%${word}%`)],
    }));
}

export async function measureCarList(ground: Ground, { print }: BenchOptions): Promise<BenchRow[]> {
  await addUpTo(ground, 1, FEW);
  const { slow: few } = await slowPage(ground);
  await addUpTo(ground, FEW + 1, MANY);
  const { slow: many, pages } = await slowPage(ground);
  const { firstPage, deepest } = await endsOf(ground.service, pages.at(-1) ?? first);
  const { bare, whole } = await slowSearches(ground);
  print(
    `a page of ${PAGE} cars, 95th percentile: ${few.toFixed(2)} ms of ${FEW} cars, ${many.toFixed(2)} ms of ${MANY}; ` +
      `first ${firstPage.toFixed(2)} ms, deepest ${deepest.toFixed(2)} ms (medians); ` +
      `words searched for: bare ${bare.toFixed(2)} ms, whole ${whole.toFixed(2)} ms (95th percentile)`,
  );
  return [
    benchRow({
      work: "list of cars, 1,000,000, what is listed, any page, 95th percentile",
      against: "the same of 10,000",
      value: many / few,
      goal: 1.25,
      better: "lower",
    }),
    benchRow({
      work: "the deepest page of 1,000,000 cars, median",
      against: "the first page",
      value: deepest / firstPage,
      goal: 1.2,
      better: "lower",
    }),
    benchRow({
      work: "words in the search box, 1,000,000 cars, 95th percentile",
      against: "a bare trigram query over http + pg",
      value: whole / bare,
      goal: 1.2,
      better: "lower",
    }),
  ];
}
