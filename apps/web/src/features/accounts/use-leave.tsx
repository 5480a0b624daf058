import { useQueryClient } from "@tanstack/react-query";
import { type ReactNode, useState } from "react";
import { leaveBy, type Leaving } from "../../offline/forget";
import { LeaveAsk } from "../../ui/LeaveAsk";
import { signedOut } from "../../entities/account/signed-out";

interface Asking {
  readonly left: number | null;
  readonly answer: (leaving: Leaving) => void;
}

/**
 * Ends what signs the person in here, once all that was typed on this device is sent or given up in words.
 *
 * @param forGood the account itself ends, so that nothing left here could ever be opened again
 * @returns the deed, and the question where there is one to be asked
 */
export const useLeave = (
  account: string,
  forGood: boolean,
): { readonly leave: (end: () => Promise<unknown>) => Promise<void>; readonly question: ReactNode } => {
  const queries = useQueryClient();
  const [asking, setAsking] = useState<Asking | null>(null);
  const ask = async (left: number | null): Promise<Leaving> => {
    const answer = await new Promise<Leaving>((resolve) => setAsking({ left, answer: resolve }));
    setAsking(null);
    return answer;
  };
  const leave = async (end: () => Promise<unknown>): Promise<void> => {
    if (!(await leaveBy(account, end, ask))) return;
    signedOut(queries);
  };
  const question = asking && (
    <LeaveAsk
      left={asking.left}
      error={null}
      forGood={forGood}
      onStay={() => asking.answer("stay")}
      onLeave={asking.answer}
    />
  );
  return { leave, question };
};
