import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { useRef, useState } from "react";
import type { KeptFinding } from "../../offline/store";
import type { Place } from "../../entities/sheet/places";
import { changeOf, editAfter, editAgainAfter, startEdit, type EditStep, type PlaceEdit } from "./place-edit";
import type { Draft } from "../../offline/use-draft";

interface Open {
  readonly report: Report;
  readonly place: Place;
  readonly kept: KeptFinding | undefined;
  readonly last: Pick<Finding, "instrument" | "conditions"> | undefined;
  readonly keep: Draft["keep"];
  /** It was named to be looked at again. */
  readonly again: boolean;
}

/** Steps that only show something else; what is said stays, and is not written again. */
const saysTheSame = (from: PlaceEdit, to: PlaceEdit): boolean =>
  from.answer === to.answer &&
  from.unread === to.unread &&
  from.grounds === to.grounds &&
  from.conditions === to.conditions;

/** What stands at an open place. Each step that says something else is kept on this device at once. */
export const usePlaceEdit = ({ report, place, kept, last, keep, again }: Open) => {
  const [edit, setEdit] = useState<PlaceEdit>(() => startEdit(place.item, kept, report.instruments, last));
  // Two steps may come from one keystroke, before the first is drawn.
  const current = useRef(edit);
  const write = (state: PlaceEdit): void =>
    void keep(place.key, changeOf(place, state, new Date().toISOString()));
  const step = (one: EditStep): void => {
    const next = (again ? editAgainAfter : editAfter)(current.current, one);
    const same = saysTheSame(current.current, next);
    current.current = next;
    setEdit(next);
    if (!same) write(next);
  };
  return { edit, step, keepAgain: () => write(current.current) };
};
