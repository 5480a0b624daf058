import { owedIn } from "@evenhand/case/owed-in";
import { endOf, movesOf, needsWords } from "@evenhand/case/settlement";
import type { Release, ReleasePicture, SettlementRequest } from "@evenhand/shared/http/releases";
import type { Evidence, SettlementState } from "@evenhand/shared/settlement";
import { parseMoney } from "../../ui/money";

export const offered = ["price", "repair", "part", "document", "look"] as const;
export type Offered = (typeof offered)[number];

export interface SettleForm {
  readonly words: string;
  readonly offer: Offered;
  readonly amount: string;
  readonly document: string;
  readonly of: string;
  readonly value: string;
  readonly unit: string;
  readonly instrument: string;
}

export const emptyForm: SettleForm = {
  words: "",
  offer: "price",
  amount: "",
  document: "",
  of: "",
  value: "",
  unit: "",
  instrument: "",
};

/** Moves somebody can make by one press; offers are made by a form of their own. */
export type PlainMove = Exclude<SettlementRequest["move"], "offer-price" | "offer-remedy" | "offer-look">;
const byForm = new Set<string>(["offer-price", "offer-remedy", "offer-look"]);
/** What a seal or the clock does is nobody's press, and `movesOf` names it to nobody. */
const isPlain = (move: string): move is PlainMove => !byForm.has(move);

/** Presses open to somebody in a state, in the order in which they are offered. */
export const pressesOf = (state: SettlementState, as: Release["as"]): PlainMove[] =>
  movesOf(state, as).filter(isPlain);

export const mayOffer = (state: SettlementState, as: Release["as"]): boolean =>
  movesOf(state, as).includes("offer-price");

export const isTurnOf = ({ state, as }: Pick<Release, "state" | "as">): boolean =>
  owedIn(state)?.of === as && pressesOf(state, as).length > 0;

export const isOver = (state: SettlementState): boolean => endOf(state) !== null;

const reading = ({ of, value, unit, instrument }: SettleForm) => [of, value, unit, instrument];
const numberOf = (text: string): number => Number(text.replaceAll(",", ""));

/** A reading is begun and something of it is missing. */
export const isHalfRead = (form: SettleForm): boolean => {
  const parts = reading(form).map((part) => part.trim());
  return parts.some((part) => part !== "") && (parts.includes("") || Number.isNaN(numberOf(form.value)));
};

type Waiting = Pick<ReleasePicture, "id" | "sha256" | "state">;

/** What the service took of the photographs that wait for the answer, named as it is sent. */
const photographsOf = (waiting: readonly Waiting[]): Evidence[] =>
  waiting
    .filter(({ state }) => state === "ready")
    .map(({ id, sha256 }) => ({ kind: "photograph", id, sha256 }));

/** The service has it and is still looking at it. */
export const isLookedAt = ({ state }: Pick<Waiting, "state">): boolean => state === "checked";

/** Photographs are named with an answer once each was looked at: until then it waits. */
export const isWaitedFor = (waiting: readonly Waiting[]): boolean => waiting.some(isLookedAt);

/**
 * The evidence as it is sent.
 *
 * @example evidenceOf({ ...emptyForm, document: "A receipt" }) // [{ kind: "document", name: "A receipt", says: null }]
 */
export const evidenceOf = (form: SettleForm, waiting: readonly Waiting[] = []): Evidence[] => {
  const [document, of] = [form.document.trim(), form.of.trim()];
  return [
    ...photographsOf(waiting),
    ...(document === "" ? [] : [{ kind: "document" as const, name: document, says: null }]),
    ...(of === "" || isHalfRead(form)
      ? []
      : [
          {
            kind: "reading" as const,
            of,
            value: numberOf(form.value),
            unit: form.unit.trim(),
            instrument: form.instrument.trim(),
          },
        ]),
  ];
};

/** Whether a press would be refused for want of words or of the rest of a reading. */
export const lacks = (move: SettlementRequest["move"], form: SettleForm): boolean =>
  isHalfRead(form) || (needsWords(move) && form.words.trim() === "");

type Asked = Pick<SettlementRequest, "move" | "price" | "remedy">;

/** The offer that is filled in, money in the car's own currency; `null` while it cannot be made. */
export const offerOf = ({ offer, amount }: SettleForm, currency: string): Asked | null => {
  if (offer === "look") return { move: "offer-look" };
  if (offer !== "price") return { move: "offer-remedy", remedy: offer };
  const price = parseMoney(amount, currency);
  return price === null ? null : { move: "offer-price", price };
};

/** One move on some lines, as it is sent. */
export const requestOf = (
  releases: readonly Pick<Release, "id" | "revision">[],
  asked: Asked,
  form: SettleForm,
  waiting: readonly Waiting[] = [],
): SettlementRequest => {
  const words = form.words.trim();
  return {
    lines: releases.map(({ id, revision }) => ({ id, revision })),
    ...asked,
    ...(words === "" ? {} : { words }),
    evidence: evidenceOf(form, waiting),
  };
};
