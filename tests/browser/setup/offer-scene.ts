import { carTo, inDays } from "../../api/setup/hand-over-story.ts";
import { summarize } from "../../api/setup/story.ts";
import type { DemoPeople } from "./demo-car.ts";

const usd = (minor: number) => ({ minor, currency: "USD" });

/** Two counter-offers of the buyer: one that waits for the dealer, and one the dealer answered with another. */
export async function makeOffers(people: DemoPeople): Promise<void> {
  const { buyer, dealer } = people;
  const offered = async (minor: number, conditions: string) => {
    const { id, hash } = await summarize(buyer, (await carTo(people, "read")).comparison);
    const body = { decision: "counter", hash, price: usd(minor), conditions, until: inDays(5) };
    return (await buyer.does("summaries.decide", { path: { id }, body })).id;
  };
  await offered(4_150_000, "With a horn that sounds at both buttons.");
  const id = await offered(3_900_000, "Delivered to the yard gate.");
  const body = { answer: "counter", price: usd(4_300_000), conditions: "As it stands.", until: inDays(3) };
  await dealer.does("decisions.answer", { path: { id }, revision: 1, body });
}
