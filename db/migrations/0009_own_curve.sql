ALTER TABLE `bloom_curve` ADD COLUMN `planting_id` integer CONSTRAINT "bloom_curve_of_planting" CHECK(planting_id IS NULL OR variety_id IS NOT NULL) REFERENCES `planting`(`id`) ON UPDATE no action ON DELETE cascade;--> statement-breakpoint
DROP INDEX `bloom_curve_of_variety_once`;--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_variety_once` ON `bloom_curve` (`variety_id`,`treatment`) WHERE planting_id IS NULL;--> statement-breakpoint
CREATE UNIQUE INDEX `bloom_curve_of_planting_once` ON `bloom_curve` (`planting_id`,`treatment`);
