import type { ReportVersion } from "@evenhand/shared/http/reports";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Answered } from "../../ui/Answered";
import type { SealedSearch } from "./sealed-search";

interface Props {
  readonly version: ReportVersion;
  readonly search: SealedSearch;
}

type Of = "inspection" | "statement" | "other";

/** Where one goes from here. */
const NextSteps = ({ version: { vehicle }, search, of }: Props & { readonly of: Of }) => {
  const t = useText();
  const { comparison, visit } = search;
  return (
    <ul>
      {visit !== undefined && (
        <li>
          <Link to="/appointments/$appointment" params={{ appointment: visit }}>
            {t("sealed.next.visit")}
          </Link>
        </li>
      )}
      {comparison !== undefined && (
        <li>
          <Link to="/comparisons/$comparison" params={{ comparison }}>
            {t("sealed.next.comparison")}
          </Link>
        </li>
      )}
      <li>
        <Link to="/cars/$vehicle" params={{ vehicle }}>
          {t(`sealed.next.car.${of}`)}
        </Link>
      </li>
    </ul>
  );
};

/** After sealing: that it is sealed, who sees it from now on, and what comes next. */
export const JustSealed = (props: Props) => {
  const t = useText();
  const { kind, version } = props.version;
  const of = kind === "inspection" || kind === "statement" ? kind : "other";
  return (
    <Answered title={t("sealed.title", { kind: of, version })}>
      <p>{t(`sealed.who.${of}`)}</p>
      <p>{t("sealed.next")}</p>
      <NextSteps {...props} of={of} />
    </Answered>
  );
};
