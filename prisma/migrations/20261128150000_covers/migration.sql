-- AlterTable
ALTER TABLE "vehicle" ADD COLUMN "cover_id" UUID;

-- What is sealed already: the first photograph of the whole car, else the first of all.
UPDATE vehicle v SET cover_id = (
  SELECT e.id FROM report r JOIN evidence e ON e.report_id = r.id JOIN evidence_file f ON f.id = e.file_id
  WHERE r.vehicle_id = v.id AND r.kind = 'statement' AND e.sealed_in IS NOT NULL AND e.removed_at IS NULL AND f.copies <> '[]'
  ORDER BY e.item <> '', e.sealed_in, e.id LIMIT 1);
