/** What a person can complain about here. */
export const kinds = ["appointment", "vehicle", "other"] as const;
export type Kind = (typeof kinds)[number];

/** A complaint as it is typed. */
export interface ComplaintForm {
  /** The organization one complains for. */
  readonly organization: string;
  readonly kind: Kind;
  /** The visit or car chosen; empty while none was. */
  readonly chosen: string;
  readonly text: string;
}

export const begunComplaint = (organization: string): ComplaintForm => ({
  organization,
  kind: "appointment",
  chosen: "",
  text: "",
});

/** The form with a part of it changed. What was chosen of one kind is nothing of another. */
export const withPart = (form: ComplaintForm, part: Partial<ComplaintForm>): ComplaintForm => ({
  ...form,
  ...(part.kind === undefined ? {} : { chosen: "" }),
  ...part,
});

/** What the complaint is about: where nothing was chosen, the first there is to choose, as the field shows it. */
export const aboutOf = ({ kind, chosen }: ComplaintForm, first: string | undefined) => ({
  kind,
  id: kind === "other" ? null : chosen === "" ? (first ?? null) : chosen,
});
