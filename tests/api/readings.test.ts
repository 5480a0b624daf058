import { readFileSync } from "node:fs";
import type { SheetReading } from "@evenhand/shared/http/readings";
import { readFile } from "@evenhand/tables/read-file";
import { reportFromTable } from "@evenhand/tables/report-table";
import { beforeAll, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { type Scene, setScene } from "./setup/scene.ts";
import { useService } from "./setup/service.ts";
import { setOperation } from "./setup/story.ts";
import { joinPerson } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
let scene: Scene;
beforeAll(async () => {
  scene = await setScene(service());
});

const fixture = (path: string): Buffer => readFileSync(new URL(`../../fixtures/${path}`, import.meta.url));
const asBody = (file: string | Uint8Array) => ({ file: Buffer.from(file).toString("base64") });
const path = () => ({ id: scene.draft.id });
const readSheet = (file: string | Uint8Array, who: Person = scene.world.dealer): Promise<SheetReading> =>
  who.does("reports.readSheet", { path: path(), body: asBody(file) });
const findingsIn = ({ rows }: SheetReading) => rows.flatMap(({ findings }) => findings);

test("captions are read for one's draft, each remark with its words and second, and nothing is written", async () => {
  const { dealer } = scene.world;
  const before = await dealer.does("reports.get", { path: path() });
  const text = fixture("spoken/tuned/01-coupe-engineer/captions.vtt").toString("utf8");
  const read = await dealer.does("reports.readSpoken", { path: path(), body: { text } });
  expect(read.form).toBe("webvtt");
  expect(read.remarks.length).toBeGreaterThan(40);
  for (const { start, end, second } of read.remarks) {
    expect(read.text.slice(start, end)).not.toBe("");
    expect(read.passages.some((each) => each.start <= start && start < each.end)).toBe(true);
    expect(second).toBeGreaterThanOrEqual(0);
  }
  expect(read.unmentioned.length).toBeGreaterThan(50);
  expect(await dealer.does("reports.get", { path: path() })).toEqual(before);
});

test("what is accepted of a reading is written by operations like anything typed", async () => {
  const { dealer } = scene.world;
  const text = "0:12 The horn works. 0:20 The left front door has a dent of 15 millimeters.";
  const { remarks } = await dealer.does("reports.readSpoken", { path: path(), body: { text } });
  const { findings } = await dealer.does("reports.get", { path: path() });
  const operations = remarks.map(({ finding }) =>
    setOperation(
      finding,
      findings.find(({ item, position }) => item === finding.item && position === finding.position)
        ?.revision ?? null,
    ),
  );
  const { results } = await dealer.does("reports.operate", { path: path(), body: { operations } });
  expect(results.map(({ result }) => result)).toEqual(remarks.map(() => "applied"));
  expect(remarks.every(({ problem }) => problem === null)).toBe(true);
});

test("of a sheet every row comes back, with what it becomes and how sure", async () => {
  const read = await readSheet(fixture("sheets/tuned/pass-fail/sheet.xlsx"));
  expect(read).toMatchObject({ form: "xlsx", exported: false });
  expect(read.rows.length).toBe(30);
  expect(new Set(read.rows.map(({ end }) => end))).toEqual(new Set(["finding", "note"]));
  expect(findingsIn(read).filter(({ sure }) => !sure).length).toBeGreaterThan(0);
});

test("a line settled by hand is known to the whole firm at its next sheet, to no other, and may be forgotten", async () => {
  const { dealer, otherDealer } = scene.world;
  const csv = "Check,Result\nWhirligig,✗\n";
  const [refused] = (await readSheet(csv)).rows.flatMap((row) => row.refused);
  const line = refused?.line ?? "";
  await dealer.does("reports.settleLines", {
    path: path(),
    body: { lines: [{ line, item: "electrics.wipers", positions: [""] }] },
  });
  const colleague = await joinPerson(service(), dealer.organization, "Colleague");
  const [found] = findingsIn(await readSheet(csv, colleague));
  expect(found).toMatchObject({ sure: true, settled: true, finding: { item: "electrics.wipers" } });
  const [lines] = await query<{ count: string }>(
    service().databaseUrl,
    "SELECT count(*) FROM sheet_line WHERE organization_id = $1",
    [otherDealer.organization],
  );
  expect(lines?.count).toBe("0");
  await dealer.does("reports.settleLines", { path: path(), body: { lines: [{ line, item: null }] } });
  expect(findingsIn(await readSheet(csv))).toEqual([]);
});

test("a line is settled to what is on the sheet only", async () => {
  const lines = [
    { line: "a", item: "no.such-item", positions: [""] },
    { line: "b", item: "electrics.horn", positions: ["left-front"] },
    { line: "c", item: "wheels.tread-depth", positions: ["left-front", "nowhere"] },
  ];
  const { problems } = await scene.world.dealer.isRefused("reports.settleLines", {
    path: path(),
    body: { lines },
  });
  expect(problems?.map(({ at }) => at)).toEqual([
    "/lines/0/item",
    "/lines/1/positions/0",
    "/lines/2/positions/1",
  ]);
});

test("no more lines are kept of a firm than there is room for, and the oldest go", async () => {
  const { dealer } = scene.world;
  for (let turn = 0; turn < 11; turn += 1)
    await dealer.does("reports.settleLines", {
      path: path(),
      body: {
        lines: Array.from({ length: 500 }, (_, at) => ({
          line: `line ${turn} ${at}`,
          item: "electrics.horn",
          positions: [""],
        })),
      },
    });
  const rows = await query<{ line: string }>(
    service().databaseUrl,
    "SELECT line FROM sheet_line WHERE organization_id = $1",
    [dealer.organization],
  );
  expect(rows.length).toBe(5_000);
  expect(rows.some(({ line }) => line.startsWith("line 0 "))).toBe(false);
});

const refusals: readonly (readonly [what: string, file: string | Uint8Array, says: RegExp])[] = [
  ["a PDF", "%PDF-1.7 nothing", /no table: by its bytes it is a PDF/],
  ["an old workbook", Buffer.from([0xd0, 0xcf, 0x11, 0xe0, 0, 0, 0, 0]), /Save it as XLSX/],
  ["a cut workbook", fixture("sheets/tuned/pass-fail/sheet.xlsx").subarray(0, 900), /cut it off|damaged/],
];
test.each(refusals)("%s is refused with what would work", async (_, file, says) => {
  const { code, problems } = await scene.world.dealer.isRefused("reports.readSheet", {
    path: path(),
    body: asBody(file),
  });
  expect(code).toBe("reading-refused");
  expect(problems).toEqual([{ at: "/file", reason: expect.stringMatching(says) }]);
});

test("text without times is refused with what would work", async () => {
  const asked = { path: path(), body: { text: "The horn works." } };
  const { code, problems } = await scene.world.dealer.isRefused("reports.readSpoken", asked);
  expect(code).toBe("reading-refused");
  expect(problems).toEqual([{ at: "/text", reason: expect.stringContaining("What works: WebVTT, SubRip") }]);
});

test("for a sealed report nothing is read", async () => {
  const asked = { path: { id: scene.sealedReport }, body: asBody("Horn,ok\n") };
  expect((await scene.world.dealer.isRefused("reports.readSheet", asked)).code).toBe("report-sealed");
});

test.each(["csv", "xlsx"])(
  "a sealed report comes as %s, to be kept, and is read back the same",
  async (form) => {
    const id = scene.way.inspection;
    const { buyer } = scene.world;
    const file = await buyer.ask("reportVersions.table", { path: { id }, query: { form } });
    expect(file.headers).toMatchObject({
      "content-disposition": `attachment; filename="inspection.${form}"`,
      "content-security-policy": "sandbox; default-src 'none'",
    });
    const read = readFile(file.body);
    if (!read.ok) throw new Error(read.refused.reason);
    expect(reportFromTable(read.book)).toEqual(await buyer.does("reportVersions.document", { path: { id } }));
  },
);

test("a draft comes as a table, and read for another draft brings every finding along", async () => {
  const { dealer } = scene.world;
  const { report } = await dealer.does("reports.get", { path: path() });
  const file = await dealer.ask("reports.table", { path: path(), query: { form: "csv" } });
  const read = await readSheet(file.body);
  expect(read.exported).toBe(true);
  expect(findingsIn(read).map(({ finding }) => [finding.item, finding.position, finding.answer])).toEqual(
    report.findings.map(({ item, position, answer }) => [item, position, answer]),
  );
});

test("no cell of an exported report begins what a spreadsheet would run", async () => {
  const { dealer } = scene.world;
  const finding = {
    item: "electrics.radio",
    answer: { kind: "working", value: "yes" } as const,
    note: `=HYPERLINK("http://example.com","look")`,
  };
  await dealer.does("reports.operate", { path: path(), body: { operations: [setOperation(finding)] } });
  const { text } = await dealer.ask("reports.table", { path: path(), query: { form: "csv" } });
  expect(text).toContain("HYPERLINK");
  expect(text).not.toMatch(/(^|,)"?[=+@\t-]/m);
});

test("an inspector who must be blind gets no table of the statement", async () => {
  const { inspector } = scene.world;
  const { statement } = await inspector.does("orders.get", { path: { id: scene.orders.toInspect } });
  const asked = { path: { id: statement.id }, query: { form: "csv" } };
  const refused = await inspector.isRefused("reportVersions.table", asked);
  expect(refused).toMatchObject({ code: "not-permitted", detail: expect.stringContaining("Seal yours") });
});
