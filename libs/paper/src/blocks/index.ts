/** How a run of text reads. `struck` is what was claimed and not found so. */
export type Tone = "plain" | "strong" | "faint" | "alarm" | "struck" | "code";

/** Text in one tone. It is text and never markup, whatever it looks like. */
export type Run = { readonly text: string; readonly tone?: Tone };

export type Figure = { readonly name: string; readonly value: string; readonly note: string };

/** Lines of the comparison in a row of a table: what was stated, how they stand, and what was found. */
export type Facing = {
  readonly kind: "facing";
  readonly place: string;
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
  /** The head of a table; it stands again where the table goes over the end of a page. */
  | { readonly kind: "facing-head"; readonly stated: string; readonly found: string }
  /** What the rows after it have in common. */
  | { readonly kind: "facing-part"; readonly text: string }
  | Facing;

/** Blocks that are read down one column and then down the next, over as many pages as they take. */
export type Columns = { readonly kind: "columns"; readonly blocks: readonly Block[] };

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
export type Pages = PaperFacts & { readonly blocks: readonly (Block | Columns)[] };

/** Paper that is one page. Each column is given from the fullest to the tersest; the first that fits is drawn. */
export type OnePage = PaperFacts & {
  readonly head: readonly Block[];
  readonly columns: readonly { readonly share: number; readonly from: readonly (readonly Block[])[] }[];
  readonly end: readonly Block[];
};
