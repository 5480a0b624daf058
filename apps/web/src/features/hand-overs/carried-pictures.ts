import type { CarriedPictureQuery, HandOverPicture } from "@evenhand/shared/http/hand-overs";

/** Where a photograph belongs. */
export type At = Required<CarriedPictureQuery>;

/** A photograph on this phone that the service has not taken yet; `error` is why not, where it was tried. */
export interface Waiting {
  readonly key: string;
  readonly at: At;
  readonly file: File;
  /** Of the picture on this phone. */
  readonly url: string;
  readonly error: Error | null;
}

/** Pictures as they may be shown to whoever looks at this page. */
export interface PictureSource {
  readonly pictures: readonly HandOverPicture[];
  readonly small: (id: string) => string;
  readonly large: (id: string) => string;
  /** Of pictures that lie on this device: their addresses, by id. */
  readonly here?: ReadonlyMap<string, string>;
}

type Placed = Pick<HandOverPicture, "stage" | "item" | "position">;

export const isAt = (one: Placed, at: Placed): boolean =>
  one.stage === at.stage && one.item === at.item && one.position === at.position;

/** What the service knows of the list: each waiting one leaves it once it was taken. */
export type WaitingAct =
  | { readonly act: "add"; readonly waiting: readonly Waiting[] }
  | { readonly act: "fail"; readonly key: string; readonly error: Error | null }
  | { readonly act: "drop"; readonly key: string };

/**
 * What waits on this phone after one thing happened to it.
 *
 * @example waitingAfter([one], { act: "drop", key: one.key }) // []
 */
export const waitingAfter = (all: readonly Waiting[], done: WaitingAct): readonly Waiting[] => {
  if (done.act === "add") return [...all, ...done.waiting];
  if (done.act === "drop") return all.filter(({ key }) => key !== done.key);
  return all.map((one) => (one.key === done.key ? { ...one, error: done.error } : one));
};
