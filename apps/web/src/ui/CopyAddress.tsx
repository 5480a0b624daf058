import { Button } from "@mantine/core";
import { useState } from "react";
import { useText } from "../strings/text";
import styles from "./CopyAddress.module.css";

/** A secret address, shown once: to be copied, or selected by hand where the clipboard is withheld. */
export const CopyAddress = ({ address }: { readonly address: string }) => {
  const t = useText();
  const [copied, setCopied] = useState(false);
  const copy = async (): Promise<void> => {
    await navigator.clipboard.writeText(address);
    setCopied(true);
  };
  return (
    <div className={styles.buttons}>
      <code className={styles.address}>{address}</code>
      {window.isSecureContext && (
        <Button variant="default" size="xs" onClick={() => void copy()}>
          {t(copied ? "feeds.copied" : "feeds.copy")}
        </Button>
      )}
    </div>
  );
};
