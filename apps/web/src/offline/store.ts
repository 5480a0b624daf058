import type { PictureAdvice } from "@evenhand/shared/evidence";
import type { Finding } from "@evenhand/shared/finding";
import type { SheetReading, SpokenReading } from "@evenhand/shared/http/readings";
import type { Operation, ReportDraft } from "@evenhand/shared/http/reports";
import type { FieldProblem, Problem } from "@evenhand/shared/problem";
import type { Stage } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { Dexie, type EntityTable, type Table } from "dexie";
import { pageOwner, storeName } from "./owner";

/**
 * What was typed at a place and cannot be read: it stays as it was typed, and keeps the report from being sealed. By the name of
 * its field: `reading.1`, `extent.0`, `condition.height`.
 */
export interface Unread {
  readonly texts: Readonly<Record<string, string>>;
  /** The unit it was typed in, where no number beside it could be read. */
  readonly unit?: UnitSymbol;
}

/** One finding as this device has it, and what the service said of it last. */
export interface KeptFinding {
  readonly report: string;
  /** Item and position. */
  readonly place: string;
  /** `null`: taken back here. */
  readonly finding: Finding | null;
  /** The finding's revision the service gave last; `null` for none. */
  readonly base: number | null;
  /** `lost`: this device could not keep it; it stands on the page alone, and is never stored as such. */
  readonly state: "saved" | "waiting" | "conflict" | "refused" | "lost";
  readonly unread?: Unread;
  /** In a conflict: what the service holds; `null` where it was taken back there. */
  readonly theirs?: Finding | null;
  readonly problems?: readonly FieldProblem[];
}

/** A change not yet known to have arrived. It keeps its id, so that it is done once however often it is sent. */
export interface KeptOperation {
  readonly seq?: number;
  readonly id: string;
  readonly report: string;
  readonly place: string;
  /** Set once it has been sent: from then on it may not change. */
  readonly sent?: Operation;
}

/** The draft without its findings, so that the sheet can be shown where the service does not answer. */
export interface KeptDraft {
  readonly report: string;
  readonly draft: Omit<ReportDraft, "findings">;
}

/** The latest revision of a report that this device has heard of, whether or not it keeps a draft of it. */
interface Heard {
  readonly report: string;
  readonly revision: number;
}

/** The cautions at a stage's gate were read; a row stands until the service has it. */
export interface KeptGate {
  readonly report: string;
  readonly stage: Stage;
  readonly time: string;
}

/** A file at a place of a report, with its bytes, until the service has all of them. */
export interface KeptUpload {
  /** Made here; they sort by when they were made. */
  readonly id: string;
  readonly report: string;
  readonly item: string;
  readonly position: string;
  readonly name: string;
  readonly file: Blob;
  /** Where its bytes go, once the service was told of it. */
  readonly address?: string;
  /** What speaks for taking a photograph again, as this device measured it before sending. */
  readonly advice?: readonly { readonly advice: PictureAdvice; readonly words: string }[];
  /** The service does not take it. */
  readonly refusal?: Problem;
  /** Taken away here while the service already had a part of it. */
  readonly dropped?: true;
}

/** What was said at a place: its finding, and what was typed there and cannot be read. */
export interface Change {
  readonly finding: Finding | null;
  readonly unread?: Unread | undefined;
}

/** What somebody has done with a line of what was read. */
export interface ReadingDeed {
  readonly is: "accepted" | "rejected";
  /** As it was changed, where it was. */
  readonly finding: Finding | null;
  /** What stood at its place before. */
  readonly before: Finding | null;
}

/** Captions or a sheet as the service read them for a draft, and how far they were gone through. */
export interface KeptReading {
  readonly report: string;
  /** The file's. */
  readonly name: string;
  readonly read:
    | { readonly of: "spoken"; readonly reading: SpokenReading }
    | { readonly of: "sheet"; readonly reading: SheetReading };
  /** Where the recording can be watched. */
  readonly address: string;
  /** By the key of the line. */
  readonly deeds: ReadonlyMap<string, ReadingDeed>;
}

/** What one account keeps on one device. */
export class Store extends Dexie {
  readonly findings!: Table<KeptFinding, [string, string]>;
  readonly operations!: EntityTable<KeptOperation & { seq: number }, "seq">;
  readonly drafts!: EntityTable<KeptDraft, "report">;
  readonly heard!: EntityTable<Heard, "report">;
  readonly gates!: Table<KeptGate, [string, string]>;
  readonly uploads!: EntityTable<KeptUpload, "id">;
  readonly readings!: EntityTable<KeptReading, "report">;

  constructor(name: string) {
    super(name);
    this.version(1).stores({
      findings: "[report+place], report",
      operations: "++seq, report, [report+place], id",
      drafts: "report",
    });
    this.version(2).stores({ gates: "[report+stage], report" });
    this.version(3).stores({ heard: "report" });
    this.version(4).stores({ uploads: "id, report" });
    this.version(5).stores({ readings: "report" });
  }
}

/** The own store of whoever is signed in: nothing that asks for it is loaded before that is known. */
export const store = new Store(storeName(pageOwner()));
