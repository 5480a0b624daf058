import type { CaseFacts } from "@evenhand/case/case-of";
import {
  CaseDecision,
  CaseParts,
  CaseParty,
  CaseRow,
  CasesOfPart,
  CaseVisitState,
  OperatorDesk,
  UnsealedDraft,
} from "@evenhand/shared/http/cases";
import { HandOverState } from "@evenhand/shared/http/hand-overs";
import { ReleasedMatter } from "@evenhand/shared/http/releases";
import { SettlementState } from "@evenhand/shared/settlement";
import { z } from "zod";

/** What the statements of this capability give. */

const Counted = z.object({ count: z.number(), first: z.string() });
const Visit = z.object({
  state: CaseVisitState,
  appointment: z.string().nullable(),
  order: z.string().nullable(),
  deadline: z.string().nullable(),
  start: z.string().nullable(),
  draft: z.string().nullable(),
  proposed: z.boolean(),
});
const Facts = z.object({
  by: CaseParty,
  vehicle: z.string(),
  listed: z.boolean(),
  briefed: z.boolean(),
  questions: z.object({
    drafted: Counted.nullable(),
    asked: Counted.nullable(),
    answered: Counted.nullable(),
    published: Counted.nullable(),
  }),
  visits: z.array(Visit),
  comparison: z.object({ id: z.string(), inspection: z.string() }).nullable(),
  releases: z.object({
    open: z.array(z.object({ state: SettlementState, count: z.number(), until: z.string().nullable() })),
    ended: z.number(),
  }),
  summary: z.string().nullable(),
  decision: z
    .object({
      id: z.string(),
      state: CaseDecision,
      until: z.string().nullable(),
      inspection: z.string().nullable(),
    })
    .nullable(),
  handOver: z
    .object({
      case: z.string(),
      unanswered: z.number(),
      carried: z
        .object({ id: z.string(), state: HandOverState, until: z.string().nullable(), differs: z.boolean() })
        .nullable(),
    })
    .nullable(),
}) satisfies z.ZodType<CaseFacts>;

const StoredRow = CaseRow.omit({ standing: true }).extend({ facts: Facts });
export type StoredRow = z.infer<typeof StoredRow>;

export const HomeRow = z.object({
  body: z.object({
    open: z.number(),
    drafts: z.array(UnsealedDraft),
    drafting: z.number(),
    items: z.array(z.object({ open: z.boolean(), row: StoredRow })),
  }),
});
const ReleasedEntry = z.object({
  entry: z.number(),
  state: SettlementState,
  deadline: z.string().nullable(),
});
/** The answer that the matters are taken from, what of it lies before the dealer, and what approving it answered for. */
const ReadAnswer = z.object({
  comparison: z.string(),
  answerHash: z.string().nullable(),
  released: z.array(ReleasedEntry),
  answers: z.array(z.object({ matter: z.string() })).nullable(),
});
export type ReadAnswer = z.infer<typeof ReadAnswer>;
const Laid = ReleasedEntry.extend({ comparison: z.string(), matter: ReleasedMatter.nullable() });

export const SeenRow = z.object({
  body: z.object({
    row: StoredRow,
    parts: CaseParts,
    zone: z.string().nullable(),
    dealerFirst: z.boolean().nullable(),
    read: ReadAnswer.nullable(),
    laid: z.array(Laid),
  }),
});
/** One of the cases a part belongs to. */
export const PartCaseRow = z.object({ item: CasesOfPart.shape.items.element });
/** Which car and whose a case is. */
export const CarOfCaseRow = z.object({ vehicle: z.string(), buyer: z.string() });
export const DeskRow = z.object({ body: OperatorDesk });
