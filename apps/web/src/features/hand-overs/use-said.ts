import type { Answer } from "@evenhand/shared/answer";
import { useState } from "react";
import type { Said } from "./findings";

/** What was written on the sheet so far, in this page alone. */
export const useSaid = () => {
  const [said, setSaid] = useState<Said>({});
  const [place, setPlace] = useState("");
  const [started] = useState(() => new Date().toISOString());
  const say = (key: string, answer: Answer | null): void =>
    setSaid((before) => {
      const others = Object.entries(before).filter(([each]) => each !== key);
      return Object.fromEntries(answer === null ? others : [...others, [key, answer]]);
    });
  return { said, say, place, setPlace, started };
};
