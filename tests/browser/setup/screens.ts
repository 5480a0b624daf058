import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { Person } from "../../api/setup/person.ts";
import type { Service } from "../../api/setup/service.ts";
import { acceptOrder, header, order, setOperation, treadDepth } from "../../api/setup/story.ts";
import { carryDemoCar } from "./hand-over-scene.ts";
import { enterLandedCost } from "./money-scene.ts";
import { makeOffers } from "./offer-scene.ts";
import { stateDemoCar, type compareDemoCar, type DemoPeople } from "./demo-car.ts";
import { picturedCar } from "./pictured-car.ts";

export interface Screen {
  readonly name: string;
  readonly by: Person;
  readonly address: string;
  /** Done on the page before the picture or the check. */
  readonly before?: (page: Page) => Promise<void>;
  /** `false`: only what is in sight. */
  readonly whole?: boolean;
  /** A state of what stands here in another state too: `npm run test:browser` looks at both, every run at the other. */
  readonly atLength?: true;
}

/** Has a file of the fixtures read on the page that reads them. */
async function readFile(page: Page, name: string): Promise<void> {
  await page.getByLabel(/Where the recording can be watched/).fill("https://video.example/walk");
  const file = fileURLToPath(new URL(`../../../fixtures/${name}`, import.meta.url));
  await page.locator("input[type=file]").setInputFiles(file);
  await page.getByRole("heading", { name: "What was read" }).waitFor();
}

type Compared = Awaited<ReturnType<typeof compareDemoCar>>;
type Stated = Awaited<ReturnType<typeof stateDemoCar>>;

/** Entries that may be laid before the dealer, as the buyer's comparison has them. */
async function disputed(buyer: Person, comparison: string): Promise<number[]> {
  const document = await buyer.does("comparisons.document", { path: { id: comparison } });
  return document.order.filter((at) => {
    const entry = document.entries[at];
    return entry?.outcome === "differ" && entry.direction === "stated-better";
  });
}

/** Lines on three ways: one that waits for the dealer, one put to the inspector, one the dealer offers money for. @returns the first */
async function settleSome({ dealer, buyer }: DemoPeople, comparison: string): Promise<number> {
  const entries = (await disputed(buyer, comparison)).slice(0, 4);
  const { items } = await buyer.does("releases.create", { path: { id: comparison }, body: { entries } });
  const [, , asked, offered] = items;
  const words = "My shop measured it in April, and it was within the maker’s limit.";
  const evidence = [
    { kind: "document", name: "Bill of 14 April" },
    { kind: "reading", of: "the same place", value: 2.4, unit: "mm", instrument: "caliper" },
  ];
  await dealer.does("releases.move", { body: { lines: [asked], move: "contest", words, evidence } });
  const contested = { id: asked?.id, revision: 2 };
  await buyer.does("releases.move", { body: { lines: [contested], move: "ask", words: "Is it so?" } });
  const price = { minor: 85_000, currency: "USD" };
  await dealer.does("releases.move", { body: { lines: [offered], move: "offer-price", price } });
  return entries[0] ?? 0;
}

/** Every screen of the application, with something on it. */
export async function screens(
  service: Service,
  people: DemoPeople,
  car: Compared,
  other: Stated,
): Promise<readonly Screen[]> {
  const { dealer, buyer, inspector } = people;
  const nobody = new Person(buyer.url);
  const first = await settleSome(people, car.comparison);
  const summary = await buyer.does("summaries.create", { path: { id: car.comparison }, body: {} });
  const { id: asked } = await buyer.does("orders.create", {
    path: { id: other.vehicle },
    body: { inspector: inspector.organization, statement: other.statement },
  });
  const { id: revised } = await dealer.does("reports.revise", { path: { id: other.report } });
  await dealer.does("reports.operate", {
    path: { id: revised },
    body: { operations: [setOperation(treadDepth("spare", 6, 6, 6))] },
  });
  const { vehicle, statement } = await stateDemoCar(people, "windrow");
  const accepted = await order(buyer, inspector, vehicle, statement);
  await acceptOrder(inspector, accepted);
  const { id: walked } = await inspector.does("reports.inspect", { path: { id: accepted }, body: header });
  const money = await enterLandedCost(buyer, car.vehicle);
  const carried = await carryDemoCar(service, people);
  await makeOffers(people);
  const pictured = await picturedCar(service, people);
  const walk = `/reports/${walked}?stage=daylight&open=wheels.tread-depth%40left-front`;
  const comparison = `/comparisons/${car.comparison}`;
  return [
    { name: "sign-in", by: nobody, address: "/sign-in" },
    { name: "home-dealer", by: dealer, address: "/" },
    { name: "home-buyer", by: buyer, address: "/" },
    { name: "home-inspector", by: inspector, address: "/" },
    { name: "cars", by: buyer, address: "/cars" },
    { name: "cars-none", by: buyer, address: "/cars?q=zeppelin", atLength: true },
    { name: "new-car", by: dealer, address: "/cars/new" },
    { name: "car-dealer", by: dealer, address: `/cars/${car.vehicle}` },
    { name: "car-buyer", by: buyer, address: `/cars/${car.vehicle}` },
    { name: "statement", by: buyer, address: `/report-versions/${car.statement}`, whole: false },
    {
      name: "statement-silent",
      atLength: true,
      by: buyer,
      address: `/report-versions/${car.statement}?show=silent`,
      whole: false,
    },
    {
      name: "sheet",
      by: dealer,
      address: `/reports/${revised}?section=wheels&open=wheels.tread-depth%40spare`,
      whole: false,
    },
    { name: "sheet-visit", by: dealer, address: `/reports/${revised}` },
    { name: "report-pictures", by: buyer, address: `/report-versions/${pictured.inspection}/pictures` },
    { name: "draft-pictures", by: dealer, address: `/reports/${revised}/pictures` },
    { name: "car-pictures", by: buyer, address: `/cars/${pictured.vehicle}/pictures`, atLength: true },
    { name: "case-pictures", by: buyer, address: `/cases/${pictured.case}/pictures`, atLength: true },
    { name: "case-pictured", by: buyer, address: `/cases/${pictured.case}` },
    {
      name: "reading-spoken",
      by: dealer,
      address: `/reports/${revised}/reading`,
      before: (page) => readFile(page, "spoken/tuned/01-coupe-engineer/captions.vtt"),
    },
    {
      name: "reading-sheet",
      atLength: true,
      by: inspector,
      address: `/reports/${walked}/reading`,
      before: async (page) => {
        await readFile(page, "sheets/tuned/pass-fail/sheet.xlsx");
        await page.getByRole("button", { name: "Change" }).first().click();
      },
    },
    { name: "walk-gate", by: inspector, address: `/reports/${walked}`, atLength: true },
    {
      name: "walk",
      by: inspector,
      address: walk,
      before: async (page) => {
        await page.getByRole("button", { name: "I have read these: begin" }).click();
        await page
          .getByRole("button", { name: /of these work$/ })
          .first()
          .waitFor();
        await page
          .getByRole("button", { name: /Tire faults/ })
          .first()
          .click();
      },
    },
    { name: "help", by: inspector, address: "/help" },
    { name: "order-asked", by: inspector, address: `/orders/${asked}` },
    { name: "order-reported", by: buyer, address: `/orders/${car.order}` },
    { name: "comparison", by: buyer, address: comparison },
    {
      name: "comparison-matter",
      atLength: true,
      by: buyer,
      address: comparison,
      before: (page) =>
        page
          .getByRole("button", { name: /^Show its \d+ lines?: / })
          .first()
          .click(),
    },
    {
      name: "comparison-pictures",
      by: buyer,
      address: `/comparisons/${pictured.comparison}`,
      before: async (page) => {
        await page
          .getByRole("button", { name: /^Show its \d+ lines?: / })
          .first()
          .click();
        await page.waitForLoadState("networkidle");
      },
    },
    {
      name: "comparison-laying",
      by: buyer,
      address: comparison,
      before: async (page) => {
        const lay = page.getByRole("button", { name: /^Lay before the dealer: / }).first();
        await lay.click();
        await page
          .getByRole("button", { name: /^Lay th(is item|ese \d+ items) before the dealer$/ })
          .waitFor();
      },
    },
    { name: "comparison-lines", by: buyer, address: `${comparison}?view=items`, whole: false },
    {
      name: "comparison-open",
      by: buyer,
      address: `${comparison}?open=${first}`,
      whole: false,
      atLength: true,
    },
    {
      name: "comparison-sheet",
      atLength: true,
      by: buyer,
      address: `${comparison}?order=sheet&section=engine`,
      whole: false,
    },
    { name: "comparison-whole", by: buyer, address: `${comparison}?view=whole` },
    { name: "comparison-checks", by: buyer, address: `${comparison}?view=checks`, whole: false },
    {
      name: "comparison-choosing",
      atLength: true,
      by: buyer,
      address: comparison,
      whole: false,
      before: async (page) => {
        await page.getByRole("button", { name: "Choose items for the dealer" }).click();
        await page.getByRole("checkbox").nth(2).check();
      },
    },
    { name: "released-dealer", by: dealer, address: "/released" },
    { name: "released-buyer", by: buyer, address: "/released" },
    { name: "released-inspector", by: inspector, address: "/released", atLength: true },
    { name: "summary", by: buyer, address: `/summaries/${summary.id}`, atLength: true },
    {
      name: "summary-approve",
      by: buyer,
      address: `/summaries/${summary.id}`,
      whole: false,
      before: async (page) => {
        await page.getByRole("radio", { name: /^Approve/ }).check();
        await page.getByRole("heading", { name: "Decide", exact: true }).scrollIntoViewIfNeeded();
      },
    },
    { name: "landed-cost", by: buyer, address: `/cases/${money}/landed-cost` },
    { name: "decisions", by: buyer, address: "/decisions" },
    { name: "decisions-dealer", by: dealer, address: "/decisions", atLength: true },
    { name: "costs", by: buyer, address: "/costs" },
    { name: "case-bought", by: buyer, address: `/cases/${carried.caseId}` },
    { name: "before-money", by: buyer, address: `/cases/${carried.caseId}/before-money` },
    { name: "hand-over", by: buyer, address: `/hand-overs/${carried.id}` },
    { name: "hand-over-dealer", by: dealer, address: `/hand-overs/${carried.id}`, atLength: true },
    {
      name: "carry",
      by: nobody,
      address: `/carry/${carried.token}`,
      before: async (page) => {
        const hood = page.getByRole("listitem", { name: "hood", exact: true });
        await hood.getByRole("button", { name: "Note damage" }).click();
        await hood.getByRole("button", { name: "Add a fault" }).waitFor();
      },
    },
    { name: "organization", by: dealer, address: "/organization" },
    { name: "notices", by: dealer, address: "/notices" },
    {
      name: "account",
      by: dealer,
      address: "/account",
      before: async (page) => {
        await page.getByRole("radio", { name: /^Once a day/ }).check();
      },
    },
    { name: "sessions", by: dealer, address: "/sessions" },
    { name: "forgotten-password", by: nobody, address: "/forgotten-password" },
    { name: "handbook", by: buyer, address: "/handbook", whole: false },
    {
      name: "own-instruments",
      by: inspector,
      address: "/instruments",
      before: async (page) => {
        await page.getByRole("button", { name: "Add an instrument" }).click();
      },
    },
    { name: "not-found", by: buyer, address: "/cars/0197e6a1-0000-7000-8000-000000000000" },
  ];
}
