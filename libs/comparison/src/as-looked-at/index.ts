import type { NotSeenReason } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";

/** A report with what could not be seen taken as unseen, and why by item; an item with a fault found keeps that fault. */
export type LookedAt = {
  readonly report: Report;
  /** Why nothing else can be said of an item's places; absent where they were looked at in good light. */
  readonly spoiled: (item: string) => NotSeenReason | undefined;
};

type Spoiling = {
  readonly items: ReadonlySet<string>;
  readonly sections: ReadonlySet<string>;
  readonly why: NotSeenReason;
};

/** What a circumstance spoils, as it was answered. */
const spoilingOf = ({ qualifies }: Item, { answer }: Finding): Spoiling | undefined => {
  if (qualifies?.unseen === undefined || answer.kind !== "choice") return undefined;
  const why = qualifies.unseen[answer.option];
  return why === undefined
    ? undefined
    : { items: new Set(qualifies.items), sections: new Set(qualifies.sections), why };
};

/** A fault that was seen in the dark is there; that nothing else was seen says nothing. */
const spoil = (finding: Finding, why: NotSeenReason): Finding => {
  const { answer } = finding;
  if (answer.kind === "not-seen" || answer.kind === "not-fitted") return finding;
  if (answer.kind === "faults" && answer.found.length > 0)
    return { ...finding, answer: { ...answer, denied: [] } };
  return { ...finding, answer: { kind: "not-seen", reason: why } };
};

/**
 * A report as it may be compared where the sheet says which circumstances hide things: in the dark, wet, dirty or under a cover "no
 * damage" becomes "not seen", and a fault that was found stays found.
 *
 * @example asLookedAt(collectionAtNight, compileSheet(transportSheet1)).spoiled("body.faults") // "dark"
 */
export const asLookedAt = (report: Report, sheet: CompiledSheet): LookedAt => {
  const spoiling = report.findings.flatMap((finding) => {
    const item = sheet.items.get(finding.item)?.item;
    return (item && spoilingOf(item, finding)) ?? [];
  });
  const spoiled = (id: string): NotSeenReason | undefined => {
    const section = sheet.items.get(id)?.item.section ?? "";
    return spoiling.find(({ items, sections }) => items.has(id) || sections.has(section))?.why;
  };
  const findings = report.findings.map((finding) => {
    const why = spoiled(finding.item);
    return why === undefined ? finding : spoil(finding, why);
  });
  return { report: { ...report, findings }, spoiled };
};
