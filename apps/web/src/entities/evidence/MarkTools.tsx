import { Button, TextInput } from "@mantine/core";
import { IconArrowBackUp, IconArrowUpRight, IconCircle, IconLetterT } from "@tabler/icons-react";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import { MARK_TOOLS } from "./marks";
import styles from "./Marks.module.css";
import type { Marking } from "./use-marking";
import type { Zoom } from "./zoom";

const icons = { circle: IconCircle, arrow: IconArrowUpRight, text: IconLetterT } as const;

interface Props {
  readonly marking: Marking;
  readonly zoom: Zoom;
}

const Choose = ({ tool, setTool }: Marking) => {
  const t = useText();
  return MARK_TOOLS.map((one) => {
    const Icon = icons[one];
    return (
      <Button
        key={one}
        variant={tool === one ? "filled" : "default"}
        size="md"
        aria-pressed={tool === one}
        leftSection={<Icon size={18} aria-hidden="true" />}
        onClick={() => setTool(tool === one ? null : one)}
      >
        {t(`draw.tool.${one}`)}
      </Button>
    );
  });
};

/** Without a hand to point with, a mark is put where the picture was moved to the middle. */
const Put = ({ marking, zoom }: Props) => {
  const t = useText();
  const { tool, words, setWords, draw } = marking;
  if (tool === null) return null;
  return (
    <div className={styles.words}>
      {tool === "text" && (
        <TextInput
          size="md"
          label={t("draw.words")}
          maxLength={80}
          value={words}
          onChange={(event) => setWords(event.currentTarget.value)}
          onKeyDown={(event) => event.stopPropagation()}
        />
      )}
      <Button
        variant="default"
        size="md"
        disabled={tool === "text" && words.trim() === ""}
        onClick={() => draw(zoom, zoom)}
      >
        {t("draw.middle")}
      </Button>
      <span className={styles.said}>{t(`draw.how.${tool}`)}</span>
    </div>
  );
};

/** Drawing over one's own picture: circle, arrow, words; the last one taken back. */
export const MarkTools = ({ marking, zoom }: Props) => {
  const t = useText();
  if (!marking.may) return null;
  return (
    <fieldset className={styles.tools}>
      <legend className="only-read">{t("draw.tools")}</legend>
      <Choose {...marking} />
      <Button
        variant="default"
        size="md"
        disabled={marking.marks.length === 0}
        leftSection={<IconArrowBackUp size={18} aria-hidden="true" />}
        onClick={marking.undo}
      >
        {t("draw.undo")}
      </Button>
      <Put marking={marking} zoom={zoom} />
      {marking.error !== null && <ProblemNotice error={marking.error} />}
    </fieldset>
  );
};
