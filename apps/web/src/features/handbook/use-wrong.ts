import { useText } from "../../strings/text";
import type { MakerProblems } from "./maker-problems";

/** What is wrong with a field of an entry, in words. */
export const useWrong = (problems: MakerProblems | undefined): ((field: string) => string | undefined) => {
  const t = useText();
  return (field) => {
    const reason = problems?.get(field);
    return reason === undefined ? undefined : t(`own.wrong.${reason}`);
  };
};
