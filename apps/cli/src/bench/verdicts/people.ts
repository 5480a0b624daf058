import type { ErrorRates } from "./assumptions.ts";
import { CAREFUL, ORDINARY } from "./assumptions.ts";

/** A simulated person: how they read, and how often they err in what is no reading. */
export type Person = {
  readonly rates: ErrorRates;
  /** Everything that errs in a reading, over what is declared: 1 is as declared. */
  readonly noise: number;
  /** Added to every reading toward the better side, as a share of δ: a dealer who shades, an inspector who is generous. */
  readonly kindness: number;
  /** Standard deviation of an error the readings of one place share because they were taken elsewhere, as a share of δ. */
  readonly elsewhere: number;
  /** Writes the convenient number near by: a multiple of 1, 2 or 5 of the size of δ. */
  readonly convenient: boolean;
  /** One gauge in four is out by twice what it is stated to be exact to. */
  readonly gaugesOut: boolean;
  /** Writes down what the other stated instead of looking, at so many places. */
  readonly copies: number;
};

const AS_DECLARED = {
  noise: 1,
  kindness: 0,
  elsewhere: 0,
  convenient: false,
  gaugesOut: false,
  copies: 0,
} as const;

export const careful: Person = { rates: CAREFUL, ...AS_DECLARED };
export const ordinary: Person = { rates: ORDINARY, ...AS_DECLARED };

/** Who stated and who looked. */
export type Pair = { readonly name: string; readonly dealer: Person; readonly inspector: Person };

const pair = (name: string, dealer: Partial<Person>, inspector: Partial<Person>): Pair => ({
  name,
  dealer: { ...careful, ...dealer },
  inspector: { ...careful, ...inspector },
});

export const asDeclared: Pair = pair("two careful people, as declared", {}, {});

/** Ways in which people part from what they declare, each by itself. */
export const pairs: readonly Pair[] = [
  asDeclared,
  { name: "two ordinary people", dealer: ordinary, inspector: ordinary },
  pair("noise 1.5 × declared", { noise: 1.5 }, { noise: 1.5 }),
  pair("a wrong spot, σ = δ/2", {}, { elsewhere: 0.5 }),
  pair("a generous inspector, δ/4", {}, { kindness: 0.25 }),
  pair("a dealer who shades by δ/4", { kindness: 0.25 }, {}),
  pair("a dealer's convenient numbers", { convenient: true }, {}),
  pair("one gauge in four out", { gaugesOut: true }, { gaugesOut: true }),
  pair("slips of the pen, 2 %", slips(), slips()),
  pair("half of it copied", {}, { copies: 0.5 }),
];

function slips(): Partial<Person> {
  return { rates: { ...CAREFUL, typingSlip: 0.02 } };
}
