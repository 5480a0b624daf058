import { Button } from "@mantine/core";
import { useText } from "../../strings/text";

/** What was taken away, put back with one press. */
export const PutBack = ({ name, onPress }: { readonly name: string; readonly onPress: () => void }) => {
  const t = useText();
  return (
    <>
      {t("evidence.removed", { name })}
      <Button variant="default" size="compact-md" onClick={onPress}>
        {t("evidence.put-back")}
      </Button>
    </>
  );
};
