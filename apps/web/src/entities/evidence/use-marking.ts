import type { PictureMark } from "@evenhand/shared/evidence";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { evidenceKey } from "../../offline/evidence-key";
import { call } from "../../service/client";
import { strokeMark, textMark, type MarkTool, type Spot } from "./marks";
import type { Picture } from "./pictures";

interface With {
  readonly tool: MarkTool | null;
  readonly words: string;
  readonly picture: Picture;
}

/** The mark of one stroke; `null` where nothing is drawn with, or there are no words yet. */
const drawn = ({ tool, words, picture }: With, from: Spot, to: Spot): PictureMark | null => {
  if (tool === null) return null;
  if (tool === "text") return words === "" ? null : textMark(to, words);
  return strokeMark(tool, from, to, (picture.width ?? 4) / (picture.height ?? 3));
};

/**
 * What its author draws over a picture of a report that is not sealed. Each mark is kept with the service at once; what was drawn last
 * can be taken back.
 *
 * @param report `undefined` where nothing may be drawn
 */
export const useMarking = (report: string | undefined, picture: Picture) => {
  const queries = useQueryClient();
  const [tool, setTool] = useState<MarkTool | null>(null);
  const [words, setWords] = useState("");
  const keep = useMutation({
    mutationFn: (marks: readonly PictureMark[]) =>
      call("evidence.mark", { params: { id: picture.id }, body: { marks: [...marks] } }),
    onSettled: () => queries.invalidateQueries({ queryKey: evidenceKey(report ?? "") }),
  });
  // What is on its way is drawn already.
  const marks = keep.isPending ? keep.variables : picture.marks;
  const draw = (from: Spot, to: Spot): void => {
    const mark = keep.isPending ? null : drawn({ tool, words: words.trim(), picture }, from, to);
    if (mark === null) return;
    keep.mutate([...marks, mark]);
    if (mark.kind === "text") setWords("");
  };
  return {
    may: report !== undefined,
    marks,
    tool,
    setTool,
    words,
    setWords,
    draw,
    undo: () => keep.mutate(marks.slice(0, -1)),
    error: keep.error,
  };
};

export type Marking = ReturnType<typeof useMarking>;
