-- What became of a statement in an inspection, by section; NULL on other comparisons and on those not yet counted.
ALTER TABLE "comparison" ADD COLUMN "held_up_counts" JSONB;

-- A comparison stays as it was, but that its counts are filled in once.
CREATE FUNCTION refuse_change_but_first_counts() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  counted comparison;
BEGIN
  IF TG_OP = 'UPDATE' AND OLD.held_up_counts IS NULL THEN
    counted := OLD;
    counted.held_up_counts := NEW.held_up_counts;
    IF NEW IS NOT DISTINCT FROM counted THEN
      RETURN NEW;
    END IF;
  END IF;
  RAISE EXCEPTION 'rows of % are never changed', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END $$;
DROP TRIGGER comparison_sealed ON comparison;
CREATE TRIGGER comparison_sealed BEFORE UPDATE OR DELETE ON comparison
  FOR EACH ROW EXECUTE FUNCTION refuse_change_but_first_counts();
