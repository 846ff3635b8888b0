CREATE TABLE `loss` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`seen_on` text NOT NULL,
	`bed_id` integer NOT NULL,
	`variety_id` integer NOT NULL,
	`cause` text NOT NULL,
	`plants_before` integer NOT NULL,
	`plants_left` integer NOT NULL,
	FOREIGN KEY (`bed_id`) REFERENCES `bed`(`id`) ON UPDATE no action ON DELETE cascade,
	FOREIGN KEY (`variety_id`) REFERENCES `variety`(`id`) ON UPDATE no action ON DELETE cascade,
	CONSTRAINT "loss_seen_on" CHECK(seen_on GLOB '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]' AND date(seen_on) IS seen_on),
	CONSTRAINT "loss_cause" CHECK(cause IN ('winter in the ground', 'winter in store', 'voles', 'hail or wind', 'rot or sickness', 'something else')),
	CONSTRAINT "loss_plants_before" CHECK(plants_before BETWEEN 1 AND 1e15 AND plants_before = CAST(plants_before AS INTEGER)),
	CONSTRAINT "loss_plants_left" CHECK(plants_left BETWEEN 0 AND 1e15 AND plants_left = CAST(plants_left AS INTEGER)),
	CONSTRAINT "loss_left_of_before" CHECK(plants_left <= plants_before)
);
--> statement-breakpoint
CREATE UNIQUE INDEX `loss_once` ON `loss` (`seen_on`,`bed_id`,`variety_id`,`cause`);--> statement-breakpoint
CREATE INDEX `loss_bed` ON `loss` (`bed_id`);--> statement-breakpoint
CREATE INDEX `loss_variety` ON `loss` (`variety_id`);--> statement-breakpoint
ALTER TABLE `farm` ADD COLUMN `killing_frosts` text DEFAULT '[]' NOT NULL CONSTRAINT "farm_killing_frosts" CHECK(CASE WHEN json_valid(killing_frosts) THEN json_type(killing_frosts) = 'array' ELSE 0 END);
