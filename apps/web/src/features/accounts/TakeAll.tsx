import { Button } from "@mantine/core";
import { IconDownload } from "@tabler/icons-react";
import { useMutation } from "@tanstack/react-query";
import { callForText } from "../../service/client";
import { saveFile } from "../../service/save-file";
import { useText } from "../../strings/text";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Accounts.module.css";

/** What the organization holds here, in one file: for its administrators. */
export const TakeAll = ({ organization }: { readonly organization: string }) => {
  const t = useText();
  const take = useMutation({
    mutationFn: async () => {
      const text = await callForText("exports.get", { params: { id: organization } });
      saveFile(`evenhand-export-${organization}.json`, text);
    },
  });
  return (
    <div className={styles.form}>
      <h3>{t("export.title")}</h3>
      <p>{t("export.in")}</p>
      <p>{t("export.out")}</p>
      {take.error !== null && <ProblemNotice error={take.error} />}
      <div>
        <Button
          variant="default"
          leftSection={<IconDownload size={18} aria-hidden="true" />}
          loading={take.isPending}
          onClick={() => take.mutate()}
        >
          {t("export.do")}
        </Button>
      </div>
    </div>
  );
};
