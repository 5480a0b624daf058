import { Injectable } from "@nestjs/common";
import type { Offers } from "@evenhand/shared/http/booking";
import { Clock } from "../../platform/clock/index.ts";
import { OfferSearch, type Search } from "./offer-search.ts";

const DAY = 86_400_000;
const shown = 10;

/** One search under way, and the next, for everybody who came since it began. */
type Line = { running: Promise<Offers>; next: Promise<Offers> | null };

/**
 * Other hours for whoever came too late. A crowd at one slot asks for the same: each gets an answer that was looked for after
 * their refusal, and one search answers all who wait for it.
 */
@Injectable()
export class FreshOffers {
  private readonly lines = new Map<string, Line>();
  constructor(
    private readonly search: OfferSearch,
    private readonly clock: Clock,
  ) {}

  async find(search: Search): Promise<Offers> {
    const key = JSON.stringify(search);
    const line = this.lines.get(key);
    if (line === undefined) return this.begin(key, search);
    line.next ??= this.after(line.running, key, search);
    return line.next;
  }

  private async after(running: Promise<Offers>, key: string, search: Search): Promise<Offers> {
    await Promise.allSettled([running]);
    return this.begin(key, search);
  }

  private begin(key: string, search: Search): Promise<Offers> {
    const line: Line = { running: this.look(search), next: null };
    this.lines.set(key, line);
    void this.endOf(key, line);
    return line.running;
  }

  private async endOf(key: string, line: Line): Promise<void> {
    await Promise.allSettled([line.running]);
    if (this.lines.get(key) === line && line.next === null) this.lines.delete(key);
  }

  private look(search: Search): Promise<Offers> {
    const now = this.clock.now().getTime();
    return this.search.offers(search, { horizon: { start: now, end: now + 30 * DAY }, limit: shown });
  }
}
