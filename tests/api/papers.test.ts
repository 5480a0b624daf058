import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import { analyze } from "@evenhand/comparison/analyze";
import { answer } from "@evenhand/matters/answer";
import { matters } from "@evenhand/matters/matters";
import { answerPaper } from "@evenhand/paper/answer-paper";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import { summaryPaper } from "@evenhand/paper/summary-paper";
import type { Answer, AnsweredMatter } from "@evenhand/shared/page-one";
import { Report } from "@evenhand/shared/report";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { makeSummary } from "../../apps/api/src/capabilities/summaries/make-summary.ts";
import { drawOnePage, drawPages } from "../../apps/api/src/platform/pdf/draw.ts";
import { filesOf, pairs } from "../../fixtures/golden/pairs.ts";
import { useService } from "./setup/service.ts";
import { acknowledgeAll, horn, inspect, reseal, summarize } from "./setup/story.ts";
import { makeWorld } from "./setup/world.ts";

type Box = { text: string; left: number; right: number; bottom: number; top: number };
type Read = { words: string; pages: Box[][]; width: number; height: number };

/** The letters of a line reach so far under and over its feet, in sizes; a hair less, since lines may touch. */
const [under, over] = [0.2, 0.72];

async function read(pdf: Uint8Array): Promise<Read> {
  const task = getDocument({ data: new Uint8Array(pdf), verbosity: 0 });
  const document = await task.promise;
  const pages: Box[][] = [];
  let [width, height] = [0, 0];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    ({ width, height } = page.getViewport({ scale: 1 }));
    const { items } = await page.getTextContent();
    pages.push(
      items.flatMap((item) => {
        if (!("str" in item) || item.str.trim() === "") return [];
        const [, , , size, left, foot] = item.transform.map(Number);
        if (size === undefined || left === undefined || foot === undefined) return [];
        const [bottom, top] = [foot - under * size, foot + over * size];
        return [{ text: item.str, left, right: left + item.width, bottom, top }];
      }),
    );
  }
  await task.destroy();
  const words = pages.map((boxes) => boxes.map(({ text }) => text).join(" ")).join(" ");
  return { words, pages, width, height };
}

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.2 && b.left < a.right - 0.2 && a.bottom < b.top && b.bottom < a.top;

/** Texts that lie on another, or come nearer to the edge than a printer reaches. */
const misplaced = ({ pages, width, height }: Read): string[] =>
  pages.flatMap((boxes) =>
    boxes.flatMap((box, at) => [
      ...(box.left < 18 || box.right > width - 18 || box.bottom < 18 || box.top > height - 18
        ? [`off the page: ${box.text}`]
        : []),
      ...boxes
        .slice(at + 1)
        .filter((other) => overlap(box, other))
        .map((other) => `${box.text} lies on ${other.text}`),
    ]),
  );

const reportOf = (file: URL): Report => Report.parse(JSON.parse(readFileSync(file, "utf8")));
const madeOf = (pair: (typeof pairs)[number]) => {
  const files = filesOf(pair);
  const [a, b] = [reportOf(files.a), reportOf(files.b)];
  const comparison = analyze(a, b, sheet);
  const reports = { a, b, sheet };
  return { a, b, comparison, answer: answer({ comparison, matters: matters(comparison, reports), reports }) };
};
const pageOf = (pair: (typeof pairs)[number]): Answer => madeOf(pair).answer;

const uuid = "01990000-0000-7000-8000-000000000001";
const version = { id: uuid, report: uuid, version: 1, seal: "5e".repeat(32) };
/** With every third of its lines laid before the dealer. */
const summaryOf = (pair: (typeof pairs)[number]) => {
  const made = madeOf(pair);
  const firms = { vehicleId: uuid, dealerId: uuid, inspectorId: uuid, buyerId: uuid };
  const stood = { id: uuid, engine: made.comparison.engine, hash, statement: version, inspection: version };
  const laid = made.comparison.order.filter((_, at) => at % 3 === 0);
  return makeSummary({
    id: uuid,
    createdAt: new Date("2027-05-03T14:00:00Z"),
    ordered: { ...made, ...firms, ...stood },
    releases: laid.map((entry) => ({
      id: uuid,
      entry,
      state: "contested",
      reason: `Ours reads otherwise ${entry % 2}.`,
    })),
    costTable: null,
    sources: [],
  });
};

const hash = "3f".repeat(32);
const address = "https://evenhand.example/api/v1/comparisons/01990000-0000-7000-8000-000000000001/answer";
const paperOf = (page: Answer) => drawOnePage(answerPaper({ answer: page, cost: null, hash, address }));

const script = "<script>alert(1)</script> {count} \\(stream";
const long = "x".repeat(4_000);
const sides = "\u202Eevil\u202C \u05D0\u05D1\u05D2 \u0627\u0644 😀👩‍👩‍👧 \u0000end";

/** Everything a person may have written is as long and as strange as it may be. */
const hostile = (page: Answer): Answer => {
  const strange = (one: AnsweredMatter, at: number): AnsweredMatter => ({
    ...one,
    matter: {
      ...one.matter,
      headline: [script, sides, long][at % 3] ?? "",
      found: `${long} ${sides}`,
      question: long,
    },
    notes: [{ place: long, words: `${script} ${long}` }],
  });
  const many = Array.from({ length: 40 }, () => page.matters)
    .flat()
    .slice(0, 60);
  return {
    ...page,
    vehicle: { ...page.vehicle, make: long, model: sides, identification: "W".repeat(40) },
    a: { ...page.a, organization: script },
    looked: { ...page.looked, by: long },
    matters: many.map(strange),
    unknown: page.unknown.map(strange),
    stops: Array.from({ length: 90 }, (_, at) => ({ words: `${at} ${long}`, known: at % 2 === 0 })),
    questions: Array.from({ length: 5 }, () => long),
    claims: {
      ...page.claims,
      line: Array.from({ length: 30 }, () => ({ words: long, became: "fell" as const })),
    },
    soft: Array.from({ length: 9 }, () => ({ of: "x", side: "a" as const, words: long })),
    cautions: Array.from({ length: 40 }, () => ({ id: "x", text: long })),
    engine: long,
  };
};

describe("the answer on paper", () => {
  test.each(pairs)(
    "of %s is one page as wide as A4 and as high as Letter, nothing cut, nothing on another",
    async (pair) => {
      const page = pageOf(pair);
      const pdf = await read(await paperOf(page));
      expect([pdf.pages.length, pdf.width, pdf.height]).toEqual([1, 595.28, 792]);
      expect(misplaced(pdf)).toEqual([]);
      const { words } = pdf;
      for (const { matter } of page.matters) expect(words).toContain(matter.headline);
      expect(words).toContain(page.vehicle.identification);
      expect(words).toContain("not a roadworthiness certificate, valuation or contract");
      expect(words).toContain(hash);
      expect(words.replaceAll(" ", "")).toContain(address);
    },
  );

  test("the same answer is the same bytes, whenever it is drawn", async () => {
    const page = pageOf("larksong");
    expect((await paperOf(page)).equals(await paperOf(page))).toBe(true);
  });

  test("of the strangest fields is one page still, with the fields as text", async () => {
    const pdf = await read(await paperOf(hostile(pageOf("sovrano"))));
    expect(pdf.pages.length).toBe(1);
    expect(misplaced(pdf)).toEqual([]);
    expect(pdf.words).toContain("<script>alert(1)</script> {count} \\(stream");
    expect(pdf.words).toContain("evil □□□ □□ □□ end");
    expect(pdf.words).toMatch(/and \d+ more/);
    expect(pdf.words).toContain("stands for a letter this print has no sign for");
  });
});

const wordsOf = (text: string): string[] =>
  text
    .normalize("NFKC")
    .toLowerCase()
    .match(/[\p{L}\p{N}]+/gu) ?? [];

describe("the summary on paper", () => {
  test.each(pairs)(
    "of %s is at most six pages with every line on it, nothing cut, nothing on another",
    async (pair) => {
      const summary = summaryOf(pair);
      const words = sheetWords(sheet.sheet);
      const firms = { stated: "the dealer", found: "the inspector" };
      const paper = summaryPaper({ summary, decision: null, words, ...firms, hash, address });
      const pdf = await read(await drawPages(paper));
      expect(pdf.pages.length).toBeLessThanOrEqual(6);
      expect(misplaced(pdf)).toEqual([]);
      // Columns stand beside each other, so that a line's words are looked for one by one.
      const printed = new Set(wordsOf(pdf.words));
      const missing = [...summary.inDoubt, ...summary.unseen, ...summary.bothBad]
        .flatMap(({ item, position, said }) => [
          words.place(item, position),
          said?.stated ?? "",
          said?.found ?? "",
        ])
        .flatMap(wordsOf)
        .filter((word) => !printed.has(word));
      expect(missing).toEqual([]);
      for (const { headline } of summary.matters) expect(pdf.words).toContain(headline.split(" ")[0]);
      for (const seal of [hash, version.seal]) expect(pdf.words).toContain(seal);
    },
  );
});

describe("from the service", () => {
  const service = useService();

  test("an approved summary is printed with its decision, and the same after the reports have moved on", async () => {
    const world = await makeWorld(service());
    const way = await inspect(world);
    const { id, hash: sealed, summary } = await summarize(world.buyer, way.comparison);
    const paper = async () => Buffer.from((await world.buyer.ask("summaries.paper", { path: { id } })).body);
    expect((await read(await paper())).words).toContain("Not decided");
    await world.buyer.does("summaries.decide", {
      path: { id },
      body: { decision: "approve", hash: sealed, acknowledgements: acknowledgeAll(summary) },
    });
    const approved = await paper();
    const pdf = await read(approved);
    const [first = []] = pdf.pages;
    const pageOne = first.map(({ text }) => text).join(" ");
    expect(pageOne).toMatch(/Approved on \w+ \d/);
    expect(pageOne).toContain(sealed);
    expect(pageOne).toContain("Not a valuation");
    for (const { headline } of summary.openMatters) expect(pageOne).toContain(headline);
    expect(misplaced(pdf)).toEqual([]);
    for (const sign of ["≠", "○"]) expect(pdf.words).toContain(sign);
    await reseal(world.inspector, way.inspectionReport, horn("intermittent"));
    expect((await paper()).equals(approved)).toBe(true);
  });

  test("the answer carries the hash of the stored answer, and costs for the buyer alone", async () => {
    const world = await makeWorld(service());
    const way = await inspect(world);
    const asked = { path: { id: way.comparison } };
    const stored = await world.buyer.ask("comparisons.answer", {
      ...asked,
      headers: { "accept-encoding": "identity" },
    });
    const { body, headers } = await world.buyer.ask("comparisons.paper", asked);
    expect(headers["content-type"]).toBe("application/pdf");
    expect(headers["content-disposition"]).toBe('inline; filename="answer.pdf"');
    const { words } = await read(body);
    expect(words).toContain(createHash("sha256").update(stored.text).digest("hex"));
    expect(words).toContain("No table of costs is kept");
    const inspectors = await read((await world.inspector.ask("comparisons.paper", asked)).body);
    expect(inspectors.words).not.toContain("Cost to put right");
  });
});
