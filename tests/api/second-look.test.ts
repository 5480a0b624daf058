import type { FindingInput } from "@evenhand/shared/finding";
import type { SecondLook } from "@evenhand/shared/http/reports";
import { beforeEach, describe, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  entryAt,
  header,
  horn,
  inspected,
  order,
  publish,
  readComparison,
  seal,
  setOperation,
  stated,
  treadDepth,
  write,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

/** An inspection that says nothing yet, of a car stated so. */
async function begin(statement = stated): Promise<string> {
  const { vehicle, statement: on } = await publish(world.dealer, statement);
  const id = await order(world.buyer, world.inspector, vehicle, on);
  await acceptOrder(world.inspector, id);
  const report = await world.inspector.does("reports.inspect", { path: { id }, body: header });
  return report.id;
}
/** One that says what was found and is not sealed. */
async function found(statement = stated) {
  const report = await begin(statement);
  return { report, revision: await write(world.inspector, report, inspected) };
}
const lookAgain = (report: string, revision: number) =>
  world.inspector.does("reports.lookAgain", { path: { id: report }, revision });
const namesOf = ({ places }: SecondLook): string[] =>
  places.map(({ item, position }) => `${item} ${position}`);
const answerAgain = async (report: string, finding: FindingInput) => {
  const draft = await world.inspector.does("reports.get", { path: { id: report } });
  const base = draft.findings.find(
    ({ item, position }) => item === finding.item && position === (finding.position ?? ""),
  );
  return world.inspector.does("reports.operate", {
    path: { id: report },
    body: { operations: [setOperation(finding, base?.revision ?? null)] },
  });
};

describe("asked to look again", () => {
  test("an inspector gets the names of places, some of which do not part, and not a byte of what was stated", async () => {
    const named: SecondLook[] = [];
    for (const value of ["yes", "intermittent"] as const) {
      const statement = [...stated.filter(({ item }) => item !== "electrics.horn"), horn(value)];
      const { report, revision } = await found(statement);
      const { secondLook, ...draft } = await lookAgain(report, revision);
      expect(draft).toEqual({ id: report, revision: revision + 1 });
      expect(Object.keys(secondLook).toSorted()).toEqual(["askedAt", "places"]);
      named.push(secondLook);
      expect((await world.inspector.does("reports.get", { path: { id: report } })).secondLook).toEqual(
        secondLook,
      );
    }
    // One part in the tread and the horn, and the same in the other tire; of the headliner nothing was seen.
    const [first, second] = named;
    expect(first && namesOf(first)).toEqual([
      "electrics.horn ",
      "wheels.tread-depth left-front",
      "wheels.tread-depth right-front",
    ]);
    expect(second?.places).toEqual(first?.places);
  });

  test("is told the same again whatever was changed meanwhile, so that nothing can be tried out", async () => {
    const { report, revision } = await found();
    const asked = await lookAgain(report, revision);
    const { revision: later } = await answerAgain(report, horn("yes"));
    expect(await lookAgain(report, later)).toEqual({ ...asked, revision: later });
  });

  test("not before anything is said, and not after a version was sealed", async () => {
    const empty = await begin();
    expect(
      await world.inspector.isRefused("reports.lookAgain", { path: { id: empty }, revision: 1 }),
    ).toMatchObject({ code: "report-incomplete" });
    const { report, revision } = await found();
    await seal(world.inspector, report, revision);
    const { revision: again } = await world.inspector.does("reports.revise", { path: { id: report } });
    expect(
      await world.inspector.isRefused("reports.lookAgain", { path: { id: report }, revision: again }),
    ).toMatchObject({ status: 409, code: "report-sealed" });
  });
});

test("both answers are sealed, the comparison goes by the second, and what falls after it is upheld", async () => {
  const { report, revision } = await found();
  await lookAgain(report, revision);
  await answerAgain(report, horn("yes"));
  await answerAgain(report, { ...treadDepth("left-front", 2, 2, 3), look: "second" });
  const { revision: last } = await world.inspector.does("reports.get", { path: { id: report } });
  const sealed = await seal(world.inspector, report, last);

  const document = await world.buyer.does("reportVersions.document", { path: { id: sealed.id } });
  const again = document.findings.find(({ item }) => item === "electrics.horn");
  expect(again).toMatchObject({
    answer: { kind: "working", value: "yes" },
    look: "second",
    first: { answer: { kind: "working", value: "no" }, blind: true },
  });

  const comparison = await readComparison(world.buyer, sealed.comparison ?? "");
  const lines = ["electrics.horn ", "wheels.tread-depth left-front", "wheels.tread-depth right-front"].map(
    (place) => {
      const [item = "", position = ""] = place.split(" ");
      const { outcome, marks } = comparison.entries[entryAt(comparison, item, position)] ?? {};
      return [outcome, marks?.includes("looked-twice")];
    },
  );
  expect(lines).toEqual([
    ["agree", true],
    ["differ", true],
    ["agree", false],
  ]);
  const [row] = await query<{ counts: Record<string, { falls: object[] }> }>(
    service().databaseUrl,
    "SELECT statement_counts AS counts FROM comparison WHERE id = $1",
    [sealed.comparison],
  );
  expect(row?.counts["wheels"]?.falls).toEqual([
    { line: "wheels.tread-depth|left-front|answer", by: "second-look" },
  ]);
  expect(row?.counts["electrics"]?.falls).toEqual([]);
});
