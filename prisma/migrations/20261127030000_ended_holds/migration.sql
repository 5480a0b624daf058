-- An hour that was held and never asked for is nobody's history: only the buyer knew of it. Its moves may be swept with it; every
-- other move is still never changed, and none is ever rewritten.
CREATE FUNCTION refuse_move_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' AND EXISTS (
    SELECT 1 FROM appointment a
    WHERE a.id = OLD.appointment_id AND a.requested_at IS NULL AND a.state IN ('expired', 'cancelled')
  ) THEN
    RETURN OLD;
  END IF;
  RAISE EXCEPTION 'rows of % are never changed', TG_TABLE_NAME USING ERRCODE = 'restrict_violation';
END $$;

DROP TRIGGER appointment_move_kept ON appointment_move;
CREATE TRIGGER appointment_move_kept BEFORE UPDATE OR DELETE ON appointment_move
  FOR EACH ROW EXECUTE FUNCTION refuse_move_change();
