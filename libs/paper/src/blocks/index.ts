/** How a run of text reads. `struck` is what was claimed and not found so. */
export type Tone = "plain" | "strong" | "faint" | "alarm" | "struck" | "code";

/** Text in one tone. It is text and never markup, whatever it looks like. */
export type Run = { readonly text: string; readonly tone?: Tone };

export type Figure = { readonly name: string; readonly value: string; readonly note: string };

/** A line of the comparison: what was stated on the left, what was found on the right, and how they stand on the spine between. */
export type Facing = {
  readonly kind: "facing";
  readonly place: string;
  /** How grave it is; empty where nothing is. */
  readonly tag: string;
  readonly sign: string;
  readonly stands: string;
  readonly stated: Run;
  readonly found: Run;
};

/** A piece of a page, in the order it is read. How large it is and where it breaks is for whoever draws it. */
export type Block =
  | { readonly kind: "title"; readonly text: string }
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly runs: readonly Run[]; readonly small?: true }
  /** `label` hangs before it: a number, a sign. `under` begins on a line of its own. */
  | {
      readonly kind: "item";
      readonly label: string;
      readonly runs: readonly Run[];
      readonly under?: readonly Run[];
    }
  | { readonly kind: "figures"; readonly figures: readonly Figure[] }
  | { readonly kind: "facing-head"; readonly stated: string; readonly found: string }
  | Facing
  | { readonly kind: "page-end" };

/** What a program that shows the paper calls it, and the moment it speaks of. */
export type PaperFacts = {
  readonly title: string;
  readonly subject: string;
  /** An instant of what is printed, never of the printing: the same paper is the same bytes. */
  readonly at: string;
  /** At the foot of every page. */
  readonly foot: string;
};

/** Paper that flows over as many pages as it takes. */
export type Pages = PaperFacts & { readonly blocks: readonly Block[] };

/** Paper that is one page. Each column is given from the fullest to the tersest; the first that fits is drawn. */
export type OnePage = PaperFacts & {
  readonly head: readonly Block[];
  readonly columns: readonly { readonly share: number; readonly from: readonly (readonly Block[])[] }[];
  readonly end: readonly Block[];
};
