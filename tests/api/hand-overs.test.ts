import type { Answer } from "@evenhand/shared/answer";
import type { FindingInput } from "@evenhand/shared/finding";
import { beforeAll, describe, expect, test } from "vitest";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { readEntries } from "../../apps/api/src/platform/record/read-chain.ts";
import { query } from "./setup/database.ts";
import {
  carTo,
  collected,
  delivered,
  inDays,
  invite,
  signing,
  soundFindings,
  terms,
} from "./setup/hand-over-story.ts";
import { caseOn, standingOn } from "./setup/homes.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { summarize } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });
let world: World;
beforeAll(async () => {
  world = await makeWorld(service());
});

const faults = (...found: { kind: string; mm: number }[]): Answer => ({
  kind: "faults",
  found: found.map(({ kind, mm }) => ({ kind, extent: { value: mm, unit: "mm" } })),
  denied: [],
});
const dented: FindingInput = {
  item: "body.faults",
  position: "left-front-door",
  answer: faults({ kind: "dent", mm: 80 }),
};
/** The moves of a hand-over that stand in somebody's record, in their order. */
const recordedOf = async ({ organization }: Person, id: string): Promise<(string | undefined)[]> => {
  const entries = await readEntries(service().app.get(Database), organization);
  return entries
    .filter(({ kind, subject }) => kind === "handover.moved" && subject === id)
    .map(({ openings }) => /"move":"([a-z-]+)"/.exec(openings.content?.text ?? "")?.[1]);
};
const of = (id: string) => ({ path: { id } });
const by = (token: string) => ({ path: { token } });

test("nobody is invited to a car that is not bought", async () => {
  const { caseId } = await carTo(world, "read");
  const body = { carrier: "Long Valley Haulage", terms, expires: inDays(20) };
  const refused = await world.buyer.isRefused("handOvers.arrange", { ...of(caseId), body });
  expect(refused).toMatchObject({ code: "hand-over-not-bought", status: 409 });
  expect(await world.buyer.does("handOvers.ofCase", of(caseId))).toEqual({ mayArrange: false, items: [] });
  // The dealer hears nothing of a case before it is bought.
  expect((await world.dealer.isRefused("handOvers.ofCase", of(caseId))).code).toBe("not-found");
});

describe("a car on its way", () => {
  let caseId: string;
  let vehicle: string;
  let id: string;
  let token: string;
  beforeAll(async () => {
    ({ caseId, vehicle } = await carTo(world, "bought"));
  });
  /** Where it stands for buyer and dealer. */
  const standings = () => Promise.all([world.buyer, world.dealer].map((who) => standingOn(who, vehicle)));
  const stepsOf = async (who: Person) =>
    (await caseOn(who, vehicle))?.standing.waits.map(({ step, of: whose }) => `${step} of the ${whose}`);

  test("the buyer invites a carrier, once at a time", async () => {
    expect((await world.buyer.does("handOvers.ofCase", of(caseId))).mayArrange).toBe(true);
    expect(await stepsOf(world.buyer)).toEqual(["before-money of the buyer", "name-carrier of the buyer"]);
    ({ id, token } = await invite(world, caseId));
    expect(await stepsOf(world.buyer)).toEqual([
      "before-money of the buyer",
      "sign-collection of the carrier",
    ]);
    expect(await stepsOf(world.dealer)).toEqual(["sign-collection of the carrier"]);
    const body = { carrier: "Another", terms, expires: inDays(20) };
    const second = await world.buyer.isRefused("handOvers.arrange", { ...of(caseId), body });
    expect(second).toMatchObject({ code: "hand-over-exists", handOver: id });
    const late = await world.buyer.isRefused("handOvers.renewLink", {
      ...of(id),
      body: { expires: inDays(121) },
    });
    expect(late.problems?.[0]?.at).toBe("/expires");
  });

  test("who holds the link sees the car and no more", async () => {
    const carried = await world.nobody.does("carriedHandOvers.get", by(token));
    expect(carried).toMatchObject({ stage: "collection", carrier: "Long Valley Haulage", collection: null });
    expect(JSON.stringify(carried)).not.toMatch(/Bea|summary|comparison|price/);
    expect((await world.nobody.isRefused("carriedHandOvers.get", by("wrong"))).code).toBe(
      "hand-over-link-spent",
    );
  });

  test("nobody else sees it", async () => {
    for (const person of [world.otherBuyer, world.otherDealer, world.inspector, world.operator]) {
      expect(["not-found", "not-permitted"]).toContain(
        (await person.isRefused("handOvers.get", of(id))).code,
      );
      expect(["not-found", "not-permitted"]).toContain(
        (await person.isRefused("handOvers.ofCase", of(caseId))).code,
      );
    }
    const body = { note: "mine" };
    const moved = await world.otherBuyer.isRefused("handOvers.callOff", { ...of(id), revision: 1, body });
    expect(moved.code).toBe("not-found");
  });

  test("a replaced link opens nothing", async () => {
    const fresh = await world.buyer.does("handOvers.renewLink", { ...of(id), body: { expires: inDays(30) } });
    expect((await world.nobody.isRefused("carriedHandOvers.get", by(token))).code).toBe(
      "hand-over-link-spent",
    );
    ({ token } = fresh);
    await world.nobody.does("carriedHandOvers.get", by(token));
  });

  test("what cannot be compared is not signed, and says what is missing", async () => {
    const body = collected(soundFindings().filter(({ item }) => item !== "visit.light"));
    const refused = await world.nobody.isRefused("carriedHandOvers.preview", { ...by(token), body });
    expect(refused).toMatchObject({ code: "report-incomplete", problems: [{ item: "visit.light" }] });
    const early = await world.nobody.isRefused("carriedHandOvers.preview", {
      ...by(token),
      body: delivered(soundFindings()),
    });
    expect(early).toMatchObject({ code: "hand-over-state", state: "arranged" });
  });

  test("collection: both sign what was shown, of two at once one, and a repeat is the first", async () => {
    const one = await signing(world, token, collected(soundFindings()));
    const other = await signing(world, token, collected(soundFindings(dented)));
    const refused = await world.nobody.isRefused("carriedHandOvers.sign", {
      ...by(token),
      body: { ...one, hash: other.hash },
    });
    expect(refused).toMatchObject({ code: "hand-over-hash", hash: one.hash });
    const answers = await Promise.all(
      [one, other].map((body) => world.nobody.ask("carriedHandOvers.sign", { ...by(token), body })),
    );
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409]);
    const [won, lost] = answers[0]?.status === 201 ? [one, answers[1]] : [other, answers[0]];
    expect(lost?.body).toMatchObject({ state: "collected" });
    const again = await world.nobody.does("carriedHandOvers.sign", { ...by(token), body: won });
    expect(again.report.seal).toBe(won.hash);
    expect(again.report.signatures.map(({ as, name, hash }) => [as, name, hash])).toEqual([
      ["carrier", "Marlow Penn", won.hash],
      ["seller", "Delia Ashcombe", won.hash],
    ]);
    const { items } = await world.dealer.does("notices.list");
    expect(items[0]).toMatchObject({ kind: "car-collected", subject: id });
    const leaving = "others: collect, sign-delivery of the carrier";
    expect(await standings()).toEqual([leaving, leaving]);
  });

  test("what was signed cannot be changed, whoever asks the database", async () => {
    const change = query(service().databaseUrl, "UPDATE hand_over_report SET paper = 'noted'");
    await expect(change).rejects.toThrow(/never changed/);
  });

  test("once it is on the truck it is not called off", async () => {
    const { revision } = await world.buyer.does("handOvers.get", of(id));
    const refused = await world.buyer.isRefused("handOvers.callOff", {
      ...of(id),
      revision,
      body: { note: "changed my mind" },
    });
    expect(refused).toMatchObject({ code: "hand-over-state", state: "collected" });
  });

  test("delivery: what is not on the collection report is shown before signing, and goes on the carrier's paper", async () => {
    const body = delivered(
      soundFindings(dented, {
        item: "body.faults",
        position: "hood",
        answer: faults({ kind: "scratch", mm: 200 }),
      }),
    );
    const preview = await world.nobody.does("carriedHandOvers.preview", { ...by(token), body });
    expect(preview.compared?.discrepancies.map(({ place }) => place)).toContain("panel damage, hood");
    const signed = await signing(world, token, body);
    const refused = await world.nobody.isRefused("carriedHandOvers.sign", {
      ...by(token),
      body: { ...signed, paper: "nothing" },
    });
    expect(refused).toMatchObject({ code: "hand-over-paper", problems: [{ at: "/paper" }] });
    const done = await world.nobody.does("carriedHandOvers.sign", {
      ...by(token),
      body: { ...signed, paper: "noted" },
    });
    expect(done).toMatchObject({ state: "delivered", report: { paper: "noted" } });
    expect((await world.nobody.isRefused("carriedHandOvers.get", by(token))).code).toBe(
      "hand-over-link-spent",
    );
  });

  test("the claim page: both papers, the deadline as entered, and how it ended", async () => {
    const seen = await world.buyer.does("handOvers.get", of(id));
    expect(seen.compared?.discrepancies.map(({ kind, place }) => [kind, place])).toContainEqual([
      "new",
      "panel damage, hood",
    ]);
    expect(seen.terms).toEqual(terms);
    expect(await standings()).toEqual(["yours: collect, answer-arrival of the buyer", "rest: collect"]);
    const opened = await world.buyer.does("handOvers.openClaim", {
      ...of(id),
      revision: seen.revision,
      body: { note: "Notified in writing, with the delivery paper." },
    });
    const closed = await world.buyer.does("handOvers.closeClaim", {
      ...of(id),
      revision: opened.revision,
      body: { note: "The carrier's insurer paid the repair." },
    });
    expect(await standings()).toEqual(["rest: collect", "rest: collect"]);
    const ended = await world.buyer.does("handOvers.get", of(id));
    expect(ended).toMatchObject({ state: "claim-closed", revision: closed.revision });
    expect(ended.moves.map(({ move }) => move)).toEqual(["collect", "deliver", "open-claim", "close-claim"]);
    const late = await world.buyer.isRefused("handOvers.setTerms", {
      ...of(id),
      revision: closed.revision,
      body: { ...terms, riskPasses: null },
    });
    expect(late).toMatchObject({ code: "hand-over-state", state: "claim-closed" });
    expect((await world.buyer.does("handOvers.get", of(id))).terms).toEqual(terms);
  });

  test("the dealer sees the car leave; where it went and what became of it is the buyer's", async () => {
    const seen = await world.dealer.does("handOvers.get", of(id));
    expect(seen).toMatchObject({
      as: "dealer",
      state: "delivered",
      delivery: null,
      compared: null,
      terms: null,
    });
    expect(seen.collection?.place).toBe("Larkspur yard, gate 2");
    expect(JSON.stringify(seen)).not.toMatch(/Orchard|insurer|Notified/);
    const taken = async (who: Person) =>
      (await who.does("exports.get", { path: { id: who.organization } })).handOvers.find(
        (one) => one["id"] === id,
      );
    const reports = (await taken(world.buyer))?.["reports"];
    expect(reports).toMatchObject([{ stage: "collection" }, { stage: "delivery" }]);
    const dealers = await taken(world.dealer);
    expect(dealers).toMatchObject({
      reports: [{ stage: "collection" }],
      terms: null,
      comparison: null,
      moves: null,
    });
    const { items } = await world.dealer.does("handOvers.ofCase", of(caseId));
    expect(items).toMatchObject([{ id, state: "delivered" }]);
    const refused = await world.dealer.isRefused("handOvers.openClaim", {
      ...of(id),
      revision: seen.revision,
      body: { note: "not mine" },
    });
    expect(refused.code).toBe("not-permitted");
  });
});

test("a link that has run out opens nothing; what is called off neither, and another may be invited", async () => {
  const { caseId } = await carTo(world, "bought");
  const { id, token } = await invite(world, caseId);
  await query(
    service().databaseUrl,
    "UPDATE hand_over SET link_expires_at = now() - interval '1 minute' WHERE id = $1",
    [id],
  );
  expect((await world.nobody.isRefused("carriedHandOvers.get", by(token))).code).toBe("hand-over-link-spent");
  const spent = await world.nobody.isRefused("carriedHandOvers.sign", {
    ...by(token),
    body: {
      report: collected(soundFindings()),
      hash: "0".repeat(64),
      paper: "nothing",
      carrier: "M",
      other: "D",
    },
  });
  expect(spent.code).toBe("hand-over-link-spent");
  const fresh = await world.buyer.does("handOvers.renewLink", { ...of(id), body: { expires: inDays(2) } });
  const body = { note: "The truck broke down." };
  const agreed = { ...terms, riskPasses: null };
  await world.buyer.does("handOvers.setTerms", { ...of(id), revision: 1, body: agreed });
  const { revision } = await world.buyer.does("handOvers.callOff", { ...of(id), revision: 2, body });
  expect(revision).toBe(3);
  const late = { ...of(id), revision, body: terms };
  expect(await world.buyer.isRefused("handOvers.setTerms", late)).toMatchObject({
    code: "hand-over-state",
    state: "called-off",
    detail: "It was called off. What was agreed with the carrier stays as it was then.",
  });
  // What the buyer entered stands in the buyer's record, and not in the dealer's, who is shown none of it.
  expect(await recordedOf(world.buyer, id)).toEqual(["arrange", "set-terms", "call-off"]);
  expect(await recordedOf(world.dealer, id)).toEqual(["arrange", "call-off"]);
  expect((await world.nobody.isRefused("carriedHandOvers.get", by(fresh.token))).code).toBe(
    "hand-over-link-spent",
  );
  await invite(world, caseId);
});

test("of a carrier who signs and a buyer who calls it off at once one wins, and the other is told how it stands", async () => {
  const { caseId } = await carTo(world, "bought");
  const { id, token } = await invite(world, caseId);
  const body = await signing(world, token, collected(soundFindings()));
  const [signed, calledOff] = await Promise.all([
    world.nobody.ask("carriedHandOvers.sign", { ...by(token), body }),
    world.buyer.ask("handOvers.callOff", { ...of(id), revision: 1, body: { note: "Another one." } }),
  ]);
  const { state, moves, collection } = await world.buyer.does("handOvers.get", of(id));
  expect(moves.map(({ move }) => move)).toEqual([state === "collected" ? "collect" : "call-off"]);
  expect([signed.status, calledOff.status, collection === null]).toEqual(
    state === "collected" ? [201, 409, false] : [409, 201, true],
  );
  expect((state === "collected" ? calledOff : signed).body.state).toBe(state);
});

test("what arrived as it left waits for nobody; of two claims opened at once one is made", async () => {
  const { caseId, vehicle } = await carTo(world, "bought");
  const { id, token } = await invite(world, caseId);
  for (const report of [collected(soundFindings()), delivered(soundFindings())])
    await world.nobody.does("carriedHandOvers.sign", {
      ...by(token),
      body: await signing(world, token, report),
    });
  expect(await standingOn(world.buyer, vehicle)).toBe("rest: collect");
  const { revision: first } = await world.buyer.does("handOvers.get", of(id));
  const { revision } = await world.buyer.does("handOvers.signOff", {
    ...of(id),
    revision: first,
    body: { note: "Walked around it in daylight." },
  });
  expect((await world.buyer.does("handOvers.get", of(id))).state).toBe("signed-off");
  expect((await world.dealer.does("handOvers.get", of(id))).state).toBe("delivered");
  // Damage that shows later is still claimed.
  const open = (note: string) =>
    world.buyer.ask("handOvers.openClaim", { ...of(id), revision, body: { note } });
  const answers = await Promise.all([open("One."), open("Other.")]);
  expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409]);
  expect(answers.find(({ status }) => status === 409)?.body.state).toBe("claim-open");
});

test("what a later decision replaced buys nothing, and a car that was collected stays bought", async () => {
  const { caseId, comparison } = await carTo(world, "bought");
  const { id, token } = await invite(world, caseId);
  const isBought = async () => {
    const { bought } = await world.buyer.does("beforeMoney.get", of(caseId));
    const dealer = await world.dealer.ask("handOvers.ofCase", of(caseId));
    expect(dealer.status).toBe(bought ? 200 : 404);
    return bought;
  };
  const decline = async () => {
    const made = await summarize(world.buyer, comparison);
    await world.buyer.does("summaries.decide", {
      ...of(made.id),
      body: { decision: "decline", hash: made.hash },
    });
  };
  expect(await isBought()).toBe(true);
  await decline();
  expect(await isBought()).toBe(false);
  await world.nobody.does("carriedHandOvers.sign", {
    ...by(token),
    body: await signing(world, token, collected(soundFindings())),
  });
  expect(await isBought()).toBe(true);
  await decline();
  expect(await isBought()).toBe(true);
  expect((await world.buyer.does("handOvers.get", of(id))).state).toBe("collected");
});
