import { randomUUID } from "node:crypto";
import { accessTable } from "@evenhand/shared/access";
import { contracts } from "@evenhand/shared/http/contracts";
import { Problem } from "@evenhand/shared/problem";
import * as fc from "fast-check";
import { beforeAll, expect, test } from "vitest";
import { addressOf, type Person } from "../api/setup/person.ts";
import { type Scene, setScene } from "../api/setup/scene.ts";
import { useService } from "../api/setup/service.ts";
import { idsIn, letInAgain, makeSamples, type Sample } from "./setup/samples.ts";
import { type Got, send, type Sent } from "../api/setup/send.ts";
import { badText, spoil, spoiling } from "./setup/spoil.ts";

/** Short in every run; at full length by `npm run hostile`. */
const full = process.env["HOSTILE"] === "full";
const requests = full ? 100_000 : 800;
const seed = Number(process.env["HOSTILE_SEED"] ?? "20261127");
const atOnce = 8;

const service = useService({ emptyBetween: false });
let scene: Scene;
let samples: Sample[];
let people: Person[];
let ids: string[];
beforeAll(async () => {
  scene = await setScene(service());
  samples = await makeSamples(scene);
  people = Object.values(scene.world);
  ids = idsIn(samples);
}, 300_000);

/** Once in so many times; else the sample's own. */
const onceIn = <T>(times: number, value: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  fc.oneof({ weight: times - 1, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: value });

/** How a sample is bent: by whom it is asked, about what, with which body, parameters and headers. */
const recipe = fc.record({
  sample: fc.nat(),
  stranger: onceIn(5, fc.nat()),
  id: onceIn(6, fc.oneof(fc.nat(), badText)),
  spoilings: fc.array(spoiling, { maxLength: 3 }),
  query: fc.dictionary(
    fc.oneof(
      fc.constantFrom(
        "after",
        "limit",
        "vehicle",
        "state",
        "from",
        "until",
        "date",
        "with",
        "skills",
        "currency",
      ),
      badText,
    ),
    badText,
    { maxKeys: 2 },
  ),
  key: onceIn(12, badText),
  ifMatch: onceIn(12, badText),
  cut: onceIn(30, fc.nat({ max: 200 })),
});
type Recipe = typeof recipe extends fc.Arbitrary<infer T> ? T : never;

const printable = (text: string): string => text.replaceAll(/[^\x20-\x7e]/g, "?");
const wellFormed = (text: string): string => encodeURIComponent(text.toWellFormed());
const pick = <T>(all: readonly T[], which: number): T => {
  const found = all[which % all.length];
  if (found === undefined) throw new Error("there is nothing to pick from");
  return found;
};

function pathOf({ route, asked }: Sample, { id, query }: Recipe): string {
  const other = typeof id === "number" ? pick(ids, id) : id;
  const path = Object.fromEntries(
    Object.entries(asked.path ?? {}).map(([name, own]) => [name, wellFormed(other ?? own)]),
  );
  const values = Object.entries({ ...asked.query, ...query });
  const asText = values.map(([name, value]) => `${wellFormed(name)}=${wellFormed(value)}`).join("&");
  return addressOf(route, path) + (asText === "" ? "" : `?${asText}`);
}

function headersOf({ route, asked }: Sample, { key, ifMatch }: Recipe, person: Person): Sent["headers"] {
  const revision = ifMatch === null ? asked.revision : undefined;
  return {
    origin: person.url,
    ...person.credentials,
    ...(accessTable[route].once === "key" ? { "idempotency-key": printable(key ?? randomUUID()) } : {}),
    ...(revision === undefined ? {} : { "if-match": `"${revision}"` }),
    ...(ifMatch === null ? {} : { "if-match": printable(ifMatch) }),
    ...(asked.body === undefined ? {} : { "content-type": "application/json" }),
  };
}

function bend(from: Recipe): { sample: Sample; sent: Sent } {
  const sample = pick(samples, from.sample);
  const person = from.stranger === null ? sample.person : pick(people, from.stranger);
  const text = JSON.stringify(spoil(sample.asked.body, from.spoilings));
  const body = sample.asked.body === undefined || text === undefined ? {} : { body: text };
  const cut = body.body !== undefined && from.cut !== null ? { body: body.body.slice(0, from.cut) } : body;
  return {
    sample,
    sent: {
      method: accessTable[sample.route].method,
      path: pathOf(sample, from),
      headers: headersOf(sample, from, person),
      ...cut,
    },
  };
}

/** What is wrong with an answer: a failure, a stack, a refusal that is no problem document or does not say what it refuses. */
function faultOf({ route }: Sample, { status, type, text, bytes }: Got): string | null {
  if (status >= 500) return "the service failed";
  if (/\bat .*\.(ts|js):\d+/.test(text)) return "a stack";
  if (status >= 400) {
    if (!type.startsWith("application/problem+json")) return `a refusal as ${type}`;
    const problem = Problem.parse(JSON.parse(text));
    const named = status !== 400 && status !== 422 ? true : (problem.problems?.length ?? 0) > 0;
    return named ? null : "a refusal that names nothing";
  }
  const { answer } = contracts[route];
  if (answer === null) return text === "" ? null : "words where nothing was promised";
  const file = /^(application\/pdf|application\/vnd\.|text\/csv|image\/|video\/)/.test(type) ? bytes : text;
  const read = answer.safeParse(type.startsWith("application/json") ? JSON.parse(text) : file);
  return read.success ? null : `an answer off its contract: ${read.error.message.slice(0, 300)}`;
}

test(
  `${requests} generated requests to every route as everybody: nothing fails, no stack, every refusal names what it refuses`,
  async () => {
    const counts = new Map<number, number>();
    const faults = new Map<string, string>();
    for (let done = 0; done < requests; done += 500) {
      await letInAgain(scene);
      const recipes = fc.sample(recipe, { numRuns: Math.min(500, requests - done), seed: seed + done });
      const workers = Array.from({ length: atOnce }, async (_, worker) => {
        for (let index = worker; index < recipes.length; index += atOnce) {
          const bent = bend(pick(recipes, index));
          const got = await send(service().url, bent.sent);
          counts.set(got.status, 1 + (counts.get(got.status) ?? 0));
          const fault = faultOf(bent.sample, got);
          if (fault !== null)
            faults.set(
              `${bent.sample.route}: ${fault}`,
              `${JSON.stringify(bent.sent)}\n${got.text.slice(0, 400)}`,
            );
        }
      });
      await Promise.all(workers);
    }
    const of = (least: number, most: number) =>
      [...counts].filter(([status]) => status >= least && status < most).reduce((sum, [, n]) => sum + n, 0);
    if (full) console.log(Object.fromEntries([...counts].toSorted(([a], [b]) => a - b)));
    expect([...faults].slice(0, 20)).toEqual([]);
    expect(of(500, 600)).toBe(0);
    // They reached what they were meant to reach: some were done, and most were refused for what they said.
    expect(of(200, 300) / requests).toBeGreaterThan(0.02);
    expect(of(422, 423) / requests).toBeGreaterThan(0.1);
  },
  full ? 3_600_000 : 600_000,
);
