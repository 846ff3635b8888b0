ALTER TABLE `planting` ADD COLUMN `days_late` integer CONSTRAINT "planting_days_late" CHECK(days_late BETWEEN -120 AND 120 AND days_late = CAST(days_late AS INTEGER));--> statement-breakpoint
ALTER TABLE `planting` ADD COLUMN `yield_factor` real CONSTRAINT "planting_yield_factor" CHECK(yield_factor BETWEEN 0 AND 1e300);
