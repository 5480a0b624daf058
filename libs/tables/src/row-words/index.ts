const FACT =
  /^((?:appraised |market |estimated |agreed |insured )?(?:value|valuation)|section total|count|questions|items? failed|items? passed|average|photos?|photo nos?|photo numbers?|pictures?|pics?|disclaimer|seen at|seen on|insp|section|chapter|client|customer|insured|policy|underwriter|proposer|buyer|purchaser|seller|vendor|owner|dealer|vehicle|car|make|model|year|yr|date|day|inspector|inspected|technician|mechanic|assessor|appraiser|appraised|valuer|reader|writer|author|tester|tested|examiner|surveyor|surveyed|address|phone|telephone|tel|e-?mail|location|place|site|report|reference|ref|stock|lot|job|invoice|price|asking|weather|page|prepared|signed|signature|colou?r|reg|registration|plate|body style|engine size|time|trim|company|firm|form|version|sheet|garage|city|state|country|zip|make\/model|make and model|doors|transmission|instructed|commissioned|requested|purpose|duration|started|finished|arrival|completed|checked|done|printed|our ref|your ref)\b/i;

const FACT_TAIL =
  /^\s*(\b(name|no|number|by|for|on|of|code|type|style|size|address|at|date|details?|description|and model|make|model)\b\.?|#|[.:/&]|\s)*$/i;

/** Whether a name is one of the visit, the people or the papers of a report, and not of what was found. */
export const isFact = (text: string): boolean => {
  if (/^(?:trim|paint|colou?r|body)\s*(?:code|no\.?|number)\b/i.test(text.trim())) return false;
  if (/^(?:sub-?|grand )?totals?\b(?!.*\b(?:play|travel|seal)\b)/i.test(text.trim())) return true;
  if (
    /^(?:(?:sum|number|count)s?\s+of|(?:questions|items|points)\s+(?:not fitted|answered|checked|failed|passed|marked))\b/i.test(
      text.trim(),
    )
  )
    return true;
  if (/^overall (?:grade|rating|score|condition|mark)\b/i.test(text.trim())) return true;
  const found = FACT.exec(text.trim());
  return found !== null && FACT_TAIL.test(text.trim().slice(found[0].length));
};

/** Whether a name opens remarks of the inspector's own. */
export const isRemark = (text: string): boolean =>
  /^(overall(?: (?:grade|rating|score|mark))?|comments?|notes?|summary|general|remarks?|conclusions?|other|additional|further|misc\w*|extra|observations?|impressions?|recommendations?|legend|key|disclaimer)\b(\s+(comments?|notes?|remarks?|impressions?|observations?|condition|summary|items?))?\s*[:.]?$/i.test(
    text.trim(),
  );

/** `Oil: clean`, `Horn - ok`: a name and what is said of it, in one cell. */
export const labelAndValue = (
  text: string,
): { readonly label: string; readonly value: string } | undefined => {
  const found = /^(.{2,60}?)\s*(?::(?!\d)|\s[-–—]\s|\s?=\s|\t|\.{3,})\s*(\S.*)$/s.exec(text);
  return found?.[1] === undefined || found[2] === undefined
    ? undefined
    : { label: found[1].trim(), value: found[2].trim() };
};
