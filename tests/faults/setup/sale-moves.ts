import { query } from "../../api/setup/database.ts";
import {
  collected,
  delivered,
  inDays,
  signing,
  soundFindings,
  terms,
} from "../../api/setup/hand-over-story.ts";
import { caseOn } from "../../api/setup/homes.ts";
import { inspect, summarize } from "../../api/setup/story.ts";
import type { World } from "../../api/setup/world.ts";
import type { Move, Step } from "./moves.ts";

const usd = (minor: number) => ({ minor, currency: "USD" });
/** News and a letter each, with a job that sends it. */
const told = (people: number) => ({ notice: people, mail: people, "job in line": people });

type Sale = {
  readonly world: World;
  readonly databaseUrl: string;
  readonly comparison: string;
  readonly vehicle: string;
};
type Row = { readonly id: string; readonly revision: number; readonly state: string };

/** A car that is offered for, four times, until the dealer takes it; and its way to its buyer. */
export async function saleMoves(world: World, databaseUrl: string): Promise<readonly Step[]> {
  const { comparison, vehicle } = await inspect(world);
  const sale = { world, databaseUrl, comparison, vehicle };
  return [...offerMoves(sale), ...handOverMoves(sale)];
}

async function newest({ databaseUrl, vehicle }: Sale, table: string, state: string): Promise<Row> {
  const text = `SELECT id, revision, ${state} AS state FROM ${table} WHERE vehicle_id = $1 ORDER BY id DESC LIMIT 1`;
  const [row] = await query<Row>(databaseUrl, text, [vehicle]);
  return row ?? { id: "", revision: 0, state: "none" };
}

function offerMoves(sale: Sale): readonly Step[] {
  const { buyer, dealer } = sale.world;
  const state = "concat_ws(' ', decision, answer, reply, ended)";
  const stands = async () => (await newest(sale, "decision", state)).state;
  const offer: Move = {
    name: "offer a price",
    press: async () => {
      const { id, hash } = await summarize(buyer, sale.comparison);
      const body = { decision: "counter", hash, price: usd(1_900_000), until: inDays(3) };
      return { who: buyer, route: "summaries.decide", asked: { path: { id }, body } };
    },
    rows: { decision: 1, record_entry: 2, record_chain: 0, idempotency: 1, ...told(1) },
    stands,
    leaves: "counter",
  };
  const answered = { decision: 0, record_entry: 2, record_chain: 0, idempotency: 1, ...told(1) };
  const answer = (
    body: { readonly answer: string; readonly [more: string]: unknown },
    leaves: string,
  ): Move => ({
    name: `${body.answer} it, the dealer`,
    press: async () => {
      const { id, revision } = await newest(sale, "decision", state);
      return { who: dealer, route: "decisions.answer", asked: { path: { id }, revision, body } };
    },
    rows: answered,
    stands,
    leaves,
  });
  const reply = (move: string, leaves: string): Move => ({
    name: `${move} it, the buyer`,
    press: async () => {
      const { id, revision } = await newest(sale, "decision", state);
      return {
        who: buyer,
        route: "decisions.reply",
        asked: { path: { id }, revision, body: { reply: move } },
      };
    },
    rows: answered,
    stands,
    leaves,
  });
  const lapse: Step = {
    name: "lapse of the offer",
    due: async () => {
      const { id } = await newest(sale, "decision", state);
      await query(sale.databaseUrl, "UPDATE decision SET stands_until = '2020-01-01' WHERE id = $1", [id]);
      return { queue: "offer-sweep", id: "offer-sweep" };
    },
    about: /decision/,
    rows: { decision: 0, record_entry: 2, record_chain: 0, notice: 2, mail: 2 },
    stands,
    leaves: "counter lapsed",
  };
  const back = { answer: "counter", price: usd(1_950_000), until: inDays(2) };
  return [
    offer,
    answer(back, "counter counter"),
    reply("refuse", "counter counter refuse"),
    offer,
    reply("withdraw", "counter withdrawn"),
    offer,
    lapse,
    offer,
    { ...answer({ answer: "accept", note: "Agreed." }, "counter accept"), short: "committed" },
  ];
}

function handOverMoves(sale: Sale): readonly Step[] {
  const { buyer, nobody } = sale.world;
  const state = async () => newest(sale, "hand_over", "state");
  const stands = async () => (await state()).state;
  const arrange: Move = {
    name: "invite a carrier",
    press: async () => {
      const id = (await caseOn(buyer, sale.vehicle))?.id ?? "";
      const body = { carrier: "Long Valley Haulage", terms, expires: inDays(20) };
      return { who: buyer, route: "handOvers.arrange", asked: { path: { id }, body } };
    },
    rows: { hand_over: 1, record_entry: 2, record_chain: 0 },
    // The secret is gone with the answer; whoever asks again is told which one stands, and makes a new link for it.
    repeat: 409,
    stands,
    leaves: "arranged",
  };
  const moved = { hand_over: 0, hand_over_move: 1, record_chain: 0 };
  const note = (
    name: string,
    route: "handOvers.callOff" | "handOvers.signOff" | "handOvers.openClaim" | "handOvers.closeClaim",
    records: number,
    leaves: string,
  ): Move => ({
    name,
    press: async () => {
      const { id, revision } = await state();
      return { who: buyer, route, asked: { path: { id }, revision, body: { note: "As agreed." } } };
    },
    rows: { ...moved, idempotency: 1, record_entry: records },
    stands,
    leaves,
  });
  const sign = (name: string, report: ReturnType<typeof collected>, leaves: string): Move => ({
    name,
    press: async () => {
      const path = { id: (await state()).id };
      const { token } = await buyer.does("handOvers.renewLink", { path, body: { expires: inDays(9) } });
      const body = await signing({ nobody }, token, report);
      return { who: nobody, route: "carriedHandOvers.sign", asked: { path: { token }, body } };
    },
    rows: { ...moved, hand_over_report: 1, record_entry: 2, ...told(2) },
    stands,
    leaves,
  });
  return [
    arrange,
    note("call it off", "handOvers.callOff", 2, "called-off"),
    arrange,
    sign("sign what left", collected(soundFindings()), "collected"),
    { ...sign("sign what arrived", delivered(soundFindings()), "delivered") },
    note("take it as it arrived", "handOvers.signOff", 1, "signed-off"),
    note("open a claim", "handOvers.openClaim", 1, "claim-open"),
    note("close the claim", "handOvers.closeClaim", 1, "claim-closed"),
  ];
}
