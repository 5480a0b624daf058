import type { RouteId } from "@evenhand/shared/access";
import { caseOn } from "./homes.ts";
import type { Asked, Person } from "./person.ts";
import { header, type Scene, withSession } from "./scene.ts";
import { bookingVariants } from "./booking-requests.ts";
import { evidenceVariants } from "./evidence-requests.ts";
import { handOverVariants } from "./hand-over-requests.ts";
import { releasePictureVariants } from "./release-picture-requests.ts";
import { car, headliner, setOperation } from "./story.ts";
import { joinPerson, password, type World } from "./world.ts";

export type Who = Exclude<keyof World, "nobody">;

/** A request about one object of the scene, and everybody to whom that object is open. */
export type Variant = {
  readonly about: string;
  readonly open: readonly Who[];
  /** Who may know of the object, and is told why it is not theirs to do. */
  readonly shut?: readonly Who[];
  readonly ask: (scene: Scene, person: Person) => Promise<Asked> | Asked;
  /** Asks as the same account with another session. */
  readonly ownSession?: true;
  /** Asks as a new administrator of the same organization, whose account may end with it. */
  readonly asNew?: true;
};

const everybody: readonly Who[] = [
  "dealer",
  "otherDealer",
  "buyer",
  "otherBuyer",
  "inspector",
  "otherInspector",
  "operator",
];
const dealers: readonly Who[] = ["dealer", "otherDealer"];
const buyers: readonly Who[] = ["buyer", "otherBuyer"];
const inspectors: readonly Who[] = ["inspector", "otherInspector"];

const nothing = () => ({});
const at = (pick: (scene: Scene) => string) => (scene: Scene) => ({ path: { id: pick(scene) } });
const one = (
  about: string,
  open: readonly Who[],
  ask: Variant["ask"],
  more: Partial<Variant> = {},
): Variant => ({
  about,
  open,
  ask,
  ...more,
});
let newcomers = 0;
/** A new member of somebody's organization, as the path of a request about them. */
const newcomer = async ({ service }: Scene, { organization }: Person) => {
  newcomers += 1;
  const { account } = await joinPerson(service, organization, `Newcomer ${newcomers}`);
  return { id: organization, account };
};
const ownFirms = ["dealer", "buyer", "inspector", "operator"] as const;
/** The buyer's case of the car that was compared. */
const ofCase = async ({ way, world }: Scene) => ({
  path: { id: (await caseOn(world.buyer, way.vehicle))?.id ?? "" },
});
const settledHorn = { lines: [{ line: "whirligig", item: "electrics.horn", positions: [""] }] };
const ending = { reason: "No lift is free." };

/** The inspector's draft as it stands now, which whoever asks about it moves on. */
const revisionOfInspection: Variant["ask"] = async ({ world, inspectionToSeal: { id } }) => {
  const { revision } = await world.inspector.does("reports.get", { path: { id } });
  return { path: { id }, revision };
};

/** For each route of the table that asks who one is: whom it is open to, object by object. */
const variants: Readonly<Partial<Record<RouteId, readonly Variant[]>>> = {
  "sessions.end": [one("one's own session", everybody, nothing, { ownSession: true })],
  "sessions.list": [one("one's own", everybody, nothing)],
  "sessions.revoke": [
    one("one's own session", everybody, async ({ service }, person) => ({
      path: { id: (await withSession(service, person)).session },
    })),
    one("another's session", [], async ({ service, world }, person) => {
      const other = person === world.dealer ? world.buyer : world.dealer;
      return { path: { id: (await withSession(service, other)).session } };
    }),
  ],
  "sessions.endAll": [one("one's own", everybody, nothing, { asNew: true })],
  "account.changePassword": [
    one("one's own", everybody, () => ({ body: { current: password, next: "another long password" } }), {
      asNew: true,
    }),
  ],
  "account.close": [one("one's own", everybody, () => ({ body: { password } }), { asNew: true })],
  "members.change": ownFirms.map((who) =>
    one(`a member of the ${who}'s`, [who], async (scene) => ({
      path: await newcomer(scene, scene.world[who]),
      body: { role: "admin" },
    })),
  ),
  "members.remove": ownFirms.map((who) =>
    one(`a member of the ${who}'s`, [who], async (scene) => ({
      path: await newcomer(scene, scene.world[who]),
    })),
  ),
  "invitations.list": ownFirms.map((who) =>
    one(`the ${who}'s`, who === "operator" ? [who] : [who, "operator"], ({ world }) => ({
      path: { id: world[who].organization },
    })),
  ),
  "invitations.revoke": ownFirms.map((who) =>
    one(`the ${who}'s`, who === "operator" ? [who] : [who, "operator"], async ({ world }) => {
      newcomers += 1;
      const { organization } = world[who];
      const body = { email: `new${newcomers}@example.com`, organization, role: "member" };
      return { path: await world[who].does("invitations.create", { body }) };
    }),
  ),
  "account.get": [one("oneself", everybody, nothing)],
  "invitations.create": [
    ...(["dealer", "buyer", "inspector"] as const).map((who) =>
      one(
        `the ${who}'s firm`,
        [who],
        ({ world }) => ({
          body: { email: "new@example.com", organization: world[who].organization, role: "member" },
        }),
        { shut: ["operator"] },
      ),
    ),
    one("a firm without anybody", ["operator"], async ({ world }) => {
      const { id } = await world.operator.does("organizations.create", {
        body: { name: "New", kind: "dealer" },
      });
      return { body: { email: "first@example.com", organization: id, role: "admin" } };
    }),
  ],
  "tokens.create": [
    one("oneself", everybody, () => ({
      body: { name: "a program", scopes: ["read"], expires: new Date(Date.now() + 86_400_000).toISOString() },
    })),
  ],
  "tokens.list": [one("one's own", everybody, nothing)],
  "tokens.revoke": [
    one("another's token", [], async ({ world }, person) => {
      const other = person === world.dealer ? world.buyer : world.dealer;
      const expires = new Date(Date.now() + 86_400_000).toISOString();
      const { id } = await other.does("tokens.create", { body: { name: "a", scopes: ["read"], expires } });
      return { path: { id } };
    }),
    one("one's own token", everybody, async (_scene, person) => {
      const expires = new Date(Date.now() + 86_400_000).toISOString();
      const { id } = await person.does("tokens.create", { body: { name: "a", scopes: ["read"], expires } });
      return { path: { id } };
    }),
  ],
  "organizations.list": [one("one's own", everybody, nothing)],
  "organizations.create": [
    one("a new firm", ["operator"], () => ({ body: { name: "New", kind: "dealer" } })),
  ],
  "organizations.members": [
    one(
      "the dealer's firm",
      ["dealer", "operator"],
      at(({ world }) => world.dealer.organization),
    ),
    one(
      "the buyer",
      ["buyer", "operator"],
      at(({ world }) => world.buyer.organization),
    ),
    one(
      "the inspector's firm",
      ["inspector", "operator"],
      at(({ world }) => world.inspector.organization),
    ),
  ],
  "dealerRecords.get": [
    one(
      "a dealer",
      [...buyers, ...dealers, "operator"],
      at(({ world }) => world.dealer.organization),
    ),
  ],
  "inspectors.list": [one("the firms", [...buyers, "operator"], nothing)],
  "vehicles.list": [one("the list", everybody, nothing)],
  "vehicles.create": [
    one("the dealer's firm", ["dealer"], ({ world }) => ({
      body: { organization: world.dealer.organization, vehicle: car },
    })),
  ],
  "vehicles.get": [
    one(
      "a listed car",
      everybody,
      at(({ listed }) => listed.vehicle),
    ),
    one(
      "a car not listed",
      ["dealer"],
      at(({ draft }) => draft.vehicle),
    ),
  ],
  "vehicles.change": [
    one("the dealer's car", ["dealer"], async ({ world, bareAgain }) => {
      const { revision } = await world.dealer.does("vehicles.get", { path: { id: bareAgain } });
      return { path: { id: bareAgain }, revision, body: { words: "Dry stored." } };
    }),
  ],
  "cases.list": [one("one's home", everybody, nothing)],
  "cases.letDealerFirst": [
    one("the buyer's case", ["buyer"], async ({ way, world }) => ({
      path: { id: (await caseOn(world.buyer, way.vehicle))?.id ?? "" },
      body: { allowed: true },
    })),
  ],
  "cases.get": [
    one("the buyer's case, gone far", ["buyer", "dealer", "inspector"], async ({ way, world }) => ({
      path: { id: (await caseOn(world.buyer, way.vehicle))?.id ?? "" },
    })),
    one("the buyer's case, an order only", ["buyer", "inspector"], async ({ inspected, world }) => ({
      path: { id: (await caseOn(world.buyer, inspected))?.id ?? "" },
    })),
  ],
  "cases.evidence": [
    one("the buyer's case, gone far", ["buyer", "dealer", "inspector"], async ({ way, world }) => ({
      path: { id: (await caseOn(world.buyer, way.vehicle))?.id ?? "" },
    })),
  ],
  "cases.ofPart": [
    one(
      "an inspection of the buyer's case",
      ["buyer", "inspector"],
      at(({ way }) => way.inspection),
    ),
    one(
      "an item laid before the dealer",
      ["buyer", "dealer"],
      at(({ release }) => release),
    ),
  ],
  "orders.create": [
    one("a listed car", buyers, ({ listed, world }) => ({
      path: { id: listed.vehicle },
      body: { inspector: world.inspector.organization, statement: listed.statement },
    })),
    one("a car not listed", [], ({ draft, statements, world }) => ({
      path: { id: draft.vehicle },
      body: { inspector: world.inspector.organization, statement: statements.first },
    })),
  ],
  "orders.list": [one("one's own", [...buyers, ...inspectors], nothing)],
  "orders.get": [
    one(
      "the buyer's order",
      ["buyer", "inspector"],
      at(({ way }) => way.order),
    ),
  ],
  "orders.accept": [
    one("an order that waits", ["inspector"], ({ orders }) => ({
      path: { id: orders.toAccept },
      revision: 1,
      body: { independent: true },
    })),
  ],
  "orders.decline": [
    one("an order that waits", ["inspector"], ({ orders }) => ({
      path: { id: orders.toDecline },
      revision: 1,
      body: ending,
    })),
  ],
  "orders.cancel": [
    one("an order that waits", ["buyer"], ({ orders }) => ({
      path: { id: orders.toCancel },
      revision: 1,
      body: ending,
    })),
  ],
  "reports.state": [
    one("the dealer's car", ["dealer"], ({ bare }) => ({ path: { id: bare }, body: header })),
  ],
  "reports.inspect": [
    one("an accepted order", ["inspector"], ({ orders }) => ({
      path: { id: orders.toInspect },
      body: header,
    })),
  ],
  "reports.get": [
    one(
      "the dealer's draft",
      ["dealer"],
      at(({ draft }) => draft.id),
    ),
    one(
      "the inspector's report",
      ["inspector"],
      at(({ way }) => way.inspectionReport),
    ),
  ],
  "reports.change": [
    one("the dealer's draft", ["dealer"], async ({ world, draft }) => {
      const { revision } = await world.dealer.does("reports.get", { path: { id: draft.id } });
      return { path: { id: draft.id }, revision, body: { terms: "As seen." } };
    }),
    one("the inspector's draft", ["inspector"], ({ inspectionDraft }) => ({
      path: { id: inspectionDraft },
      revision: 1,
      body: { terms: "As seen." },
    })),
  ],
  "reports.operate": [
    one("the dealer's draft", ["dealer"], ({ draft }) => ({
      path: { id: draft.id },
      body: { operations: [setOperation(headliner("even-wear"), 1)] },
    })),
    one("the inspector's draft", ["inspector"], ({ inspectionDraft }) => ({
      path: { id: inspectionDraft },
      body: { operations: [setOperation(headliner("even-wear"))] },
    })),
  ],
  "reports.readSpoken": [
    one("the dealer's draft", ["dealer"], ({ draft }) => ({
      path: { id: draft.id },
      body: { text: "0:05 The horn works." },
    })),
    one("the inspector's draft", ["inspector"], ({ inspectionDraft }) => ({
      path: { id: inspectionDraft },
      body: { text: "0:05 The horn works." },
    })),
  ],
  "reports.readSheet": [
    one("the dealer's draft", ["dealer"], ({ draft }) => ({
      path: { id: draft.id },
      body: { file: Buffer.from("Item,Result\nHorn,ok\n").toString("base64") },
    })),
    one("the inspector's draft", ["inspector"], ({ inspectionDraft }) => ({
      path: { id: inspectionDraft },
      body: { file: Buffer.from("Item,Result\nHorn,ok\n").toString("base64") },
    })),
  ],
  "reports.settleLines": [
    one("the dealer's draft", ["dealer"], ({ draft }) => ({ path: { id: draft.id }, body: settledHorn })),
    one("the inspector's draft", ["inspector"], ({ inspectionDraft }) => ({
      path: { id: inspectionDraft },
      body: settledHorn,
    })),
  ],
  "reports.table": [
    one("the dealer's draft", ["dealer"], ({ draft }) => ({
      path: { id: draft.id },
      query: { form: "csv" },
    })),
    one("the inspector's report", ["inspector"], ({ way }) => ({
      path: { id: way.inspectionReport },
      query: { form: "xlsx" },
    })),
  ],
  "reports.lookAgain": [one("the inspector's draft", ["inspector"], revisionOfInspection)],
  "reports.seal": [
    one("the dealer's draft", ["dealer"], ({ toSeal }) => ({
      path: { id: toSeal.id },
      revision: toSeal.revision,
    })),
    one("the inspector's draft", ["inspector"], revisionOfInspection),
  ],
  "reports.revise": [
    one(
      "the dealer's sealed report",
      ["dealer"],
      at(({ sealedReport }) => sealedReport),
    ),
    one(
      "the inspector's sealed report",
      ["inspector"],
      at(({ way }) => way.inspectionReport),
    ),
  ],
  "reportVersions.get": [
    one(
      "a published statement",
      everybody,
      at(({ statements }) => statements.first),
    ),
    one(
      "an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.inspection),
    ),
  ],
  "reportVersions.document": [
    one(
      "a published statement",
      everybody,
      at(({ statements }) => statements.first),
    ),
    one(
      "an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.inspection),
    ),
  ],
  "reportVersions.table": [
    one("a published statement", everybody, ({ statements }) => ({
      path: { id: statements.first },
      query: { form: "csv" },
    })),
    one("an inspection", ["buyer", "inspector"], ({ way }) => ({
      path: { id: way.inspection },
      query: { form: "xlsx" },
    })),
  ],
  "comparisons.create": [
    one("two published statements", [...dealers, ...buyers, ...inspectors], ({ statements }) => ({
      path: { id: statements.vehicle },
      body: { a: statements.first, b: statements.second },
    })),
    one("a statement and an inspection", ["buyer", "inspector"], ({ way }) => ({
      path: { id: way.vehicle },
      body: { a: way.statement, b: way.inspection },
    })),
  ],
  "comparisons.list": [one("one's own", [...dealers, ...buyers, ...inspectors], nothing)],
  "comparisons.get": [
    one(
      "of two statements",
      [...dealers, ...buyers, ...inspectors],
      at(({ statements }) => statements.comparison),
    ),
    one(
      "with an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.comparison),
    ),
  ],
  "comparisons.document": [
    one(
      "of two statements",
      [...dealers, ...buyers, ...inspectors],
      at(({ statements }) => statements.comparison),
    ),
    one(
      "with an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.comparison),
    ),
  ],
  "comparisons.answer": [
    one(
      "of two statements",
      [...dealers, ...buyers, ...inspectors],
      at(({ statements }) => statements.comparison),
    ),
    one(
      "with an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.comparison),
    ),
  ],
  "comparisons.paper": [
    one(
      "of two statements",
      [...dealers, ...buyers, ...inspectors],
      at(({ statements }) => statements.comparison),
    ),
    one(
      "with an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.comparison),
    ),
  ],
  "comparisons.cost": [
    one(
      "the buyer's comparison",
      ["buyer"],
      at(({ way }) => way.comparison),
    ),
  ],
  "releases.create": [
    one("the buyer's comparison", ["buyer"], ({ way, entries }) => ({
      path: { id: way.comparison },
      body: { entries: [entries.tire] },
    })),
  ],
  "releases.list": [one("one's own", [...buyers, ...dealers, ...inspectors], nothing)],
  "releases.get": [
    one(
      "one put to the inspector",
      ["buyer", "dealer", "inspector"],
      at(({ askedRelease }) => askedRelease),
    ),
    one(
      "a released item",
      ["buyer", "dealer"],
      at(({ release }) => release),
    ),
  ],
  "releases.move": [
    one("one put to the inspector", ["inspector"], ({ askedRelease }) => ({
      body: { lines: [{ id: askedRelease, revision: 3 }], move: "revise" },
    })),
    one("one the buyer lets go", ["buyer"], ({ askedRelease }) => ({
      body: { lines: [{ id: askedRelease, revision: 4 }], move: "withdraw" },
    })),
    one("a released item", ["dealer"], ({ release }) => ({
      body: { lines: [{ id: release, revision: 1 }], move: "contest", words: "It sounds." },
    })),
  ],
  "receipts.get": [
    one(
      "a listed statement",
      everybody,
      at(({ way }) => way.statement),
    ),
    one(
      "an inspection",
      ["buyer", "inspector"],
      at(({ way }) => way.inspection),
    ),
  ],
  "exports.get": ownFirms.map((who) =>
    one(
      `the ${who}'s`,
      [who],
      at(({ world }) => world[who].organization),
    ),
  ),
  "firmHandbook.get": [
    one(
      "the dealer's firm",
      ["dealer"],
      at(({ world }) => world.dealer.organization),
    ),
    one(
      "the inspector's firm",
      ["inspector"],
      at(({ world }) => world.inspector.organization),
    ),
  ],
  "firmHandbook.put": [
    one("the inspector's firm", ["inspector"], ({ world }) => ({
      path: { id: world.inspector.organization },
      revision: 0,
      body: { limits: { "tire-age.caution-years": 5 }, makers: [] },
    })),
    one("the dealer's firm", ["dealer"], ({ world }) => ({
      path: { id: world.dealer.organization },
      revision: 0,
      body: { limits: {}, makers: [] },
    })),
  ],
  "firmHistory.get": [
    one(
      "the inspector's firm",
      ["inspector"],
      at(({ world }) => world.inspector.organization),
    ),
  ],
  "firmInstruments.get": [
    one(
      "the dealer's firm",
      ["dealer"],
      at(({ world }) => world.dealer.organization),
    ),
    one(
      "the inspector's firm",
      ["inspector"],
      at(({ world }) => world.inspector.organization),
    ),
  ],
  "firmInstruments.put": [
    one("the inspector's firm", ["inspector"], ({ world }) => ({
      path: { id: world.inspector.organization },
      revision: 0,
      body: {
        instruments: [
          {
            id: "tread",
            name: "Brass tread gauge",
            kind: "tread depth gauge",
            resolution: { value: 0.5, unit: "1/32in" },
            retired: false,
          },
        ],
      },
    })),
    one("the dealer's firm", ["dealer"], ({ world }) => ({
      path: { id: world.dealer.organization },
      revision: 0,
      body: { instruments: [] },
    })),
  ],
  "costTable.get": [one("one's own", [...buyers, ...inspectors], nothing)],
  "costTable.history": [one("one's own", [...buyers, ...inspectors], nothing)],
  "costTable.offered": [one("one's own", buyers, nothing)],
  "costTable.put": [
    one("one's own", [...buyers, ...inspectors], () => ({
      revision: 0,
      body: { format: "evenhand-cost-table", version: 1, name: "Own", currency: "USD", rows: [] },
    })),
  ],
  "lookFirst.get": [one("a listed car", buyers, ({ listed }) => ({ path: { id: listed.vehicle } }))],
  "landedCost.get": [one("the buyer's case", ["buyer"], ofCase)],
  "landedCost.history": [one("the buyer's case", ["buyer"], ofCase)],
  "landedCost.put": [
    one("the buyer's case", ["buyer"], async (scene) => ({
      ...(await ofCase(scene)),
      revision: 0,
      body: { lines: {}, trip: null, currency: null, rates: [], limit: null },
    })),
  ],
  "beforeMoney.get": [one("the buyer's case", ["buyer"], ofCase)],
  "beforeMoney.put": [
    one("the buyer's case", ["buyer"], async (scene) => ({
      ...(await ofCase(scene)),
      revision: 0,
      body: { lines: {} },
    })),
  ],
  "transportRates.get": [one("one's own", buyers, nothing)],
  "transportRates.put": [
    one("one's own", buyers, () => ({
      revision: 0,
      body: { currency: "USD", unit: "mi", per: "trip", bands: [], source: "quotes" },
    })),
  ],
  "summaries.create": [
    one("the buyer's comparison", ["buyer"], ({ way }) => ({ path: { id: way.comparison }, body: {} })),
  ],
  "summaries.list": [one("one's own", buyers, nothing)],
  "summaries.get": [
    one(
      "the buyer's summary",
      ["buyer"],
      at(({ summaries }) => summaries.seen),
    ),
  ],
  "summaries.document": [
    one(
      "the buyer's summary",
      ["buyer"],
      at(({ summaries }) => summaries.seen),
    ),
  ],
  "summaries.paper": [
    one(
      "the buyer's summary",
      ["buyer"],
      at(({ summaries }) => summaries.seen),
    ),
  ],
  "summaries.draft": [
    one("the buyer's summary", ["buyer"], ({ summaries }) => ({
      path: { id: summaries.seen },
      revision: 0,
      body: { decision: null, answers: [], price: "", conditions: "" },
    })),
  ],
  "summaries.decide": [
    one("the buyer's summary", ["buyer"], ({ summaries }) => ({
      path: { id: summaries.toDecide },
      body: { decision: "decline", hash: summaries.hash },
    })),
  ],
  "decisions.list": [one("one's own", [...buyers, ...dealers], nothing)],
  "decisions.get": [
    one(
      "a counter-offer",
      ["buyer", "dealer"],
      at(({ counter }) => counter),
    ),
  ],
  "decisions.answer": [
    one("a counter-offer", ["dealer"], ({ counter }) => ({
      path: { id: counter },
      revision: 1,
      body: { answer: "accept" },
    })),
  ],
  "decisions.reply": [
    one("a counter-offer", ["buyer"], ({ counterToWithdraw }) => ({
      path: { id: counterToWithdraw },
      revision: 1,
      body: { reply: "withdraw" },
    })),
  ],
  "notices.list": [one("one's own", everybody, nothing)],
  "notices.choice": [one("one's own", everybody, nothing)],
  "notices.choose": [one("one's own", everybody, () => ({ body: { mail: "at-once" } }))],
  "notices.read": [
    one("one's own", everybody, () => ({ body: { upTo: "01920000-0000-7000-8000-000000000000" } })),
  ],
};

/** A served route that is not here has nobody to ask it, and fails. */
export function variantsOf(route: RouteId): readonly Variant[] {
  const found =
    variants[route] ??
    bookingVariants[route] ??
    handOverVariants[route] ??
    evidenceVariants[route] ??
    releasePictureVariants[route];
  if (found === undefined) throw new Error(`No request is prepared for ${route}.`);
  return found;
}
