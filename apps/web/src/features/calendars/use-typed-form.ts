import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState, type FormEvent } from "react";
import { useEdited } from "../../service/use-edited";
import type { FieldShown } from "./fields";

interface Stored {
  readonly id: string;
  readonly revision: number;
}

/** What is typed of a thing with hours, an inspector's calendar or a site: how it is begun, what is wrong in it, how it is kept. */
export interface Entry<S extends Stored, T, N extends string> {
  readonly typedOf: (seen: S) => T;
  readonly wrongIn: (typed: T) => readonly N[];
  readonly shown: Readonly<Record<N, FieldShown>>;
  readonly save: (seen: S, revision: number, typed: T) => Promise<unknown>;
  /** Under which names the things and the days of one are read. */
  readonly listKey: string;
  readonly daysKey: string;
}

/** Sends what is typed unless a field holds no number; which fields those are is said once it was tried. */
const useTried = <T, N extends string>(
  { wrongIn, shown }: Pick<Entry<never, T, N>, "wrongIn" | "shown">,
  typed: T,
  send: () => void,
) => {
  const [tried, setTried] = useState(false);
  const wrong = wrongIn(typed);
  return {
    wrong: tried ? wrong.map((name) => shown[name]) : [],
    submit: (event: FormEvent): void => {
      event.preventDefault();
      setTried(true);
      if (wrong.length === 0) send();
    },
  };
};

/** Typed over something that is stored. */
export const useStoredForm = <S extends Stored, T, N extends string>(seen: S, entry: Entry<S, T, N>) => {
  const queries = useQueryClient();
  const { revision, typed, touched, change, settle } = useEdited(seen, entry.typedOf);
  const save = useMutation({
    mutationFn: () => entry.save(seen, revision, typed),
    onSuccess: async () => {
      // The week beside it shows what is stored: never, for a moment, what was stored before.
      queries.removeQueries({ queryKey: [entry.daysKey, seen.id] });
      await queries.invalidateQueries();
      settle();
    },
  });
  const tried = useTried(entry, typed, () => save.mutate());
  const { error, isPending, isSuccess } = save;
  return { typed, change, touched, error, isPending, isSaved: isSuccess && !touched, ...tried };
};

interface New<T> {
  readonly first: () => T;
  readonly create: (typed: T) => Promise<Pick<Stored, "id">>;
  readonly open: (id: string) => Promise<void>;
}

/** Typed for the first time; once it is stored, it is opened. */
export const useNewForm = <S extends Stored, T, N extends string>(
  entry: Entry<S, T, N>,
  { first, create, open }: New<T>,
) => {
  const queries = useQueryClient();
  const [typed, change] = useState(first);
  const { mutate, error, isPending } = useMutation({
    mutationFn: () => create(typed),
    onSuccess: async ({ id }) => {
      await queries.invalidateQueries({ queryKey: [entry.listKey] });
      await open(id);
    },
  });
  const tried = useTried(entry, typed, () => mutate());
  return { typed, change, touched: true, error, isPending, isSaved: false, ...tried };
};
