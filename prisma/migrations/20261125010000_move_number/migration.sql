-- The moves of an appointment are counted: two can happen in one millisecond.
ALTER TABLE "appointment_move" ADD COLUMN "number" INTEGER NOT NULL DEFAULT 1;
ALTER TABLE "appointment_move" ALTER COLUMN "number" DROP DEFAULT;
DROP INDEX "appointment_move_appointment_id_id_idx";
CREATE INDEX "appointment_move_appointment_id_number_idx" ON "appointment_move"("appointment_id", "number");
