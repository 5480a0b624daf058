import { ActionIcon, Button } from "@mantine/core";
import {
  IconArrowsMaximize,
  IconChevronLeft,
  IconChevronRight,
  IconColumns2,
  IconX,
  IconZoomIn,
  IconZoomOut,
} from "@tabler/icons-react";
import { useCallback, useRef, type ReactNode } from "react";
import { createPortal } from "react-dom";
import { useText } from "../../strings/text";
import { usePictureWords } from "./picture-words";
import { DrawLayer } from "./DrawLayer";
import { MarksDrawing } from "./MarksDrawing";
import { MarkTools } from "./MarkTools";
import { isAt, isShown, type Picture } from "./pictures";
import { Stage } from "./Stage";
import { Thumb } from "./Thumb";
import { useMarking, type Marking } from "./use-marking";
import { useViewer, type Viewing } from "./use-viewer";
import styles from "./Viewer.module.css";
import { STEP, WHOLE, zoomBy } from "./zoom";

interface Props {
  readonly pictures: readonly Picture[];
  readonly at: string;
  readonly onGo: (id: string) => void;
  readonly onClose: () => void;
  /** The report its pictures are of, where its author may still draw over them. */
  readonly report?: string;
  /** Opens with the other side's picture of the same place beside it, where there is one. */
  readonly beside?: boolean;
}

interface ToolProps {
  readonly label: string;
  readonly onPress: () => void;
  readonly disabled?: boolean;
  readonly children: ReactNode;
}

const Tool = ({ label, onPress, disabled, children }: ToolProps) => (
  <ActionIcon
    variant="default"
    size={44}
    aria-label={label}
    title={label}
    disabled={disabled}
    onClick={onPress}
  >
    {children}
  </ActionIcon>
);

const Zooms = ({ zoom, onZoom }: Viewing) => {
  const t = useText();
  return (
    <>
      <Tool label={t("viewer.larger")} onPress={() => onZoom((now) => zoomBy(now, STEP))}>
        <IconZoomIn size={20} aria-hidden="true" />
      </Tool>
      <Tool
        label={t("viewer.smaller")}
        disabled={zoom.scale === 1}
        onPress={() => onZoom((now) => zoomBy(now, 1 / STEP))}
      >
        <IconZoomOut size={20} aria-hidden="true" />
      </Tool>
      <Tool label={t("viewer.whole")} disabled={zoom.scale === 1} onPress={() => onZoom(() => WHOLE)}>
        <IconArrowsMaximize size={20} aria-hidden="true" />
      </Tool>
    </>
  );
};

const Turns = ({ before, after, go }: Viewing) => {
  const t = useText();
  return (
    <>
      <Tool label={t("viewer.before")} disabled={before === undefined} onPress={() => go(before)}>
        <IconChevronLeft size={20} aria-hidden="true" />
      </Tool>
      <Tool label={t("viewer.after")} disabled={after === undefined} onPress={() => go(after)}>
        <IconChevronRight size={20} aria-hidden="true" />
      </Tool>
    </>
  );
};

const Beside = ({ canCompare, beside, setBeside }: Viewing) => {
  const t = useText();
  if (!canCompare) return null;
  return (
    <Button
      variant={beside ? "filled" : "default"}
      size="md"
      aria-pressed={beside}
      leftSection={<IconColumns2 size={20} aria-hidden="true" />}
      onClick={() => setBeside(!beside)}
    >
      {t("viewer.beside")}
    </Button>
  );
};

/** Others of the same place and side, to be put in its stead. */
const Others = ({ of, pictures, viewing }: OneProps) => {
  const here = pictures.filter((one) => one.side === of.side && isAt(one, of) && isShown(one));
  if (here.length < 2) return null;
  return (
    <ul className={styles.others}>
      {here.map((one) => (
        <li key={one.id} data-shown={one.id === of.id}>
          <Thumb picture={one} onOpen={() => viewing.choose(one)} />
        </li>
      ))}
    </ul>
  );
};

interface OneProps {
  readonly of: Picture;
  readonly pictures: readonly Picture[];
  readonly viewing: Viewing;
  readonly report: string | undefined;
}

/** One picture with what is drawn over it. */
const Drawn = ({ of, viewing, marking }: OneProps & { readonly marking: Marking }) => (
  <Stage picture={of} zoom={viewing.zoom} onZoom={viewing.onZoom}>
    <MarksDrawing marks={marking.marks} ratio={(of.width ?? 4) / (of.height ?? 3)} />
    {marking.tool !== null && <DrawLayer onDraw={marking.draw} />}
  </Stage>
);

const One = (props: OneProps) => {
  const { of, viewing, report } = props;
  const t = useText();
  const marking = useMarking(report, of);
  return (
    <figure className={styles.one} data-side={of.side}>
      <Drawn {...props} marking={marking} />
      <figcaption>
        {t("viewer.caption", { side: of.side, caption: of.caption ?? "none" })}
        {of.taken !== undefined && of.taken !== null && <Taken taken={of.taken} />}
      </figcaption>
      <Questions of={of} />
      {viewing.beside && <Others {...props} />}
      <MarkTools marking={marking} zoom={viewing.zoom} />
    </figure>
  );
};

/** What a picture leads to ask, with what speaks for it. */
const Questions = ({ of: { questions } }: Pick<OneProps, "of">) => {
  const t = useText();
  if (questions.length === 0) return null;
  return (
    <div className={styles.questions}>
      <p>{t("evidence.questions", { count: questions.length })}</p>
      <ul>
        {questions.map(({ kind, words }) => (
          <li key={kind}>{words}</li>
        ))}
      </ul>
    </div>
  );
};

/** By the camera's own clock. */
const Taken = ({ taken }: { readonly taken: string }) => {
  const t = useText();
  return <span className={styles.taken}>{t("viewer.taken", { time: taken.replace("T", " ") })}</span>;
};

const Head = ({ viewing, onClose }: { readonly viewing: Viewing; readonly onClose: () => void }) => {
  const t = useText();
  const words = usePictureWords();
  const { picture, nth, count } = viewing;
  return (
    <header className={styles.head}>
      <h2 id="viewer-title">{picture === undefined ? "" : words.place(picture)}</h2>
      <p aria-live="polite">{t("viewer.nth", { nth: nth + 1, count })}</p>
      <Tool label={t("viewer.close")} onPress={onClose}>
        <IconX size={20} aria-hidden="true" />
      </Tool>
    </header>
  );
};

const Tools = (viewing: Viewing) => (
  <div className={styles.tools}>
    <Turns {...viewing} />
    <Zooms {...viewing} />
    <Beside {...viewing} />
  </div>
);

/** A picture large, alone or beside the other side's of the same place: both are looked at as closely, at the same relative place. */
export const Viewer = ({ pictures, at, onGo, onClose, report, beside = false }: Props) => {
  const viewing = useViewer({ pictures, at, onGo }, beside);
  const dialog = useRef<HTMLDialogElement | null>(null);
  const show = useCallback((element: HTMLDialogElement | null) => {
    dialog.current = element;
    if (element?.open === false) element.showModal();
  }, []);
  // Beside the page and not in it: what stands in a folded part is not drawn.
  return createPortal(
    <dialog
      ref={show}
      className={styles.viewer}
      aria-labelledby="viewer-title"
      onClose={onClose}
      onKeyDown={viewing.onKey}
    >
      <Head viewing={viewing} onClose={() => dialog.current?.close()} />
      <div className={styles.sides} data-count={viewing.sides.length}>
        {viewing.sides.map((one) => (
          <One key={one.side} of={one} pictures={pictures} viewing={viewing} report={report} />
        ))}
      </div>
      <Tools {...viewing} />
    </dialog>,
    document.body,
  );
};
