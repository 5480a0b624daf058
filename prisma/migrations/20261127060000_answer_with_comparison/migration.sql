-- Page one with the matters; NULL on comparisons made before there were any, until it is first asked for.
ALTER TABLE "comparison" ADD COLUMN "answer" BYTEA,
ADD COLUMN     "answer_hash" CHAR(64);

-- Bytes and their hash come together.
ALTER TABLE "comparison" ADD CONSTRAINT "comparison_answer_hashed" CHECK (("answer" IS NULL) = ("answer_hash" IS NULL));

-- A comparison stays as it was, but that its counts and its answer are each filled in once.
CREATE FUNCTION refuse_change_but_first_fill() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  filled comparison;
BEGIN
  IF TG_OP = 'UPDATE' THEN
    filled := OLD;
    IF OLD.held_up_counts IS NULL THEN
      filled.held_up_counts := NEW.held_up_counts;
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
DROP TRIGGER comparison_sealed ON comparison;
CREATE TRIGGER comparison_sealed BEFORE UPDATE OR DELETE ON comparison
  FOR EACH ROW EXECUTE FUNCTION refuse_change_but_first_fill();
DROP FUNCTION refuse_change_but_first_counts();
