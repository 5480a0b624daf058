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

/**
 * In the order in which they may answer: what is said of one place before what is said of all (`Lights | all work` after `Indicators | N/S
 * front out`, wherever the rows stand), and last what another claim fits better.
 */
export const inOrder = (all: readonly Answering[]): readonly Answering[] => {
  const rank = ({ one, meant }: Answering): number => {
    if (meant === undefined) return 2;
    return meant.positions.length >= GENERAL && !isOfOthers(one.claim) ? 1 : 0;
  };
  return [0, 1, 2].flatMap((own) => all.filter((one) => rank(one) === own));
};

type Faults = Extract<FindingInput["answer"], { kind: "faults" }>;

/** Whether one says that there are none at all and the other finds some. */
const contradict = (one: Faults, other: Faults): boolean => one.denied === "all" && other.found.length > 0;

const bothFaults = (one: Faults, other: Faults): Faults => {
  const found = [
    ...one.found,
    ...other.found.filter(({ kind }) => one.found.every((has) => has.kind !== kind)),
  ];
  if (one.denied === "all" && other.denied === "all" && found.length === 0) return one;
  const denied = [one, other].flatMap((each) => (each.denied === "all" ? [] : (each.denied ?? [])));
  return {
    kind: "faults",
    found,
    denied: [...new Set(denied)].filter((kind) => found.every((has) => has.kind !== kind)),
  };
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

  /** `Dents | Rust` over one panel: what both columns say of its faults. */
  private merge({ read, claim }: Asked, meant: Meant): boolean {
    if (meant.answer.kind !== "faults") return false;
    const { findings } = this.of(read);
    let merged = 0;
    for (const [at, before] of findings.entries()) {
      const { finding } = before;
      const isSame = finding.item === meant.item.id && meant.positions.includes(finding.position ?? "");
      if (!isSame || before.column === claim.column || finding.answer.kind !== "faults") continue;
      if (contradict(finding.answer, meant.answer) || contradict(meant.answer, finding.answer)) continue;
      const answer = bothFaults(finding.answer, meant.answer);
      findings[at] = { ...before, finding: { ...finding, answer }, sure: before.sure && meant.sure };
      merged += 1;
    }
    return merged > 0 && merged === meant.positions.length;
  }

  /** `Exhaust hangers | good | broken` under left and right: one place cannot be both, and praise of it is taken back. */
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
      if (rival !== undefined && this.merge(asked, rival)) return undefined;
      const both = rival?.bad === true && this.withdraw(asked, rival);
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
