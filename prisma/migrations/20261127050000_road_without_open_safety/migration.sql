-- What closes the road is what the draft says: a list beside it had no screen.
UPDATE "appointment" SET "road" = "road" - 'openSafety' WHERE "road" IS NOT NULL;
