-- What was stated and what became of it, by section. It takes the place of counts that told neither what upheld a fall nor how
-- much was stated; what is stored is counted anew when it is first asked for, and NULL until then.
ALTER TABLE "comparison" DROP COLUMN "held_up_counts",
ADD COLUMN     "statement_counts" JSONB;

-- A comparison stays as it was, but that its counts and its answer are each filled in once.
CREATE OR REPLACE FUNCTION refuse_change_but_first_fill() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  filled comparison;
BEGIN
  IF TG_OP = 'UPDATE' THEN
    filled := OLD;
    IF OLD.statement_counts IS NULL THEN
      filled.statement_counts := NEW.statement_counts;
    END IF;
    IF OLD.answer IS NULL THEN
      filled.answer := NEW.answer;
      filled.answer_hash := NEW.answer_hash;
    END IF;
    IF NEW IS NOT DISTINCT FROM filled THEN
      RETURN NEW;
    END IF;
  END IF;
  RAISE EXCEPTION 'rows of % are never changed', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END $$;

-- What dealers accepted upholds a fall: counted whenever a record is asked for.
CREATE INDEX "release_accepted" ON "release" ("comparison_id") WHERE "state" = 'accepted';
