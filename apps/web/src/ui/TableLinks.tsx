import { addressOf } from "../service/client";
import { useText } from "../strings/text";

interface Props {
  readonly of: "reports.table" | "reportVersions.table";
  readonly id: string;
}

/** A report to be taken along as a table. */
export const TableLinks = ({ of, id }: Props) => {
  const t = useText();
  const address = (form: "csv" | "xlsx"): string => `${addressOf(of, { id })}?form=${form}`;
  return (
    <span className="no-print">
      {t("table.take")}{" "}
      <a href={address("csv")} download>
        CSV
      </a>
      {" · "}
      <a href={address("xlsx")} download>
        XLSX
      </a>
    </span>
  );
};
