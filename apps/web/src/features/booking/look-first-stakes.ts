import type { LookFirst } from "@evenhand/shared/http/money";

type Looks = LookFirst["looks"];

/** Of what is proposed: how many can stop the money, hurt somebody, decide most of the cost, or none of that; and of how many nothing is said. */
export const stakesOf = (looks: Looks) => {
  const count = (is: (look: Looks[number]) => boolean): number => looks.filter(is).length;
  const [halt, danger] = [
    count(({ severity }) => severity === "halt"),
    count(({ severity }) => severity === "danger"),
  ];
  const worth = count(({ byWorth }) => byWorth);
  return {
    halt,
    danger,
    worth,
    rest: looks.length - halt - danger - worth,
    silent: count(({ known, again }) => known === "silent" && !again),
    again: count(({ again }) => again),
  };
};
