import type { Answer, AnswerKind, AnswerOf } from "@evenhand/shared/answer";
import type { EditorProps } from "./editor";
import { ColorEditor } from "./ColorEditor";
import { FaultsEditor } from "./FaultsEditor";
import { ReadingEditor } from "./ReadingEditor";
import {
  ChoiceEditor,
  CodeEditor,
  GradeEditor,
  NotSeenEditor,
  PresenceEditor,
  WorkingEditor,
} from "./SimpleEditors";

type Props = Omit<EditorProps<"reading">, "answer"> & {
  readonly answer: Answer | undefined;
  readonly notSeen: boolean;
};

const isOf = <K extends AnswerKind>(answer: Answer | undefined, kind: K): answer is AnswerOf<K> =>
  answer?.kind === kind;

const of = <K extends AnswerKind>(answer: Answer | undefined, kind: K): AnswerOf<K> | undefined =>
  isOf(answer, kind) ? answer : undefined;

/** The editor of the kind of answer the item asks for, or the reasons for not having seen it. */
export const AnswerEditor = ({ answer, notSeen, ...props }: Props) => {
  if (notSeen) return <NotSeenEditor {...props} answer={of(answer, "not-seen")} />;
  switch (props.item.answer) {
    case "reading":
      return <ReadingEditor {...props} answer={of(answer, "reading")} />;
    case "color":
      return <ColorEditor {...props} answer={of(answer, "color")} />;
    case "grade":
      return <GradeEditor {...props} answer={of(answer, "grade")} />;
    case "working":
      return <WorkingEditor {...props} answer={of(answer, "working")} />;
    case "presence":
      return <PresenceEditor {...props} answer={of(answer, "presence")} />;
    case "choice":
      return <ChoiceEditor {...props} answer={of(answer, "choice")} />;
    case "code":
      return <CodeEditor {...props} answer={of(answer, "code")} />;
    case "faults":
      return <FaultsEditor {...props} answer={of(answer, "faults")} />;
  }
};
