import type { FindingInput } from "@evenhand/shared/finding";
import type { GradeScale } from "@evenhand/shared/report";
import type { Meant } from "../propose/reading.ts";
import type { Claim } from "../table-claims/index.ts";
import type { ProposedFinding, RefusedClaim } from "./outcome.ts";
import type { ReadRow } from "./rows.ts";
import { isOfOthers } from "./taken.ts";
import type { Asked } from "./taken.ts";

const noteFor = (claim: Claim): string | undefined => {
  const words = claim.value.numeric || claim.value.outcome !== undefined ? "" : claim.value.text;
  const note = [words, claim.note]
    .filter((text, at, all) => text !== "" && all.indexOf(text) === at)
    .join("; ");
  return note === "" ? undefined : note.slice(0, 4000);
};

const findingOf = (meant: Meant, position: string, claim: Claim): FindingInput => {
  const note = noteFor(claim);
  return {
    item: meant.item.id,
    ...(position === "" ? {} : { position }),
    answer: meant.answer,
    ...(claim.value.firmness === "asserted" ? {} : { firmness: claim.value.firmness }),
    ...(meant.answer.kind === "reading" ? { basis: "measured" as const } : {}),
    ...(note === undefined ? {} : { note }),
  };
};

/** What became of one row's claims. */
export type Ended = { readonly findings: ProposedFinding[]; readonly refused: RefusedClaim[] };

type Answering = { readonly one: Asked; readonly meant: Meant | undefined };

/** So many places are said of an item as a whole, and what a row says of one of them comes first. */
const GENERAL = 5;

/** `Lights | all work` after `Indicators | N/S front out`, wherever the rows stand. */
export const generalLast = (all: readonly Answering[]): readonly Answering[] => {
  const isGeneral = ({ one, meant }: Answering): boolean =>
    meant !== undefined && meant.positions.length >= GENERAL && !isOfOthers(one.claim);
  const general = all.filter(isGeneral);
  return general.length === 0 ? all : [...all.filter((one) => !isGeneral(one)), ...general];
};

const keyOf = ({ item }: Meant, position: string): string => `${item.id} ${position}`;

/** Rows with what their claims ended as, each place answered once. */
export class Ends {
  /** By whose words each place was answered. */
  private readonly taken = new Map<string, { readonly by: Asked; readonly answer: string }>();
  /** Places of which something was said, by their set. */
  private readonly spoken = new Set<string>();
  readonly scales = new Map<string, GradeScale>();
  readonly byRow = new Map<ReadRow, Ended>();

  private of(read: ReadRow): Ended {
    const ended = this.byRow.get(read) ?? { findings: [], refused: [] };
    this.byRow.set(read, ended);
    return ended;
  }

  /** Places not answered yet; of the others, those of which nothing else was said either. */
  private free(meant: Meant, ofOthers: boolean): readonly string[] {
    const { item, positions } = meant;
    const free = positions.filter((position) => !this.taken.has(keyOf(meant, position)));
    return ofOthers && free.length === positions.length
      ? positions.filter((position) => !this.spoken.has(`${item.positions ?? ""} ${position}`))
      : free;
  }

  /** `Exhaust hangers | good | broken` under left and right: one place cannot be both, and is neither for sure. */
  private withdraw({ read, claim }: Asked, meant: Meant): boolean {
    const answer = JSON.stringify(meant.answer);
    const against = meant.positions.filter((position) => {
      const before = this.taken.get(keyOf(meant, position));
      return before?.by.read === read && before.by.claim.column !== claim.column && before.answer !== answer;
    });
    const { findings } = this.of(read);
    const kept = findings.filter(
      ({ finding }) => finding.item !== meant.item.id || !against.includes(finding.position ?? ""),
    );
    const withdrawn = kept.length < findings.length;
    findings.splice(0, findings.length, ...kept);
    return withdrawn;
  }

  private refuse({ claim, read, line }: Asked, why: RefusedClaim["why"], item: string | undefined): void {
    this.of(read).refused.push({
      why,
      column: claim.column,
      line,
      ...(item === undefined ? {} : { item }),
    });
  }

  /** One finding a place: what a later row says of the same is refused, never put over it. */
  add(asked: Asked, meant: Meant | undefined): void {
    const { claim, proposal } = asked;
    if (!proposal.ok) return this.refuse(asked, proposal.why, proposal.item);
    const ofOthers = isOfOthers(claim);
    const free = meant === undefined ? [] : this.free(meant, ofOthers);
    if (ofOthers && free.length === meant?.positions.length)
      return this.refuse(asked, "no-place", meant.item.id);
    if (meant === undefined || free.length === 0) {
      const [rival] = proposal.meant;
      const both = rival !== undefined && this.withdraw(asked, rival);
      return this.refuse(asked, both ? "several-answers" : "twice", rival?.item.id);
    }
    return this.put(asked, meant, free);
  }

  private put(asked: Asked, meant: Meant, free: readonly string[]): void {
    const { claim, read, line } = asked;
    if (meant.scale !== undefined) this.scales.set(meant.scale.id, meant.scale);
    for (const position of free) {
      this.taken.set(keyOf(meant, position), { by: asked, answer: JSON.stringify(meant.answer) });
      this.spoken.add(`${meant.item.positions ?? ""} ${position}`);
      this.of(read).findings.push({
        finding: findingOf(meant, position, claim),
        confidence: Math.round(Math.min(1, meant.confidence) * 100) / 100,
        sure:
          meant.sure &&
          (isOfOthers(claim) || free.length === meant.positions.length) &&
          claim.value.firmness === "asserted",
        column: claim.column,
        line,
      });
    }
  }
}
