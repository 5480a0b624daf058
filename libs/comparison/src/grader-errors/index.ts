import type { HouseGrade } from "@evenhand/shared/sheet";
import { dawidSkene } from "@evenhand/measurement/dawid-skene";
import { houseGrades } from "@evenhand/sheet/grade-scale";

/** One grade one person gave to one place of one car. */
export type Grading = {
  readonly car: string;
  /** Which of the car's places: item and position. */
  readonly place: string;
  readonly person: string;
  readonly organization: string;
  /** No interest in the car, and not of the firm that states it. */
  readonly independent: boolean;
  /** Given before any statement on it was shown. */
  readonly blind: boolean;
  /** Which state of the car it was, changed by every repair and every sale: grades of two states do not belong together. */
  readonly state: string;
  readonly grade: HouseGrade;
};

/** Why nothing is estimated. */
export type Refusal =
  | { readonly why: "too-few-cars"; readonly cars: number; readonly needed: number }
  /** Two people's errors and the truth cannot be told apart. */
  | { readonly why: "too-few-people"; readonly people: number; readonly needed: number }
  | { readonly why: "not-independent"; readonly gradings: number }
  | { readonly why: "not-blind"; readonly gradings: number }
  /** Two people of one firm are not independent of each other. */
  | { readonly why: "same-firm"; readonly organizations: readonly string[] }
  | { readonly why: "not-same-state"; readonly cars: readonly string[] };

export type GraderErrors =
  | { readonly state: "refused"; readonly refusals: readonly Refusal[] }
  | {
      readonly state: "estimated";
      readonly cars: number;
      /** Share of each true grade, worst first. */
      readonly prevalence: readonly number[];
      /** By person: `confusion[truth][answer]`, worst first. */
      readonly people: readonly {
        readonly person: string;
        readonly confusion: readonly (readonly number[])[];
      }[];
    };

const LEAST_CARS = 30;
const LEAST_PEOPLE = 3;

const distinct = <T, K>(list: readonly T[], key: (one: T) => K): K[] => Array.from(new Set(list.map(key)));

const countRefusal = (
  gradings: readonly Grading[],
  why: "not-independent" | "not-blind",
  holds: (grading: Grading) => boolean,
): Refusal[] => {
  const failing = gradings.filter((grading) => !holds(grading)).length;
  return failing === 0 ? [] : [{ why, gradings: failing }];
};

const sameFirm = (gradings: readonly Grading[]): Refusal[] => {
  const organizations = distinct(gradings, ({ organization }) => organization).filter(
    (organization) =>
      distinct(
        gradings.filter((grading) => grading.organization === organization),
        ({ person }) => person,
      ).length > 1,
  );
  return organizations.length === 0 ? [] : [{ why: "same-firm", organizations }];
};

const notSameState = (gradings: readonly Grading[]): Refusal[] => {
  const states = Map.groupBy(gradings, ({ car }) => car);
  const cars = Array.from(states).flatMap(([car, ofCar]) =>
    distinct(ofCar, ({ state }) => state).length > 1 ? [car] : [],
  );
  return cars.length === 0 ? [] : [{ why: "not-same-state", cars }];
};

const refusalsOf = (gradings: readonly Grading[]): Refusal[] => {
  const cars = distinct(gradings, ({ car }) => car).length;
  const people = distinct(gradings, ({ person }) => person).length;
  return [
    ...(cars < LEAST_CARS ? [{ why: "too-few-cars", cars, needed: LEAST_CARS } as const] : []),
    ...(people < LEAST_PEOPLE ? [{ why: "too-few-people", people, needed: LEAST_PEOPLE } as const] : []),
    ...countRefusal(gradings, "not-independent", ({ independent }) => independent),
    ...countRefusal(gradings, "not-blind", ({ blind }) => blind),
    ...sameFirm(gradings),
    ...notSameState(gradings),
  ];
};

/**
 * How often each person calls a grade another, without knowing the truth (Dawid and Skene 1979), and only where that means
 * anything: thirty cars or more, three people or more of as many firms, independent and blind, each car in one state.
 * Otherwise every condition that fails is named, and nothing is estimated.
 *
 * @example graderErrors([]) // { state: "refused", … }
 */
export const graderErrors = (gradings: readonly Grading[]): GraderErrors => {
  const refusals = refusalsOf(gradings);
  if (refusals.length > 0) return { state: "refused", refusals };
  const items = distinct(gradings, ({ car, place }) => `${car} ${place}`);
  const people = distinct(gradings, ({ person }) => person).sort();
  const itemNumber = new Map(items.map((item, number) => [item, number]));
  const ratings = gradings.map(({ car, place, person, grade }) => ({
    item: itemNumber.get(`${car} ${place}`) ?? 0,
    rater: people.indexOf(person),
    category: houseGrades.indexOf(grade),
  }));
  const { prevalence, confusion } = dawidSkene(ratings, houseGrades.length);
  return {
    state: "estimated",
    cars: distinct(gradings, ({ car }) => car).length,
    prevalence,
    people: people.map((person, number) => ({ person, confusion: confusion[number] ?? [] })),
  };
};
