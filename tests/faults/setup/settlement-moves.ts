import type { ReleasePicture } from "@evenhand/shared/http/releases";
import type { SettlementState } from "@evenhand/shared/settlement";
import { type BookingWorld, choose, findOffers } from "../../api/setup/booking-story.ts";
import { query } from "../../api/setup/database.ts";
import type { Person } from "../../api/setup/person.ts";
import { photograph } from "../../api/setup/pictures.ts";
import {
  acceptOrder,
  entryAt,
  header,
  headliner,
  inspected,
  order,
  readComparison,
  seal,
  treadDepth,
  write,
} from "../../api/setup/story.ts";
import type { Move, Press, Step } from "./moves.ts";

const places = {
  horn: ["electrics.horn", ""],
  leftFront: ["wheels.tread-depth", "left-front"],
  rightFront: ["wheels.tread-depth", "right-front"],
  leftRear: ["wheels.tread-depth", "left-rear"],
  rightRear: ["wheels.tread-depth", "right-rear"],
  headliner: ["interior.headliner", ""],
} as const;
type Which = keyof typeof places;
const every = ["horn", "leftFront", "rightFront", "leftRear", "rightRear", "headliner"] as const;

const findings = [
  ...inspected.filter(({ item, position }) => item !== "interior.headliner" && position !== "right-front"),
  headliner("spent"),
  treadDepth("right-front", 1, 1, 1),
  treadDepth("left-rear", 1, 1, 1),
  treadDepth("right-rear", 1, 1, 1),
];

/** Of the lines: a thread each, an entry in each of two or three records, a job each where somebody owes an answer. */
const moving = (lines: number, more: Readonly<Record<string, number>>) => ({
  release: 0,
  settlement_move: lines,
  record_chain: 0,
  idempotency: 1,
  ...more,
});
/** News and a letter each, with a job that sends it; and the jobs that look at lines when they are due. */
const told = (people: number, looks = 0) => ({ notice: people, mail: people, "job in line": people + looks });

/**
 * A car with six lines in dispute, and everything that is done about them, in its order.
 *
 * @param untilReady waits until the service has looked at a photograph
 */
export async function settlementMoves(
  world: BookingWorld,
  databaseUrl: string,
  untilReady: (picture: ReleasePicture) => Promise<void>,
): Promise<readonly Step[]> {
  const { buyer, dealer, inspector, vehicle } = world;
  const orderId = await order(buyer, inspector, vehicle, world.statement);
  await acceptOrder(inspector, orderId);
  const report = await inspector.does("reports.inspect", { path: { id: orderId }, body: header });
  const sealed = await seal(inspector, report.id, await write(inspector, report.id, findings));
  const comparison = sealed.comparison ?? "";
  const read = await readComparison(buyer, comparison);
  const entries = every.map((which) => entryAt(read, places[which][0], places[which][1]));

  const lines = async () => {
    const rows = await query<{ id: string; item: string; position: string; revision: number; state: string }>(
      databaseUrl,
      `SELECT id, revision, state, snapshot->'entry'->>'item' AS item, snapshot->'entry'->>'position' AS position
       FROM release WHERE vehicle_id = $1`,
      [vehicle],
    );
    return (which: Which) => {
      const row = rows.find(
        ({ item, position }) => item === places[which][0] && position === places[which][1],
      );
      if (row === undefined) throw new Error(`${which} is not laid`);
      return row;
    };
  };
  /** As the buyer reads it. */
  const state = async (which: Which): Promise<string> => {
    const { items } = await buyer.does("releases.list", { query: { comparison } });
    const id = items.length === 0 ? "" : (await lines())(which).id;
    return items.find((item) => item.id === id)?.state ?? "not laid";
  };
  const press = (who: Person, which: readonly Which[], body: object) => async () => {
    const line = await lines();
    const meant = which.map((one) => ({ id: line(one).id, revision: line(one).revision }));
    return { who, route: "releases.move" as const, asked: { body: { lines: meant, ...body } } };
  };
  const move = (
    who: Person,
    which: readonly [Which, ...Which[]],
    body: { readonly move: string; readonly words?: string; readonly [more: string]: unknown },
    leaves: SettlementState,
    rows: Readonly<Record<string, number>>,
  ): Move => ({
    name: `${body.move} ${which.join(", ")}`,
    press: press(who, which, body),
    rows: moving(which.length, rows),
    stands: () => state(which[0]),
    leaves,
  });
  const evidence = [{ kind: "document", name: "Bill of the horn", says: null }];
  const disputed = ["horn", "leftFront", "rightFront"] as const;
  const atHorn = async () => ({ path: { id: (await lines())("horn").id } });
  const waiting = async () => (await dealer.does("releasePictures.list", await atHorn())).items;
  const addPhotograph: Move = {
    name: "add a photograph of the horn",
    press: async () => {
      const asked = { ...(await atHorn()), bytes: await photograph() };
      // Its bytes are kept before anything is noted of them, and are there once however often they come.
      const { id } = await dealer.does("releasePictures.add", asked);
      await dealer.does("releasePictures.remove", { path: { id } });
      return { who: dealer, route: "releasePictures.add", asked };
    },
    rows: { release_picture: 1, "job in line": 1 },
    // A worker that finds it done does nothing.
    again: { "job in line": 1 },
    stands: async () => `${String((await waiting()).length)} waits`,
    leaves: "1 waits",
  };
  const contest = move(dealer, disputed, { move: "contest" }, "contested", {
    release_picture: 0,
    record_entry: 6,
    ...told(1, 3),
  });
  const contestWithPhotograph = async (): Promise<Press> => {
    const [picture] = await waiting();
    if (picture === undefined) throw new Error("no photograph waits to be named");
    await untilReady(picture);
    const { id, sha256 } = picture;
    const shown = [...evidence, { kind: "photograph", id, sha256 }];
    return press(dealer, disputed, { move: "contest", words: "Measured anew.", evidence: shown })();
  };
  const moves: readonly Step[] = [
    {
      name: "lay six lines before the dealer",
      press: () =>
        Promise.resolve({
          who: buyer,
          route: "releases.create" as const,
          asked: { path: { id: comparison }, body: { entries } },
        }),
      rows: {
        release: 6,
        record_entry: 12,
        record_chain: 0,
        idempotency: 1,
        ...told(1, 6),
      },
      stands: () => state("horn"),
      leaves: "released",
    },
    addPhotograph,
    { ...contest, press: contestWithPhotograph, short: "commit" },
    move(buyer, disputed, { move: "ask", words: "Is it so?" }, "asked", {
      record_entry: 9,
      ...told(2, 3),
    }),
    move(inspector, ["leftFront"], { move: "stand", words: "I measured it twice." }, "finding-stands", {
      // Upheld, it takes the car off the list.
      vehicle: 0,
      listing_change: 1,
      record_entry: 4,
      ...told(2),
    }),
    move(inspector, ["rightFront"], { move: "revise", words: "The wrong row." }, "revising", {
      record_entry: 3,
      ...told(2, 1),
    }),
    move(inspector, ["horn"], { move: "look-again" }, "looking-again", {
      brief: 1,
      record_entry: 3,
      ...told(2, 1),
    }),
    move(dealer, ["leftRear"], { move: "accept", words: "It is worn." }, "accepted", {
      record_entry: 2,
      ...told(1),
    }),
    move(
      dealer,
      ["headliner"],
      { move: "offer-price", price: { minor: 85_000, currency: "USD" } },
      "price-offered",
      { record_entry: 2, ...told(1, 1) },
    ),
    move(buyer, ["headliner"], { move: "refuse", words: "Too little." }, "refused", {
      record_entry: 2,
      ...told(1, 1),
    }),
    move(
      dealer,
      ["headliner"],
      { move: "offer-remedy", remedy: "repair", words: "A new one." },
      "remedy-offered",
      { record_entry: 2, ...told(1, 1) },
    ),
    move(buyer, ["headliner"], { move: "take" }, "promised", {
      record_entry: 2,
      ...told(1, 1),
    }),
    move(dealer, ["headliner"], { move: "prove", words: "Done.", evidence }, "proved", {
      record_entry: 2,
      ...told(1, 1),
    }),
    move(buyer, ["headliner"], { move: "confirm" }, "settled", { record_entry: 2, ...told(1) }),
  ];
  const lapse: Step = {
    name: "lapse of the right rear tire",
    due: async () => {
      const { id } = (await lines())("rightRear");
      await query(databaseUrl, "UPDATE release SET deadline = '2020-01-01' WHERE id = $1", [id]);
      return { queue: "settlement", id };
    },
    about: /release/,
    rows: { release: 0, settlement_move: 1, record_entry: 2, record_chain: 0, notice: 2, mail: 2 },
    stands: () => state("rightRear"),
    leaves: "finding-stands",
  };
  return [...moves, lapse, ...lookAgain(world, databaseUrl)];
}

/** The short visit that was agreed, held and asked for. */
function lookAgain({ buyer, vehicle }: BookingWorld, databaseUrl: string): readonly Move[] {
  const newest = async () => {
    const [row] = await query<{ id: string; revision: number; state: string }>(
      databaseUrl,
      "SELECT id, revision, state FROM appointment ORDER BY id DESC LIMIT 1",
    );
    return row ?? { id: "", revision: 0, state: "none" };
  };
  const stands = async () => (await newest()).state;
  return [
    {
      name: "hold an hour for the look that was agreed",
      press: async () => {
        const [offer] = (await findOffers(buyer, vehicle)).offers;
        const body = { vehicles: [vehicle], offer: offer === undefined ? null : choose(offer) };
        return { who: buyer, route: "appointments.hold", asked: { body } };
      },
      rows: {
        appointment: 1,
        appointment_car: 1,
        appointment_bay: 1,
        appointment_move: 1,
        idempotency: 1,
        "job in line": 1,
      },
      stands,
      leaves: "held",
    },
    {
      name: "ask for it",
      press: async () => {
        const { id, revision } = await newest();
        const { terms } = await buyer.does("appointments.get", { path: { id } });
        const asked = { path: { id }, revision, body: { terms: terms.version } };
        return { who: buyer, route: "appointments.request", asked };
      },
      rows: {
        appointment: 0,
        appointment_car: 0,
        appointment_bay: 0,
        appointment_move: 1,
        inspection_order: 1,
        payment_entry: 1,
        record_entry: 3,
        record_chain: 0,
        idempotency: 1,
        ...told(1, 1),
      },
      stands,
      leaves: "requested",
    },
  ];
}
