import { SegmentedControl } from "@mantine/core";
import { useText } from "../../strings/text";

interface Props {
  readonly view: "stages" | "sections";
  readonly onView: () => void;
}

/** The sheet as one walks it, or as a report is read. */
export const ViewSwitch = ({ view, onView }: Props) => {
  const t = useText();
  return (
    <SegmentedControl
      fullWidth
      transitionDuration={0}
      aria-label={t("walk.view")}
      value={view}
      onChange={(next) => next !== view && onView()}
      data={[
        { value: "stages", label: t("walk.view.stages") },
        { value: "sections", label: t("walk.view.sections") },
      ]}
    />
  );
};
