import type { Answer, AnsweredMatter } from "@evenhand/shared/page-one";
import { type ReactNode, type RefObject, useMemo } from "react";
import { Loading } from "../../ui/Loading";
import { ProblemNotice } from "../../ui/ProblemNotice";
import type { Choosing } from "../../entities/comparison/choosing";
import { comparisonRows, type ComparisonSource } from "../../entities/comparison/model";
import { Checks } from "./Checks";
import { LinesView } from "./LinesView";
import type { ComparisonSearch, View } from "./search";
import { useComparisonSource } from "./use-source";
import { WholeReport } from "./whole/WholeReport";

interface Props {
  readonly id: string;
  readonly answer: Answer;
  readonly view: Exclude<View, "answer">;
  readonly search: ComparisonSearch;
  readonly onSearch: (change: Partial<ComparisonSearch>) => void;
  readonly onOpen: (at: number) => void;
  readonly choosing?: Choosing;
  /** The line somebody went to from another view. */
  readonly goTo: RefObject<number | null>;
  readonly onLay?: (at: number) => void;
  readonly settling?: (one: AnsweredMatter) => ReactNode;
}

const Loaded = ({ source, view, onOpen, ...rest }: Props & { readonly source: ComparisonSource }) => {
  const rows = useMemo(() => comparisonRows(source), [source]);
  if (view === "whole") return <WholeReport source={source} rows={rows} onOpen={onOpen} />;
  if (view === "items") return <LinesView source={source} rows={rows} {...rest} />;
  const openPlace = (item: string, position: string): void => {
    const row = rows.find(({ entry }) => entry.item === item && entry.position === position);
    if (row) onOpen(row.at);
  };
  return <Checks source={source} onOpenPlace={openPlace} />;
};

/** What stands behind the answer: asked for when somebody goes there. */
export const Behind = (props: Props) => {
  const { source, error } = useComparisonSource(props.id);
  if (error) return <ProblemNotice error={error} />;
  return source === null ? <Loading /> : <Loaded {...props} source={source} />;
};
