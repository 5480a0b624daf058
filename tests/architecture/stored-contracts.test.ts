import { contracts } from "@evenhand/shared/http/contracts";
import { EvidenceSeen } from "@evenhand/shared/http/evidence";
import { StoredHeader } from "@evenhand/shared/http/reports";
import { instrumentsInUse } from "@evenhand/sheet/firm-instruments";
import { assert, property } from "fast-check";
import { describe, expect, test } from "vitest";
import type { z } from "zod";
import { acceptedBodies } from "./accepted-bodies.ts";

type Contracts = typeof contracts;
type BodyRoute = {
  [R in keyof Contracts]: Contracts[R] extends { body: z.ZodType } ? R : never;
}[keyof Contracts];
/** What is kept of a body, and the contract it is read back with. */
type Kept = readonly (readonly [stored: unknown, read: z.ZodType])[];
/** A text says why nothing of the body comes back in a contract. */
type Keeping = Readonly<Record<BodyRoute, string | ((sent: unknown) => Kept)>>;

const keeps =
  <S extends z.ZodType>(contract: { readonly body: S }, of: (body: z.output<S>) => Kept) =>
  (sent: unknown): Kept =>
    of(contract.body.parse(sent));

const answers = {
  account: contracts["account.get"].answer.shape,
  appointment: contracts["appointments.get"].answer.shape,
  calendar: contracts["calendars.get"].answer.shape,
  car: contracts["vehicles.get"].answer.shape,
  complaint: contracts["complaints.get"].answer.shape,
  decision: contracts["decisions.get"].answer.shape,
  draft: contracts["reports.get"].answer.shape,
  handOver: contracts["handOvers.get"].answer.shape,
  invitation: contracts["invitations.get"].answer.shape,
  order: contracts["orders.get"].answer.shape,
  question: contracts["questions.get"].answer.shape,
  release: contracts["releases.get"].answer.shape,
  site: contracts["sites.get"].answer.shape,
};
const rows = {
  token: contracts["tokens.list"].answer.shape.items.element.shape,
  organization: contracts["organizations.list"].answer.shape.items.element.shape,
  shareLink: contracts["shareLinks.list"].answer.shape.items.element.shape,
  admission: contracts["admissions.list"].answer.shape.items.element.shape,
  feed: contracts["calendarFeeds.list"].answer.shape.items.element.shape,
};

/** Every field of the body that the answer has too, under the same name. What is left out is not stored. */
const same = (body: object, read: Readonly<Record<string, z.ZodType>>, ...except: string[]): Kept =>
  Object.entries(body).flatMap(([name, stored]) => {
    const schema = except.includes(name) ? undefined : read[name];
    return schema === undefined || stored === undefined ? [] : [[stored, schema] as const];
  });

const header = (body: object): Kept => [
  ...same(body, StoredHeader.shape, ...("terms" in body && body.terms === null ? ["terms"] : [])),
  ...same(body, answers.draft.report.shape, ...("terms" in body && body.terms === null ? ["terms"] : [])),
];

const handOverNote = ({ note }: { note: string }): Kept => [
  [note, answers.handOver.moves.element.shape.note],
];
const moves = "kept in the history of moves, as the note and the parties' own words";

const kept: Keeping = {
  "account.changePassword": "only a hash",
  "account.close": "nothing is kept",
  "passwordResets.request": "only the address, in the letter",
  "passwordResets.use": "only a hash",
  "members.change": "only the role",
  "sessions.create": "only whether it matched",
  "invitations.create": keeps(contracts["invitations.create"], (body) =>
    same(body, answers.invitation, "organization"),
  ),
  "invitations.accept": keeps(contracts["invitations.accept"], ({ name, zone }) => [
    [name, answers.account.name],
    [zone ?? null, contracts["notices.choice"].answer.shape.zone],
  ]),
  "tokens.create": keeps(contracts["tokens.create"], (body) => same(body, rows.token, "expires")),
  "organizations.create": keeps(contracts["organizations.create"], (body) => same(body, rows.organization)),
  "vehicles.create": keeps(contracts["vehicles.create"], (body) => same(body, answers.car)),
  "vehicles.change": keeps(contracts["vehicles.change"], (body) => same(body, answers.car)),
  "orders.create": "only ids of what is there already",
  "orders.accept": keeps(contracts["orders.accept"], (body) => same(body, answers.order)),
  "orders.decline": keeps(contracts["orders.decline"], (body) => same(body, answers.order)),
  "orders.cancel": keeps(contracts["orders.cancel"], (body) => same(body, answers.order)),
  "reports.state": keeps(contracts["reports.state"], header),
  "reports.inspect": keeps(contracts["reports.inspect"], header),
  "reports.change": keeps(contracts["reports.change"], header),
  "reports.operate": keeps(contracts["reports.operate"], ({ operations }) =>
    operations.flatMap((one): Kept => {
      // A finding that is no finding refuses its operation, and is not kept.
      if (one.op !== "set") return [];
      const finding = answers.draft.report.shape.findings.element.safeParse(one.finding);
      return finding.success ? [[finding.data, answers.draft.report.shape.findings.element]] : [];
    }),
  ),
  "cases.letDealerFirst": "only whether it is so",
  "reports.readSpoken": "nothing is kept",
  "reports.readSheet": "nothing is kept",
  "reports.settleLines": "kept as lines of the firm, each a column of its own",
  "comparisons.create": "only ids of what is there already",
  "releases.create": "only places of what is there already",
  "releases.move": keeps(contracts["releases.move"], ({ words, evidence }) => [
    ...(words === undefined ? [] : [[words, answers.release.thread.element.shape.words] as const]),
    [evidence, answers.release.thread.element.shape.evidence],
  ]),
  "costTable.put": keeps(contracts["costTable.put"], (body) => [
    [body, contracts["costTable.get"].answer.shape.table],
  ]),
  "landedCost.put": keeps(contracts["landedCost.put"], (body) => [
    [body, contracts["landedCost.get"].answer.shape.entries],
  ]),
  "beforeMoney.put": keeps(contracts["beforeMoney.put"], (body) => [
    [body, contracts["beforeMoney.get"].answer.shape.entries],
  ]),
  "transportRates.put": keeps(contracts["transportRates.put"], (body) => [
    [body, contracts["transportRates.get"].answer.shape.rates],
  ]),
  "summaries.create": "an empty body",
  "summaries.draft": keeps(contracts["summaries.draft"], (body) => [
    [body, contracts["summaries.draft"].answer.shape.draft],
  ]),
  "summaries.decide": keeps(contracts["summaries.decide"], (body) => same(body, answers.decision)),
  "decisions.answer": keeps(contracts["decisions.answer"], ({ note, ...offer }) => [
    ...(note === undefined ? [] : [[note, answers.decision.answer.unwrap().shape.note] as const]),
    ...same(offer, answers.decision.answer.unwrap().shape.offer.unwrap().shape),
  ]),
  "decisions.reply": "only the answer",
  "notices.choose": keeps(contracts["notices.choose"], ({ zone }) => [
    [zone ?? null, contracts["notices.choice"].answer.shape.zone],
  ]),
  "notices.read": "only which, or up to where",
  "firmHandbook.put": keeps(contracts["firmHandbook.put"], (body) => [
    [body, contracts["firmHandbook.get"].answer.shape.handbook],
    [body, answers.draft.handbook],
  ]),
  "firmInstruments.put": keeps(contracts["firmInstruments.put"], (body) => [
    [body.instruments, contracts["firmInstruments.get"].answer.shape.instruments],
    [instrumentsInUse(body), answers.draft.report.shape.instruments],
  ]),
  "evidence.mark": keeps(contracts["evidence.mark"], ({ marks }) => [[marks, EvidenceSeen.shape.marks]]),
  "listing.publish": "an empty body",
  "listing.withdraw": "kept as the reason in the listing's history",
  "shareLinks.create": keeps(contracts["shareLinks.create"], (body) => same(body, rows.shareLink, "expires")),
  "questions.create": keeps(contracts["questions.create"], (body) => same(body, answers.question)),
  "questions.change": keeps(contracts["questions.change"], ({ text }) =>
    text === undefined ? [] : [[text, answers.question.text]],
  ),
  "questions.answer": keeps(contracts["questions.answer"], ({ finding }) => {
    const read = answers.draft.report.shape.findings.element.safeParse(finding);
    return read.success ? [[read.data, answers.question.finding]] : [];
  }),
  "calendars.create": keeps(contracts["calendars.create"], (body) => same(body, answers.calendar)),
  "calendars.change": keeps(contracts["calendars.change"], (body) => same(body, answers.calendar)),
  "calendars.layOut": "nothing is kept",
  "interests.declare": keeps(contracts["interests.declare"], (body) =>
    same(body, answers.calendar.interests.element.shape),
  ),
  "interests.end": keeps(contracts["interests.end"], ({ endedAt }) => [
    [endedAt, answers.calendar.interests.element.shape.endedAt],
  ]),
  "dealings.declare": keeps(contracts["dealings.declare"], (body) =>
    same(body, answers.calendar.dealings.element.shape),
  ),
  "sites.create": keeps(contracts["sites.create"], (body) => same(body, answers.site, "bays")),
  "sites.change": keeps(contracts["sites.change"], (body) => same(body, answers.site, "bays")),
  "carPlace.put": "only the id of what is there already",
  "admissions.decide": keeps(contracts["admissions.decide"], ({ reason }) => [
    [reason, rows.admission.reason],
  ]),
  "calendarFeeds.create": keeps(contracts["calendarFeeds.create"], ({ name }) => [[name, rows.feed.name]]),
  "brief.put": keeps(contracts["brief.put"], ({ items }) =>
    items.map((item) => [item, contracts["brief.get"].answer.shape.items.element.shape.item] as const),
  ),
  "bookingTerms.put": keeps(contracts["bookingTerms.put"], (body) => [
    [body, contracts["bookingTerms.get"].answer.shape.terms],
  ]),
  "appointments.hold": "only ids and the hour of an offer",
  "appointments.request": moves,
  "appointments.accept": moves,
  "appointments.decline": moves,
  "appointments.confirm": keeps(contracts["appointments.confirm"], (body) => same(body, answers.appointment)),
  "appointments.reschedule": "only ids and the hour of an offer",
  "appointments.cancel": moves,
  "appointments.start": "an empty body",
  "appointments.takeToRoad": keeps(contracts["appointments.takeToRoad"], (body) => [
    [body, answers.appointment.road],
  ]),
  "appointments.miss": "an empty body",
  "appointments.report": "an empty body",
  "appointments.proposeBrief": "only ids of the sheet, as brief.put",
  "appointments.answerBrief": "only the answer",
  "handOvers.arrange": keeps(contracts["handOvers.arrange"], (body) => same(body, answers.handOver)),
  "handOvers.renewLink": "only until when it works",
  "handOvers.setTerms": keeps(contracts["handOvers.setTerms"], (body) => [[body, answers.handOver.terms]]),
  "handOvers.callOff": keeps(contracts["handOvers.callOff"], handOverNote),
  "handOvers.signOff": keeps(contracts["handOvers.signOff"], handOverNote),
  "handOvers.openClaim": keeps(contracts["handOvers.openClaim"], handOverNote),
  "handOvers.closeClaim": keeps(contracts["handOvers.closeClaim"], handOverNote),
  "carriedHandOvers.preview": "nothing is kept",
  "carriedHandOvers.sign": keeps(contracts["carriedHandOvers.sign"], ({ paper, carrier, report }) => {
    const read = answers.handOver.collection.unwrap().shape;
    return [
      [paper, read.paper],
      [carrier, read.signatures.element.shape.name],
      ...same(report, read, "findings"),
    ];
  }),
  "complaints.create": keeps(contracts["complaints.create"], ({ text }) => [[text, answers.complaint.text]]),
  "complaints.open": "kept in the list of openings",
  "complaints.answer": keeps(contracts["complaints.answer"], ({ text }) => [[text, answers.complaint.reply]]),
};

const bodies: Readonly<Record<string, z.ZodType>> = Object.fromEntries(
  Object.entries(contracts).flatMap(([route, contract]) =>
    "body" in contract ? [[route, contract.body]] : [],
  ),
);
const checked = Object.entries(kept).flatMap(([route, of]) =>
  typeof of === "string" ? [] : [{ route, of }],
);

describe("what a request's contract takes, the stored contract reads", () => {
  test("every route with a body is in the table", () => {
    expect(Object.keys(kept).toSorted()).toEqual(Object.keys(bodies).toSorted());
  });

  test.each(checked)("$route", ({ route, of }) => {
    const schema = bodies[route];
    expect(schema).toBeDefined();
    if (!schema) return;
    assert(
      property(acceptedBodies(schema), (sent) => {
        for (const [stored, read] of of(sent)) {
          const back: unknown = JSON.parse(JSON.stringify(stored));
          const { success, error } = read.safeParse(back);
          if (!success) throw new Error(`${JSON.stringify(back)}: ${error.message}`);
        }
      }),
      { numRuns: 1_000 },
    );
  });
});
