import type { CarriedHandOver } from "@evenhand/shared/http/hand-overs";
import { useQueryClient } from "@tanstack/react-query";
import { useReducer, useState } from "react";
import { addressOf, call, callWithFile } from "../../service/client";
import { newId } from "../../service/new-id";
import { type At, type PictureSource, type Waiting, waitingAfter } from "./carried-pictures";
import { carriedQuery } from "./queries";

/** Everything a place does with photographs. */
export interface CarriedPictures extends PictureSource {
  readonly stage: At["stage"];
  readonly waiting: readonly Waiting[];
  readonly add: (at: At, files: readonly File[]) => void;
  readonly again: (one: Waiting) => void;
  readonly leaveOut: (one: Waiting) => void;
  readonly remove: (id: string) => void;
}

const asError = (error: unknown): Error => (error instanceof Error ? error : new Error(String(error)));

/** The link's photographs: sent as they are taken, one by one; what was not taken stays on the page and says why. */
export const useCarriedPictures = (token: string, { pictures, stage }: CarriedHandOver): CarriedPictures => {
  const queries = useQueryClient();
  const [waiting, act] = useReducer(waitingAfter, []);
  /** What this phone took itself, shown before the service has made its copies. */
  const [here, setHere] = useState<ReadonlyMap<string, string>>(new Map());
  const anew = () => queries.invalidateQueries({ queryKey: carriedQuery(token).queryKey });
  const send = async ({ key, at, file, url }: Waiting): Promise<void> => {
    act({ act: "fail", key, error: null });
    try {
      const asked = { params: { token }, query: at };
      const { id } = await callWithFile("carriedHandOvers.addPicture", asked, file);
      setHere((before) => new Map(before).set(id, url));
      await anew();
      act({ act: "drop", key });
    } catch (error) {
      act({ act: "fail", key, error: asError(error) });
    }
  };
  const address = (id: string): string => addressOf("carriedHandOvers.picture", { token, id });
  return {
    pictures,
    stage,
    small: address,
    large: address,
    here,
    waiting,
    add: (at, files) => {
      const added = files.map((file) => ({
        key: newId(),
        at,
        file,
        url: URL.createObjectURL(file),
        error: null,
      }));
      act({ act: "add", waiting: added });
      // One after the other: on a weak line two at once would both come late.
      void added.reduce((before, one) => before.then(() => send(one)), Promise.resolve());
    },
    again: (one) => void send(one),
    leaveOut: ({ key }) => act({ act: "drop", key }),
    remove: (id) => void call("carriedHandOvers.removePicture", { params: { token, id } }).then(anew, anew),
  };
};
