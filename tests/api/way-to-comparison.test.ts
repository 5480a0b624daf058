import { Comparison } from "@evenhand/shared/comparison";
import { expect, test } from "vitest";
import { useService } from "./setup/service.ts";
import { car, inspect } from "./setup/story.ts";
import { makeWorld } from "./setup/world.ts";

const service = useService();

test("from a car to a sealed statement, an order, a sealed inspection and the comparison of both", async () => {
  const world = await makeWorld(service());
  const { vehicle, statement, inspection, comparison, order } = await inspect(world);
  const seen = await world.buyer.does("vehicles.get", { path: { id: vehicle } });
  expect(seen).toMatchObject({ vehicle: car, listed: true, statements: [{ id: statement, version: 1 }] });
  expect(seen.orders).toMatchObject([{ id: order, state: "reported" }]);
  expect(seen.comparisons).toMatchObject([{ id: comparison, a: statement, b: inspection }]);
});

test("the comparison says what differs, with the seals of both documents", async () => {
  const world = await makeWorld(service());
  const { comparison } = await inspect(world);
  const answer = await world.buyer.ask("comparisons.document", {
    path: { id: comparison },
    headers: { "accept-encoding": "identity" },
  });
  const document = Comparison.parse(answer.body);
  const outcomes = Object.fromEntries(
    document.entries.map((entry) => [`${entry.item} ${entry.position}`, entry.outcome]),
  );
  expect(outcomes).toMatchObject({
    "wheels.tread-depth left-front": "differ",
    "wheels.tread-depth right-front": "agree",
    "electrics.horn ": "differ",
    "interior.headliner ": "unseen",
  });
  const meta = await world.buyer.does("comparisons.get", { path: { id: comparison } });
  expect(document.a.seal).toBe(meta.seals.a);
  expect(document.engine).toBe(meta.engine);
  expect(answer.headers["etag"]).toBe(`"${meta.hash}"`);
});
